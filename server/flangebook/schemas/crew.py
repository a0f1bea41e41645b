"""The crew's devices as they are asked for and given."""

from __future__ import annotations

import marshmallow as ma

from flangebook.schemas.answers import answer, many, maybe_text, one_of, text, yes_no
from flangebook.schemas.fields import Choice, Text, YesNo
from flangebook.shop.crew import ROLES

MOST_NAME = 40


class OfferSchema(ma.Schema):
    """A pairing to offer."""

    role = Choice(*ROLES, required=True)
    name = Text(MOST_NAME, load_default="", metadata={"description": "Whose device it will be."})


class PairSchema(ma.Schema):
    """A pairing to take."""

    code = Text(
        40, least=1, required=True, metadata={"description": "As the owner's screen shows."}
    )
    name = Text(MOST_NAME, load_default="", metadata={"description": "What the device is called."})


class DeviceEditSchema(ma.Schema):
    """What is to change of a device; what is not named stays."""

    name = Text(MOST_NAME, least=1)
    role = Choice(*ROLES)


class CrewOptionsSchema(ma.Schema):
    """The shop's switches."""

    labels_open = YesNo(
        required=True, metadata={"description": "Cards can be read without pairing."}
    )


Device = answer(
    "Device", id=text(), name=text(), role=one_of(*ROLES), way=one_of("https", "http", "proxy"),
    paired_at=text(), paired_by=text(), seen_at=text(), revoked_at=maybe_text(), own=yes_no(),
)  # fmt: skip
Devices = answer("Devices", devices=many(Device))
Offered = answer(
    "Offered", code=text(), role=one_of(*ROLES), name=text(), expires_at=text(), address=text(),
    qr=text(),
)  # fmt: skip
Me = answer(
    "Me",
    role=one_of(*ROLES, allow_none=True),
    name=text(),
    way=one_of("loopback", "https", "http", "proxy"),
    why=one_of("", "unknown", "revoked", "expired"),
    network=yes_no(),
    labels_open=yes_no(),
    refused=ma.fields.Dict(keys=text(), values=one_of(*ROLES)),
)
Joining = answer(
    "Joining", shop=text(), https=many(text()), http=many(text()), authority=yes_no(),
    fingerprint=text(), qr=text(),
)  # fmt: skip
CrewOptions = answer("CrewOptions", labels_open=yes_no())
