"""By which names and addresses the shop's network finds this machine."""

from __future__ import annotations

import ipaddress
import re
import socket
import unicodedata
from collections.abc import Iterable

import ifaddr

from flangebook.serving.lan.authority import Address, is_private

DEFAULT = "flangebook"
_LABEL = re.compile(r"[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?")
_HOST = re.compile(rf"{_LABEL.pattern}(?:\.{_LABEL.pattern})*")


def host_label(shop: str) -> str:
    """The shop's name as a host name of one word.

    >>> host_label("Müller & Daughters"), host_label("!")
    ('muller-daughters', 'flangebook')
    """
    plain = unicodedata.normalize("NFKD", shop).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:40].strip("-") or DEFAULT


def is_host(name: str) -> bool:
    """Whether it can be the name of a host."""
    return len(name) <= 253 and bool(_HOST.fullmatch(name))


def host_names(shop: str, more: Iterable[str] = ()) -> list[str]:
    """What this machine may be called, the best first: names given by the owner, the shop's
    name by multicast DNS (RFC 6762), the shop's name as a router's DNS may have it (RFC 8375),
    the machine's own."""
    label = host_label(shop)
    own = socket.gethostname().lower().partition(".")[0]
    machine = [own, f"{own}.local"] if is_host(own) else []
    found = [*more, f"{label}.local", f"{label}.home.arpa", *machine, "localhost"]
    return list(dict.fromkeys(name.lower() for name in found))


def addresses() -> list[Address]:
    """This machine's addresses in private networks, IPv4 first, those of loopback last."""
    found: list[Address] = []
    for adapter in ifaddr.get_adapters():
        for ip in adapter.ips:
            text = ip.ip if isinstance(ip.ip, str) else ip.ip[0]
            address = ipaddress.ip_address(text.partition("%")[0])
            if is_private(address) and not address.is_link_local:
                found.append(address)
    order = sorted(dict.fromkeys(found), key=lambda a: (a.is_loopback, a.version, int(a)))
    return order or [ipaddress.ip_address("127.0.0.1")]
