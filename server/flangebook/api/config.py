"""What the app is told when it is made."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

_WEB = Path(__file__).parents[3] / "web"


@dataclass(frozen=True, slots=True)
class Config:
    """Settings of one served shop.

    data: folder that holds the shop's file. demo: folder of the demo shop's JSON files, loaded
    into a shop that is empty; None leaves it empty but for the starter metals.
    web: folder served at ``/``. hosts: names by which the server may be called besides the
    loopback ones, without port. address: what labels point to, such as
    "http://127.0.0.1:8417"; empty takes the address the request came to.
    """

    data: Path
    demo: Path | None = None
    web: Path = _WEB
    hosts: tuple[str, ...] = ()
    address: str = ""
