"""Backups and import: what is asked, and what is answered."""

from __future__ import annotations

import marshmallow as ma

from flangebook.schemas.answers import answer, many, maybe_text, one, one_of, text, whole, yes_no
from flangebook.schemas.fields import Choice


class ImportQuery(ma.Schema):
    """Whether to replace what is there, or only to look."""

    replace = Choice("true", "false", load_default="false")
    preview = Choice("true", "false", load_default="false")


Backup = answer(
    "Backup",
    name=text(),
    kind=one_of("night", "by-hand", "replaced"),
    at=text(),
    size_bytes=whole(),
)
Trouble = answer("Trouble", at=text(), words=text())
Backups = answer(
    "Backups",
    standing=one_of("ok", "late", "trouble", "none"),
    folder=text(),
    last_good_at=maybe_text(),
    trouble=one(Trouble, allow_none=True),
    backups=many(Backup),
)
Holdings = answer(
    "Holdings",
    press=text(),
    tools=whole(),
    metals=whole(),
    cards=whole(),
    revisions=whole(),
    trials=whole(),
    test_bends=whole(),
)
Imported = answer(
    "Imported",
    imported=yes_no(),
    made_by=text(),
    exported_at=text(),
    holds=one(Holdings),
    here=one(Holdings),
    untouched=yes_no(),
    kept_as=maybe_text(),
)
