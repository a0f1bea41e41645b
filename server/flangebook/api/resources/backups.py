"""The backups the shop keeps of itself, and its document brought back in."""

from __future__ import annotations

from dataclasses import asdict
from datetime import datetime, timedelta
from typing import Any

from flask import Response, current_app, request

from flangebook.api.bodies import MOST_IMPORTED, read_file
from flangebook.api.openapi import Blueprint
from flangebook.api.sending import sent, the_store
from flangebook.schemas import backups as schemas
from flangebook.schemas.card_answers import Export
from flangebook.shop.backups import schedule
from flangebook.shop.backups.schedule import Keeper
from flangebook.shop.transfer import importing
from flangebook.shop.transfer.importing import Imported
from flangebook.use_cases import intake

blp = Blueprint("backups", __name__, url_prefix="/api/v1", description="Backups, and import.")
_LATE = timedelta(days=2)
_BODY = {"required": True, "content": {"application/json": {"schema": Export}}}


@blp.route("/backups")
@blp.response(200, schemas.Backups)
def listed() -> Response:
    """The backups in the shop's own folder, newest first, and what stood in the way of the last.

    ``standing``: "ok", "late" for none in two days, "trouble", "none" before the first.
    """
    keeper: Keeper = current_app.extensions["flangebook.copies"]
    found = schedule.kept(keeper.data)
    nights = [one for one in found if one.kind == "night"]
    now = datetime.now().astimezone()
    standing = "none" if not nights else "late" if now - nights[0].at > _LATE else "ok"
    trouble = keeper.standing_in_the_way(now)
    return sent(
        {
            "standing": "trouble" if trouble else standing,
            "folder": str(keeper.data / schedule.FOLDER),
            "last_good_at": _moment(found[0].at) if found else None,
            "trouble": {"at": _moment(trouble[0]), "words": trouble[1]} if trouble else None,
            "backups": [
                {
                    "name": one.path.name,
                    "kind": one.kind,
                    "at": _moment(one.at),
                    "size_bytes": one.size_bytes,
                }
                for one in found
            ],
        }
    )


@blp.route("/import", methods=["POST"])
@blp.arguments(schemas.ImportQuery, location="query")
@blp.response(200, schemas.Imported)
@blp.alt_response(409, "CONFLICT")
@blp.alt_response(413, "REQUEST_ENTITY_TOO_LARGE")
@blp.alt_response(415, "UNSUPPORTED_MEDIA_TYPE")
@blp.alt_response(422, "UNPROCESSABLE_ENTITY")
@blp.alt_response(507, "INSUFFICIENT_STORAGE")
@blp.doc(requestBody=_BODY)
def take(asked: dict[str, Any]) -> Response:
    """Fill the shop from its whole document, as ``/export`` gives it.

    A shop that has something in it is refused (409) unless ``replace`` is true; what is
    replaced is copied first. ``preview``: only look the document through and say what is in
    it. A document that is not whole changes nothing.
    """
    data = read_file(request, ("application/json",), "the document", MOST_IMPORTED)
    store, keeper = the_store(), current_app.extensions["flangebook.copies"]
    if asked["preview"] == "true":
        return _told(importing.look(store, data, intake), imported=False)
    done = importing.take(
        store,
        data,
        intake,
        replace=asked["replace"] == "true",
        folder=keeper.data,
        now=datetime.now().astimezone(),
    )
    return _told(done, imported=True)


def _told(done: Imported, *, imported: bool) -> Response:
    return sent(
        {
            "imported": imported,
            "made_by": done.made_by,
            "exported_at": done.exported_at,
            "holds": asdict(done.holds),
            "here": asdict(done.here),
            "untouched": done.untouched,
            "kept_as": done.replaced.name if done.replaced else None,
        }
    )


def _moment(at: datetime) -> str:
    return at.isoformat(timespec="seconds").replace("+00:00", "Z")
