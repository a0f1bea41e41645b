"""Who asks: the owner at the server itself, a paired device, or somebody unknown.

The serving side marks each request with the way it came, outside of anything a client can
send. On the way "loopback", and where the shop's network is not served at all, whoever asks
is the owner. On every other way a device shows its token in a cookie that scripts can't read.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import Literal, cast

from flask import Flask, Response, g, request

from flangebook.api import roles
from flangebook.api.config import Config
from flangebook.api.problems import ProblemError
from flangebook.api.sending import the_store
from flangebook.shop import crew, options
from flangebook.shop.storage.writing import sending_device

Way = Literal["loopback", "https", "http", "proxy"]
WAY_KEY = "flangebook.way"
GONE_KEY = "flangebook.gone"  # in the environ: tells whether who asked has left
ROLE_HEADER = "Flangebook-Role"
SECURE_WAYS = ("https", "proxy")
_KEPT_FOR = timedelta(days=400)  # the longest that browsers keep a cookie
_REALM = {"WWW-Authenticate": 'Pairing realm="shop"'}


@dataclass(frozen=True, slots=True)
class Caller:
    """Who asks. role: None for who is not paired; ``why`` says then what is wrong."""

    way: Way
    role: crew.Role | None
    device: crew.Device | None = None
    why: str = ""

    @property
    def name(self) -> str:
        """What the device is called; empty where none is known."""
        return self.device.name if self.device else ""


def register(app: Flask, config: Config) -> None:
    """Ask every request for the API who it comes from, and refuse what that role may not do."""

    @app.before_request
    def _who() -> None:
        if not request.path.startswith("/api/"):
            return
        g.caller = _caller(config)
        sending_device.set(g.caller.name)
        if request.endpoint is not None:  # an address or method that is not there says so itself
            check(g.caller, request.endpoint)

    @app.after_request
    def _say(response: Response) -> Response:
        # A device hears with any answer that the owner has given it another role.
        if role := getattr(g.get("caller"), "role", None):
            response.headers[ROLE_HEADER] = role
        return response


def the_caller() -> Caller:
    """Who sent this request."""
    return cast(Caller, g.caller)


def _caller(config: Config) -> Caller:
    if config.network is None:
        return Caller("loopback", "owner")
    # A request without a mark did not come by one of our doors, so it is nobody's.
    way = cast(Way, request.environ.get(WAY_KEY, "http"))
    if way == "loopback":
        return Caller(way, "owner")
    token = request.cookies.get(cookie_name(way), "")
    if not token:
        return Caller(way, None, why="unknown")
    try:
        device = crew.recognised(the_store(), token, way)
    except crew.NotPairedError as error:
        return Caller(way, None, why=error.reason)
    return Caller(way, device.role, device)


def check(caller: Caller, right: str) -> None:
    """Refuse what the caller may not ask. Raises ProblemError (401, 403)."""
    if roles.may(caller.role, right):
        return
    if caller.role is None:
        if right in roles.LABELS_OPEN and options.option(the_store(), options.LABELS_OPEN, False):
            return
        why = crew.NotPairedError(caller.why)
        raise ProblemError(401, str(why), {"pairing": [caller.why]}, _REALM)
    wanted = roles.least(right)
    words = f"This is for the {wanted}; this device is paired as {caller.role}."
    raise ProblemError(403, words, {"role": [wanted]})


def cookie_name(way: Way) -> str:
    """The cookie that holds the token; the prefix binds it to this very host over TLS."""
    return "__Host-flangebook" if way in SECURE_WAYS else "flangebook-http"


def give(made: Response, way: Way, token: str) -> Response:
    """Leave the token with the device."""
    made.set_cookie(
        cookie_name(way), token, max_age=_KEPT_FOR, path="/", secure=way in SECURE_WAYS,
        httponly=True, samesite="Strict",
    )  # fmt: skip
    return made


def take_back(made: Response, way: Way) -> Response:
    """Take the token off the device."""
    made.delete_cookie(
        cookie_name(way), path="/", secure=way in SECURE_WAYS, httponly=True, samesite="Strict"
    )
    return made
