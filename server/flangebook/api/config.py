"""What the app is told when it is made."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

_WEB = Path(__file__).parents[3] / "web"


@dataclass(frozen=True, slots=True)
class Network:
    """How the shop's network reaches the server.

    shop: its name. https: addresses such as "https://shop.local:8418", the best first.
    http: the same without TLS. authority: the certificate (PEM) that a device is asked to
    trust, None where the shop brought one that devices trust already. fingerprint: SHA-256
    of it in hexadecimal.
    """

    shop: str
    https: tuple[str, ...]
    http: tuple[str, ...] = ()
    authority: bytes | None = None
    fingerprint: str = ""


@dataclass(frozen=True, slots=True)
class Config:
    """Settings of one served shop.

    data: folder that holds the shop's file. demo: folder of the demo shop's JSON files, loaded
    into a shop that is empty; None leaves it empty but for the starter metals.
    web: folder served at ``/``. sources: whether its page takes the scripts and stylesheets one
    by one, as they are written, and not those that are made of them. hosts: names by which the
    server may be called besides the loopback ones, without port. address: what labels point to,
    such as "http://127.0.0.1:8417"; empty takes the address the request came to.
    network: None where only this machine is answered, and whoever asks is the owner.
    """

    data: Path
    demo: Path | None = None
    web: Path = _WEB
    sources: bool = False
    hosts: tuple[str, ...] = ()
    address: str = ""
    network: Network | None = None
