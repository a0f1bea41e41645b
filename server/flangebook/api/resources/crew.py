"""The crew: who asks, pairing a device, the list of devices, joining the shop's network."""

from __future__ import annotations

import secrets
from dataclasses import asdict
from datetime import timedelta
from math import ceil
from typing import Any

from flask import Response, current_app, request

from flangebook.api import caller, roles
from flangebook.api.attempts import Attempts
from flangebook.api.config import Config, Network
from flangebook.api.openapi import Blueprint
from flangebook.api.problems import ProblemError
from flangebook.api.sending import file, sent, the_store
from flangebook.labels import codes
from flangebook.labels.draw_svg import qr_svg
from flangebook.schemas import crew as schemas
from flangebook.shop import crew, options

blp = Blueprint("crew", __name__, url_prefix="/api/v1", description="The crew's devices.")
CODE_LENGTH = 8
OFFERED_FOR = timedelta(minutes=10)
AUTHORITY_TYPE = "application/x-x509-ca-cert"
_NO_NETWORK = (
    "This server answers only the machine it runs on. Start it with --lan to let phones in."
)


def new_attempts() -> Attempts:
    """How often a wrong pairing code may be typed: 5 times a minute from one address.

    From many addresses they are slowed down: each is looked for with a slow hash, one at a time
    (``shop.crew``). No number of wrong codes keeps a right one from another address out.
    """
    return Attempts(each=5, stretch_s=60.0)


@blp.route("/me")
@blp.response(200, schemas.Me)
def me() -> Response:
    """Who this device is to the shop, and what it may not ask."""
    who, labels_open = caller.the_caller(), _labels_open()
    return sent(
        {
            "role": who.role,
            "name": who.name,
            "way": who.way,
            "why": who.why,
            "network": _config().network is not None,
            "labels_open": labels_open,
            "refused": roles.refused(who.role, labels_open=labels_open),
        }
    )


@blp.route("/pairings", methods=["POST"])
@blp.arguments(schemas.OfferSchema)
@blp.response(201, schemas.Offered)
@blp.alt_response(409, "CONFLICT")
def offer(asked: dict[str, Any]) -> Response:
    """Offer a pairing: a code for one device, good once, for ten minutes."""
    network = _network()
    code = new_code()
    who = caller.the_caller()
    by = who.name or "the server's own screen"
    made = crew.offer(the_store(), code, asked["role"], asked["name"], by, OFFERED_FOR)
    address = pair_address(network, code)
    body = {"code": f"{code[:4]}-{code[4:]}", "address": address, **asdict(made)}
    return sent({**body, "qr": qr_svg(address, "Q", 60.0)}, 201)


@blp.route("/pair", methods=["POST"])
@blp.arguments(schemas.PairSchema)
@blp.response(200, schemas.Device)
@blp.alt_response(403, "FORBIDDEN")
@blp.alt_response(404, "NOT_FOUND")
@blp.alt_response(409, "CONFLICT")
@blp.alt_response(410, "GONE")
@blp.alt_response(429, "TOO_MANY_REQUESTS")
def pair(asked: dict[str, Any]) -> Response:
    """Take a pairing: the answer leaves the device's token in a cookie."""
    _network()
    way = caller.the_caller().way
    if way == "loopback":
        raise ProblemError(409, "This is the server's own screen: it is the owner's already.")
    attempts: Attempts = current_app.extensions["flangebook.attempts"]
    asker = request.remote_addr or ""
    wait = attempts.wait_s(asker)
    if wait:
        raise ProblemError(
            429,
            f"Too many tries. Wait {ceil(wait)} seconds.",
            headers={"Retry-After": str(ceil(wait))},
        )
    try:
        device, token = crew.pair(the_store(), codes.plain(asked["code"]), asked["name"], way)
    except crew.CodeError as error:
        status = {"unknown": 404, "used": 410, "expired": 410}[error.reason]
        raise ProblemError(status, str(error), {"code": [str(error)]}) from None
    except crew.PlainError as error:
        raise ProblemError(403, str(error), {"code": [str(error)]}) from None
    attempts.forgive(asker)
    return caller.give(sent(_shown(device, device.id)), way, token)


@blp.route("/leave", methods=["POST"])
@blp.response(204)
def leave() -> Response:
    """Take this device off the shop's list, by itself."""
    who = caller.the_caller()
    if who.device is not None:
        crew.revoke(the_store(), who.device.id)
    return caller.take_back(Response(status=204), who.way)


@blp.route("/devices")
@blp.response(200, schemas.Devices)
def listed() -> Response:
    """All devices, those in use first."""
    own = caller.the_caller().device
    found = [_shown(one, own.id if own else "") for one in crew.listed(the_store())]
    return sent({"devices": found})


@blp.route("/devices/<device_id>", methods=["PUT"])
@blp.arguments(schemas.DeviceEditSchema)
@blp.response(200, schemas.Device)
@blp.alt_response(404, "NOT_FOUND")
def change(asked: dict[str, Any], device_id: str) -> Response:
    """Call a device otherwise, or give it another role."""
    if not asked:
        raise ProblemError(422, "Give a name or a role.", {"_schema": ["Give a name or a role."]})
    own = caller.the_caller().device
    try:
        changed = crew.change(the_store(), device_id, **asked)
    except crew.PlainError as error:
        raise ProblemError(409, str(error), {"role": [str(error)]}) from None
    return sent(_shown(changed, own.id if own else ""))


@blp.route("/devices/<device_id>", methods=["DELETE"])
@blp.response(200, schemas.Device)
@blp.alt_response(404, "NOT_FOUND")
def revoke(device_id: str) -> Response:
    """Turn a device out: what it asks from now on is refused."""
    own = caller.the_caller().device
    return sent(_shown(crew.revoke(the_store(), device_id), own.id if own else ""))


@blp.route("/crew-options")
@blp.response(200, schemas.CrewOptions)
def read_options() -> Response:
    """What may be done without pairing."""
    return sent({"labels_open": _labels_open()})


@blp.route("/crew-options", methods=["PUT"])
@blp.arguments(schemas.CrewOptionsSchema)
@blp.response(200, schemas.CrewOptions)
def write_options(asked: dict[str, Any]) -> Response:
    """Say what may be done without pairing."""
    options.set_option(the_store(), options.LABELS_OPEN, asked["labels_open"])
    return sent(asked)


@blp.route("/join")
@blp.response(200, schemas.Joining)
@blp.alt_response(404, "NOT_FOUND")
def join() -> Response:
    """What a device needs to know to join the shop's network."""
    network = _config().network
    if network is None:
        raise ProblemError(404, _NO_NETWORK)
    return sent(
        {
            "shop": network.shop,
            "https": list(network.https),
            "http": list(network.http),
            "authority": network.authority is not None,
            "fingerprint": network.fingerprint,
            "qr": qr_svg(join_address(network), "Q", 60.0),
        }
    )


@blp.route("/authority.crt")
@blp.response(200, {"type": "string", "format": "binary"}, content_type=AUTHORITY_TYPE)
@blp.alt_response(404, "NOT_FOUND")
def authority() -> Response:
    """The certificate of the shop's own authority, to be trusted on the device."""
    network = _config().network
    if network is None or network.authority is None:
        raise ProblemError(404, "This shop has no authority of its own.")
    return file(network.authority, AUTHORITY_TYPE, "flangebook-shop.crt")


def new_code() -> str:
    """A pairing code: 40 random bits, in the alphabet of the card codes."""
    return "".join(secrets.choice(codes.ALPHABET) for _ in range(CODE_LENGTH))


def pair_address(network: Network, code: str) -> str:
    """Where a device pairs. The code stands behind a #, which browsers don't send along."""
    return f"{_best(network)}/pair#{code}"


def join_address(network: Network) -> str:
    """Where a device that trusts nothing yet begins."""
    return f"{[*network.http, _best(network)][0]}/join"


def _best(network: Network) -> str:
    return [*network.https, *network.http][0]


def _network() -> Network:
    network = _config().network
    if network is None:
        raise ProblemError(409, _NO_NETWORK)
    return network


def _config() -> Config:
    config: Config = current_app.extensions["flangebook.config"]
    return config


def _labels_open() -> bool:
    return bool(options.option(the_store(), options.LABELS_OPEN, False))


def _shown(device: crew.Device, own: str) -> dict[str, Any]:
    return {**asdict(device), "own": device.id == own}
