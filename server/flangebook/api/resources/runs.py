"""Runs of a card: how many pieces, how many done, and what they took."""

from __future__ import annotations

import json
from typing import Any

from flask import Response

from flangebook.api.openapi import BINARY, Blueprint
from flangebook.api.resources.cards import PATH_CODE, parsed
from flangebook.api.sending import file, sent, the_store
from flangebook.labels.codes import display
from flangebook.schemas import runs as schemas
from flangebook.shop import runs
from flangebook.use_cases.run_summary import run_of, runs_of
from flangebook.use_cases.run_table import csv_of

blp = Blueprint("runs", __name__, url_prefix="/api/v1", description="Pieces made, and how long.")
CSV = "text/csv"


@blp.route("/cards/<code>/runs", parameters=PATH_CODE)
@blp.response(200, schemas.Runs)
@blp.alt_response(404, "NOT_FOUND")
def found(code: str) -> Response:
    """A card's runs, the newest first: pieces, scrap, set-up time and time per piece."""
    return sent({"runs": runs_of(runs.entries(the_store(), parsed(code)))})


@blp.route("/cards/<code>/runs.csv", parameters=PATH_CODE)
@blp.response(200, BINARY, content_type=CSV)
@blp.alt_response(404, "NOT_FOUND")
def table(code: str) -> Response:
    """A card's runs as a table, a run a line, for the next quote."""
    code = parsed(code)
    made = csv_of(display(code), runs_of(runs.entries(the_store(), code)))
    return file(made, f"{CSV}; charset=utf-8", f"runs-{code}.csv")


@blp.route("/cards/<code>/runs", methods=["POST"], parameters=PATH_CODE)
@blp.arguments(schemas.RunEntrySchema)
@blp.response(201, schemas.RunAnswer)
@blp.response(200, schemas.RunAnswer, description="It was kept before.")
@blp.alt_response(404, "NOT_FOUND")
@blp.alt_response(409, "CONFLICT")
def keep(asked: dict[str, Any], code: str) -> Response:
    """Keep what happened in a run: it begins, a piece is done, spoilt or taken back, it pauses.

    Both ids are the device's: a resend keeps nothing twice and is answered with 200. Entries may
    come in any order, even before the one that begins their run. A run that was ended stays
    ended; pieces that come late count all the same.
    """
    store, code = the_store(), parsed(code)
    stored = runs.add(store, code, asked)
    run = run_of(runs.entries(store, code, asked["run_id"]))
    told = {"entry": json.loads(stored.body), "run": run}
    return sent(told, 201 if stored.new else 200)
