"""What each role may ask.

Who: the owner everything; an operator reads, calculates, keeps trials and notes and steps
through; a bench screen reads and steps. An address that is not in this table is the owner's.
"""

from __future__ import annotations

from flangebook.shop.crew import ROLES, Role

ANYONE = "anyone"
# Whoever reaches the server may ask these: they give nothing of the shop's away.
_ANYONE = {
    "feed.health",
    "crew.me",
    "crew.pair",
    "crew.leave",
    "crew.join",
    "crew.authority",
    "api-docs.openapi_json",
}
_BENCH = {
    "benches.listed",
    "benches.move",  # its own touch and its foot switch step too
    "benches.read",
    "cards.find",
    "cards.read",
    "cards.fresh",
    "cards.history",
    "cards.proposed",
    "cards.revision",
    "feed.changed",
    "labels.label_png",
    "labels.label_svg",
    "labels.qr_svg",
    "parts.card_blank_dxf",
    "parts.card_blank_svg",
    "shop.read_dies",
    "shop.read_holders",
    "shop.read_metals",
    "shop.read_press",
    "shop.read_punches",
    "trials.tried",
}
# What is calculated from what is sent keeps nothing, so it needs no more than reading does.
_OPERATOR = {
    "bends.bend",
    "bends.chart",
    "bends.stroke",
    "cards.change",  # the note only, the rest is refused there
    "cards.propose",
    "evidence.learned",
    "evidence.listed",
    "labels.sheet_json",
    "labels.sheet_png",
    "labels.sheet_svg",
    "outlines.from_dxf",
    "parts.cut_blank",
    "parts.drawn_blank",
    "parts.plan",
    "shop.outline",
    "trials.keep",
}
_OWNER = {
    "benches.remove",
    "cards.create",
    "copies.listed",
    "copies.take",
    "crew.change",
    "crew.listed",
    "crew.offer",
    "crew.read_options",
    "crew.revoke",
    "crew.write_options",
    "evidence.forget",
    "evidence.keep",
    "evidence.remember",
    "feed.exported",
    "shop.write_dies",
    "shop.write_holders",
    "shop.write_metals",
    "shop.write_press",
    "shop.write_punches",
}
LEAST: dict[str, str] = {
    **dict.fromkeys(_ANYONE, ANYONE),
    **dict.fromkeys(_BENCH, "bench"),
    **dict.fromkeys(_OPERATOR, "operator"),
    **dict.fromkeys(_OWNER, "owner"),
}
# Where the owner lets labels be read without pairing: one card, by its code.
LABELS_OPEN = frozenset({"cards.read"})


def least(endpoint: str) -> str:
    """The least role that may ask an address, or ``ANYONE``."""
    return LEAST.get(endpoint, "owner")


def may(role: Role, endpoint: str) -> bool:
    """Whether a paired device of that role may ask.

    >>> may("operator", "trials.keep"), may("bench", "trials.keep")
    (True, False)
    """
    wanted = least(endpoint)
    return wanted == ANYONE or ROLES.index(role) >= ROLES.index(wanted)
