"""Starter metals that nobody edited get the K and n of their own tensile strength.

Up to 0.3 some starter metals had K and n of a softer metal than their own tensile strength, so the
expected force came too low. A row that still has the strengths, K and n it was shipped with was
never edited where a bend rests on it: it gets this release's K and n, in a new version of the
shop's metals. A row that differs in any of them is the user's and stays as it is. Saved cards keep
their plan either way.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

_STARTER = Path(__file__).parents[3] / "starter_metals.json"
_AUTHOR = "new release"
_STRENGTHS = ("yield_mpa", "tensile_mpa", "hardening_k_mpa", "hardening_n")
_ENDS = ("low", "nominal", "high")
# What 0.1 to 0.3 shipped: yield, tensile strength, K, n; low, nominal and high of each.
_SHIPPED = {
    "mild-steel-cr": ((175, 210, 280), (270, 340, 450), (500, 530, 600), (0.21, 0.25, 0.26)),
    "mild-steel-hr": ((250, 280, 340), (400, 450, 550), (500, 530, 600), (0.21, 0.25, 0.26)),
    "galvanised": ((140, 220, 330), (270, 350, 500), (500, 530, 600), (0.21, 0.25, 0.26)),
    "stainless-304": ((205, 290, 310), (515, 620, 700), (1200, 1275, 1400), (0.4, 0.44, 0.45)),
    "aluminium-5052-h32": (
        (160, 193, 215), (215, 228, 265), (330, 365, 400), (0.11, 0.13, 0.15),
    ),
    "aluminium-5052-o": ((65, 90, 110), (170, 195, 215), (190, 210, 230), (0.11, 0.13, 0.15)),
    "aluminium-6061-t6": (
        (240, 276, 310), (290, 310, 350), (390, 410, 430), (0.04, 0.05, 0.06),
    ),
    "copper-annealed": ((50, 70, 100), (200, 205, 250), (300, 315, 530), (0.44, 0.5, 0.54)),
}  # fmt: skip


def upgrade() -> None:
    """Keep the metals anew where a row is as it was shipped; nothing else is touched."""
    connection = op.get_bind()
    newest = connection.execute(
        sa.text(
            "SELECT version, body FROM documents WHERE name = 'metals' "
            "ORDER BY version DESC LIMIT 1"
        )
    ).first()
    if newest is None:
        return
    rows: list[dict[str, Any]] = json.loads(newest.body)
    starter = {row["code"]: row for row in json.loads(_STARTER.read_text("utf-8"))["metals"]}
    renewed = [_renewed(row, starter) for row in rows]
    if renewed != rows:
        _keep(connection, newest.version + 1, renewed)


def _renewed(row: dict[str, Any], starter: dict[str, Any]) -> dict[str, Any]:
    code = row.get("code")
    if code not in _SHIPPED or code not in starter or row.get("prestrain") is not None:
        return row
    if tuple(_three(row.get(name)) for name in _STRENGTHS) != _SHIPPED[code]:
        return row
    return row | {name: starter[code][name] for name in ("hardening_k_mpa", "hardening_n")}


def _three(figure: dict[str, Any] | None) -> tuple[float, ...] | None:
    return None if figure is None else tuple(figure[end] for end in _ENDS)


def _keep(connection: sa.Connection, version: int, rows: list[dict[str, Any]]) -> None:
    change = connection.execute(
        sa.text("UPDATE shop SET change = change + 1 RETURNING change")
    ).scalar_one()
    connection.execute(
        sa.text(
            "INSERT INTO documents (name, version, body, at, by, change) VALUES ('metals', "
            ":version, :body, strftime('%Y-%m-%dT%H:%M:%fZ', 'now'), :by, :change)"
        ),
        {
            "version": version,
            "body": json.dumps(rows, ensure_ascii=False, separators=(",", ":")),
            "by": _AUTHOR,
            "change": change,
        },
    )
