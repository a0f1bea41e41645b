"""Say the shop's name on the local network (multicast DNS, RFC 6762), so that it can be typed."""

from __future__ import annotations

import threading
from collections.abc import Callable, Sequence
from contextlib import suppress

from zeroconf import ServiceInfo, Zeroconf

from flangebook.serving.lan.authority import Address

KIND = "_https._tcp.local."


class Announcement:
    """The name on the network for as long as it is not ended.

    label: the shop's name as a host name of one word. said: told in a sentence when the name
    can't be announced; the addresses in figures work all the same.
    """

    def __init__(
        self, label: str, port: int, addresses: Sequence[Address], said: Callable[[str], None],
        interfaces: Sequence[str] = (),
    ) -> None:  # fmt: skip
        self._info = _info(label, port, addresses)
        self._said = said
        self._interfaces = list(interfaces)
        self._zeroconf: Zeroconf | None = None
        # The library probes for a second or two whether the name is free.
        self._thread = threading.Thread(target=self._begin, name="announce", daemon=True)
        self._thread.start()

    def _begin(self) -> None:
        try:
            self._zeroconf = (
                Zeroconf(interfaces=self._interfaces) if self._interfaces else Zeroconf()
            )
            self._zeroconf.register_service(self._info, allow_name_change=False)
        except Exception as error:
            why = str(error) or type(error).__name__
            self._said(f"The name {self._info.server} could not be announced ({why}).")

    def changed(self, label: str, port: int, addresses: Sequence[Address]) -> None:
        """The network gave the machine other addresses."""
        self._info = _info(label, port, addresses)
        if self._zeroconf is not None:
            with suppress(Exception):
                self._zeroconf.update_service(self._info)

    def end(self) -> None:
        """Take the name back."""
        self._thread.join(5)
        if self._zeroconf is not None:
            with suppress(Exception):
                self._zeroconf.close()


def _info(label: str, port: int, addresses: Sequence[Address]) -> ServiceInfo:
    near = [a.packed for a in addresses if not a.is_loopback] or [a.packed for a in addresses]
    return ServiceInfo(
        KIND, f"{label}.{KIND}", port=port, addresses=near, server=f"{label}.local.",
        properties={"path": "/"},
    )  # fmt: skip
