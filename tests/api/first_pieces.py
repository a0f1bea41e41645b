"""A demo shop from whose first pieces nothing is learned."""

from __future__ import annotations

from flask.testing import FlaskClient


def forget_first_pieces(client: FlaskClient) -> FlaskClient:
    """The same client after all first pieces of its shop were marked wrong: nothing is learned."""
    for metal in client.get("/api/v1/metals").get_json()["metals"]:
        path = f"/api/v1/test-bends?metal={metal['code']}"
        for row in client.get(path).get_json()["evidence"]:
            client.post(f"/api/v1/evidence/{row['id']}/forget", json={})
    return client
