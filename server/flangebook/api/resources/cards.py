"""Cards: made, found, read, changed; their revisions; whether a fresh plan would differ."""

from __future__ import annotations

from typing import Any

from flask import Response

from flangebook.api import caller, roles
from flangebook.api.bodies import wanted_etag
from flangebook.api.openapi import IF_MATCH, Blueprint
from flangebook.api.problems import ProblemError
from flangebook.api.sending import sent, the_store
from flangebook.bending.errors import InputError
from flangebook.labels import codes
from flangebook.schemas import card_answers
from flangebook.schemas.cards import (
    CardEditSchema,
    ListQuery,
    NewCardSchema,
    PageQuery,
    ProposalSchema,
)
from flangebook.shop import cards, listing, proposals, revisions
from flangebook.shop.errors import ShopError
from flangebook.shop.store import Store
from flangebook.use_cases import card_changes

blp = Blueprint("cards", __name__, url_prefix="/api/v1", description="Saved set-ups.")
_NOTE_ONLY = {"note", "by", "reason", "id", "after"}
PATH_CODE = [
    {
        "in": "path",
        "name": "code",
        "required": True,
        "schema": {"type": "string"},
        "description": "The card's code, in any case.",
    }
]


def parsed(code: str) -> str:
    """The code in an address; 404 for what no card can have."""
    try:
        return codes.parse(code)
    except InputError as error:
        words = f"{error.what} {error.right}"
        raise ProblemError(404, words, {"code": [words]}) from None


@blp.route("/cards")
@blp.arguments(ListQuery, location="query")
@blp.response(200, card_answers.CardList)
def find(asked: dict[str, Any]) -> Response:
    """Cards whose code, title, metal, note or author holds every word of ``q``, newest first."""
    found, total = listing.find(
        the_store(), asked["q"], asked["archived"], asked["limit"], asked["offset"]
    )
    return sent({"cards": found, "total": total})


@blp.route("/cards", methods=["POST"])
@blp.arguments(NewCardSchema)
@blp.response(201, card_answers.Card)
@blp.response(200, card_answers.Card, description="It was kept before.")
@blp.alt_response(409, "CONFLICT")
def create(asked: dict[str, Any]) -> Response:
    """Plan a part and keep it as a card.

    With a code made by the device a resend is harmless: it gives the card that is there
    already, with 200.
    """
    store, code = the_store(), asked["code"] or ""
    wanted = {"part": asked["part"], "note": asked["note"]}
    if revisions.is_made(store, code, wanted):
        return _card(code)
    content = card_changes.new_content(store, asked)
    code, new = revisions.create(
        store, content, revisions.Author(asked["by"]), code=code, asked=wanted
    )
    return _card(code, 201 if new else 200, {"Location": f"/api/v1/cards/{code}"})


@blp.route("/cards/<code>", parameters=PATH_CODE)
@blp.response(200, card_answers.Card)
@blp.alt_response(404, "NOT_FOUND")
def read(code: str) -> Response:
    """A card, whole, with its newest results."""
    return _card(parsed(code))


@blp.route("/cards/<code>", methods=["PUT"], parameters=PATH_CODE)
@blp.arguments(CardEditSchema)
@blp.response(200, card_answers.Card)
@blp.alt_response(404, "NOT_FOUND")
@blp.alt_response(409, "CONFLICT")
@blp.alt_response(412, "PRECONDITION_FAILED")
@blp.alt_response(428, "PRECONDITION_REQUIRED")
@blp.doc(parameters=[IF_MATCH])
def change(asked: dict[str, Any], code: str) -> Response:
    """Change a card: a new revision. What is not named stays; the old one stays in the history.

    The part is planned afresh only when it changed, or with ``replan``. With ``after`` and
    ``If-Match: *`` it is the revision that must be the newest: results that came since do not
    stand in the way. ``settles`` names the proposals that this change settles. An operator may
    change the note.
    """
    if asked.keys() - _NOTE_ONLY:
        caller.check(caller.the_caller(), roles.REVISE)
    store, code, etag = the_store(), parsed(code), wanted_etag()
    after = asked.pop("after", "")  # where it was made on is not what it changes
    try:
        _revised(store, code, asked, etag, after)
    except ShopError:
        # Sent again before the first was answered: what stands in the way may be that very change.
        if not revisions.is_kept(store, code, asked.get("id", ""), asked):
            raise
    return _card(code)


def _revised(store: Store, code: str, asked: dict[str, Any], etag: str, after: str) -> None:
    """Keep the change, unless it is kept already or changes nothing. Raises ShopError."""
    content, newest = cards.content_of(store, code)
    if revisions.is_kept(store, code, asked.get("id", ""), asked):
        return
    if etag not in ("*", newest):
        raise cards.stale(code, newest)
    revisions.need_newest(store, code, after)
    card_changes.keep(store, code, asked, content, etag, after)


@blp.route("/cards/<code>/proposals", parameters=PATH_CODE)
@blp.response(200, card_answers.Proposals)
@blp.alt_response(404, "NOT_FOUND")
def proposed(code: str) -> Response:
    """Changes that met another one, newest first, and the revision that settled each."""
    return sent(proposals.page(the_store(), parsed(code)))


@blp.route("/cards/<code>/proposals", methods=["POST"], parameters=PATH_CODE)
@blp.arguments(ProposalSchema)
@blp.response(201, card_answers.Card)
@blp.response(200, card_answers.Card, description="It was kept before.")
@blp.alt_response(404, "NOT_FOUND")
@blp.alt_response(409, "CONFLICT")
def propose(asked: dict[str, Any], code: str) -> Response:
    """Keep a change that could not be made since the card was changed meanwhile.

    The card shows it to everybody under ``proposals`` until a change ``settles`` it. The id
    is that of the change: one that did arrive as a revision is not kept twice.
    """
    store, code = the_store(), parsed(code)
    new = proposals.propose(store, code, asked)
    return _card(code, 201 if new else 200)


@blp.route("/cards/<code>/revisions", parameters=PATH_CODE)
@blp.arguments(PageQuery, location="query")
@blp.response(200, card_answers.Revisions)
@blp.alt_response(404, "NOT_FOUND")
def history(asked: dict[str, Any], code: str) -> Response:
    """Who changed what, when: newest first."""
    found, total = listing.history(the_store(), parsed(code), asked["limit"], asked["offset"])
    return sent({"revisions": found, "total": total})


@blp.route("/cards/<code>/revisions/<int:number>", parameters=PATH_CODE)
@blp.response(200, card_answers.Snapshot)
@blp.alt_response(404, "NOT_FOUND")
def revision(code: str, number: int) -> Response:
    """One revision, whole, as it was saved."""
    return sent(listing.snapshot(the_store(), parsed(code), number))


@blp.route("/cards/<code>/fresh", parameters=PATH_CODE)
@blp.response(200, card_answers.Freshness)
@blp.alt_response(404, "NOT_FOUND")
def fresh(code: str) -> Response:
    """Whether a plan made today would differ from the saved one, and where."""
    return sent(card_changes.freshness(the_store(), parsed(code)))


def _card(code: str, status: int = 200, headers: dict[str, str] | None = None) -> Response:
    kept = cards.read(the_store(), code)
    return sent(kept.body, status, etag=kept.etag, headers=headers)
