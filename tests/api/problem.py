"""One look at an error: the same shape everywhere."""

from __future__ import annotations

from typing import Any

from werkzeug.test import TestResponse


def problem(response: TestResponse, status: int, field: str = "") -> dict[str, Any]:
    """The problem document, after its shape was checked.

    field: one that must have words of its own.
    """
    assert response.status_code == status, response.text[:400]
    assert response.content_type == "application/problem+json"
    body: dict[str, Any] = response.get_json()
    assert body["status"] == status
    assert body["type"] == "about:blank"
    assert body["title"]
    assert 5 < len(body["detail"]) < 600
    assert set(body) <= {"type", "title", "status", "detail", "errors", "said", "outline"}
    if "outline" in body:
        assert set(body["outline"]) == {"code", "lines_mm", "edges", "marks_mm", "layers"}
        assert len(body["outline"]["lines_mm"]) <= 200
    for name, words in body.get("errors", {}).items():
        assert isinstance(name, str)
        assert words
        assert all(isinstance(w, str) and w for w in words)
    if field:
        assert field in body.get("errors", {}), body
    return body
