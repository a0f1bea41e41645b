"""What each role may ask.

Who: the owner everything; an operator reads, calculates, keeps results and notes, counts the
pieces of a run and steps through; a bench screen reads and steps. An address that is not in this
table is the owner's.
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
    "press_screens.listed",
    "press_screens.move",  # its own touch and its foot switch step too
    "press_screens.read",
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
    "runs.found",
    "runs.table",
    "shop.read_dies",
    "shop.read_holders",
    "shop.read_metals",
    "shop.read_press",
    "shop.read_punches",
    "results.listed",
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
    "runs.keep",
    "shop.gauge",
    "shop.outline",
    "shop.strips",
    "results.keep",
}
_OWNER = {
    "press_screens.remove",
    "cards.create",
    "backups.listed",
    "backups.take",
    "crew.change",
    "crew.listed",
    "crew.offer",
    "crew.read_options",
    "crew.revoke",
    "crew.write_options",
    "evidence.confirm",
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
# What is asked at an address that a lesser role may ask too, for less.
REVISE = "cards.revise"  # anything of a card; its note alone is an operator's
FINER: dict[str, str] = {REVISE: "owner"}
# Where the owner lets labels be read without pairing: one card, by its code.
LABELS_OPEN = frozenset({"cards.read"})


def least(right: str) -> str:
    """The least role that has a right, or ``ANYONE``. right: an address, or one of ``FINER``."""
    return LEAST.get(right) or FINER.get(right, "owner")


def may(role: Role | None, right: str) -> bool:
    """Whether a device of that role, or one that is not paired, has the right.

    >>> may("operator", "results.keep"), may("bench", "results.keep"), may(None, "crew.me")
    (True, False, True)
    """
    wanted = least(right)
    if wanted == ANYONE or role is None:
        return wanted == ANYONE
    return ROLES.index(role) >= ROLES.index(wanted)


def refused(role: Role | None, *, labels_open: bool = False) -> dict[str, str]:
    """What a device may not do, and the least role that may: what it need not offer.

    >>> refused("operator")["crew.listed"], "results.keep" in refused("operator"), refused("owner")
    ('owner', False, {})
    """
    opened = LABELS_OPEN if role is None and labels_open else frozenset()
    return {
        right: least(right)
        for right in sorted({**LEAST, **FINER})
        if not may(role, right) and right not in opened
    }
