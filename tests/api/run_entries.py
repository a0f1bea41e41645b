"""What a device sends of a run."""

from __future__ import annotations

import uuid
from typing import Any

BEGAN = "2026-05-04T08:00:00.000Z"


def new_id() -> str:
    return str(uuid.uuid4())


def run_entry(run_id: str, kind: str, minute: float = 0, **more: Any) -> dict[str, Any]:
    """An entry made so many minutes after eight."""
    hours, rest = divmod(minute, 60)
    minutes, seconds = int(rest), round(60 * (rest % 1))
    made_at = f"2026-05-04T{8 + int(hours):02d}:{minutes:02d}:{seconds:02d}.000Z"
    return {
        "id": new_id(), "run_id": run_id, "revision": 1, "kind": kind, "made_at": made_at, **more,
    }  # fmt: skip


def begun(run_id: str, pieces: int = 20, minute: float = 0) -> dict[str, Any]:
    return run_entry(run_id, "begun", minute, pieces=pieces)
