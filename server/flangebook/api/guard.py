"""Keep web pages of others out of the shop, and say what our own pages may do.

On loopback whoever opens the address is the owner, and a paired device shows its cookie by
itself, so a page from elsewhere, opened in the same browser, must not be able to ask in their
name: the Host must be one of ours (a name that was pointed at us is not), and a request that a
browser marks as coming from another site is refused.
"""

from __future__ import annotations

import ipaddress
from urllib.parse import urlsplit

from flask import Flask, Request, Response, request

from flangebook.api.caller import WAY_KEY
from flangebook.api.config import Config
from flangebook.api.problems import ProblemError

_PAGE_POLICY = "; ".join(
    (
        "default-src 'none'",
        # WebAssembly counts as script. The app's QR reader is compiled, and lies in web/vendor
        # like all other scripts; the word allows no text to be run as JavaScript.
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self'",
        "img-src 'self' data: blob:",
        "font-src 'self'",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "frame-ancestors 'none'",
    )
)
# What the API gives is data; opened by itself, a drawing may style itself and nothing more.
_DATA_POLICY = (
    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; "
    "frame-ancestors 'none'; sandbox"
)
_HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(self), geolocation=(), microphone=()",
}
_POLICY = "Content-Security-Policy"
_DATA_HEADERS = [*_HEADERS.items(), (_POLICY, _DATA_POLICY)]
_PAGE_HEADERS = [*_HEADERS.items(), (_POLICY, _PAGE_POLICY)]
_PORTS = {"http": "80", "https": "443"}
JOIN = "/join"
# The page that helps a device to trust the shop sits on plain http and asks this over https.
HEALTH = "/api/v1/health"
BY_NETWORK = ("https", "http")
_SAFE = ("GET", "HEAD", "OPTIONS")


def register(app: Flask, config: Config) -> None:
    """Check every request, dress every answer."""
    ours = frozenset(name.lower() for name in config.hosts)
    joining = [*_HEADERS.items(), (_POLICY, _join_policy(config))]

    @app.before_request
    def _check() -> None:
        check(request, ours)

    @app.after_request
    def _dress(response: Response) -> Response:
        if request.path.startswith("/api/"):
            dress = _DATA_HEADERS
        else:
            dress = joining if request.path == JOIN else _PAGE_HEADERS
        response.headers.extend(dress)
        if request.path == HEALTH:
            response.headers["Cross-Origin-Resource-Policy"] = "cross-origin"
        if request.environ.get(WAY_KEY) == "http":
            # Browsers heed it only on origins they trust, and complain about it elsewhere.
            del response.headers["Cross-Origin-Opener-Policy"]
        return response


def _join_policy(config: Config) -> str:
    """The page that helps a device to trust the shop asks its https addresses whether it does."""
    reached = " ".join(config.network.https) if config.network else ""
    return _PAGE_POLICY.replace("connect-src 'self'", f"connect-src 'self' {reached}".rstrip())


def check(taken: Request, ours: frozenset[str]) -> None:
    """Refuse a request that was not meant for this server, or that another site sent.

    Raises ProblemError (403).
    """
    host = taken.headers.get("Host", "")
    by_network = taken.environ.get(WAY_KEY) in BY_NETWORK
    if not known_host(host, str(taken.environ.get("SERVER_PORT", "")), ours, by_network):
        raise ProblemError(
            403, "The server is not called by that name. Use the address it printed."
        )
    asked_by_anybody = not taken.path.startswith("/api/") or taken.path == HEALTH
    if asked_by_anybody and taken.method in _SAFE:
        return
    origin = taken.headers.get("Origin")
    if origin is not None and not _same(origin, taken.scheme, host):
        raise ProblemError(403, "Another site's page may not use the shop.")
    if taken.headers.get("Sec-Fetch-Site", "none") not in ("none", "same-origin"):
        raise ProblemError(403, "Another site's page may not use the shop.")


def known_host(host: str, port: str, ours: frozenset[str], by_network: bool = False) -> bool:
    """Whether a Host header names this server.

    by_network: an address in figures is one of ours too, since the network may give the server
    another at any time; no foreign name can stand behind such an address.

    >>> known_host("127.0.0.1:8417", "8417", frozenset())
    True
    >>> known_host("evil.example:8417", "8417", frozenset())
    False
    """
    try:
        parts = urlsplit(f"//{host}")
        name, given = parts.hostname or "", parts.port
    except ValueError:
        return False
    if parts.username is not None or parts.path or parts.query or parts.fragment:
        return False
    if port != str(given) if given is not None else port not in _PORTS.values():
        return False
    if name == "localhost" or name in ours:
        return True
    try:
        return ipaddress.ip_address(name).is_loopback or by_network
    except ValueError:
        return False


def _same(origin: str, scheme: str, host: str) -> bool:
    """Whether an Origin header names the page's own server, default ports left out or not."""
    port = _PORTS.get(scheme, "")
    ours = {f"{scheme}://{host.lower()}", f"{scheme}://{host.lower().removesuffix(f':{port}')}"}
    return origin.lower() in ours
