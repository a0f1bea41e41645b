"""The shop's network: certificates, doors, the name on the network, and keeping them fresh."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import urlsplit

from cryptography import x509

from flangebook.api.config import Network
from flangebook.serving.http.listener import EVERYWHERE, LOOPBACK, Listener
from flangebook.serving.http.tls import Tls
from flangebook.serving.lan import names
from flangebook.serving.lan.announce import Announcement
from flangebook.serving.lan.authority import AuthorityError, certificates

FOLDER = "https"
_NAME_FILE = "shop-name.txt"
_LOOK_AGAIN_S = 3600.0


class LanError(Exception):
    """The network can't be served as asked; the message says what helps."""


@dataclass(frozen=True, slots=True)
class LanOptions:
    """How the owner wants the network served.

    shop: its name; empty takes the one given last. hosts: further names of this machine, such
    as the one in the router's list. certificate, key: files of the owner's own, instead of the
    shop's authority. behind: address of a reverse proxy on this machine, which then does TLS.
    """

    shop: str = ""
    hosts: tuple[str, ...] = ()
    certificate: Path | None = None
    key: Path | None = None
    behind: str = ""


class Lan:
    """The doors to the network, bound, and what the app is told about them."""

    def __init__(self, port: int, data: Path, options: LanOptions) -> None:
        """Make what is needed and take the ports after ``port``: https, then plain http.

        Raises LanError, AuthorityError, ListenError.
        """
        self.shop = _shop_name(data / FOLDER, options.shop)
        self._folder = data / FOLDER
        self._options = options
        self._addresses = names.addresses()
        self._stop = threading.Event()
        self._announced: Announcement | None = None
        self._tls: Tls | None = None
        after = [port + 1, port + 2] if port else [0, 0]
        if options.behind:
            self.listeners = [
                Listener(after[0], "proxy", host=LOOPBACK, public=_public(options.behind))
            ]
            self.hosts: tuple[str, ...] = (urlsplit(options.behind).hostname or "",)
            self.network = Network(self.shop, (_public(options.behind),))
            return
        self.hosts, authority, fingerprint = self._certify()
        secure = Listener(after[0], "https", host=EVERYWHERE, tls=self._tls)
        self.listeners = [secure]
        try:
            plain = Listener(after[1], "http", host=EVERYWHERE)
        except BaseException:
            secure.close()
            raise
        self.listeners.append(plain)
        self.network = Network(
            self.shop,
            tuple(f"https://{host}:{secure.port}" for host in self._reached()),
            tuple(f"http://{host}:{plain.port}" for host in self._reached_in_figures()),
            authority,
            fingerprint,
        )

    @property
    def for_proxy(self) -> str:
        """Where a reverse proxy passes on to; empty without one."""
        return self.listeners[0].address if self._options.behind else ""

    def begin(self, said: Callable[[str], None] = print) -> None:
        """Announce the name, and keep certificate and announcement fresh."""
        if self._options.behind:
            return
        self._announced = Announcement(
            names.host_label(self.shop), self.listeners[0].port, self._addresses, said
        )
        threading.Thread(target=self._look_after, name="network", daemon=True).start()

    def end(self) -> None:
        """Take the name back."""
        self._stop.set()
        if self._announced:
            self._announced.end()

    def close(self) -> None:
        """Let go of the ports, when they were never served."""
        for one in self.listeners:
            one.close()

    def _certify(self) -> tuple[tuple[str, ...], bytes | None, str]:
        """Ready TLS: the host's names, the authority to trust (PEM) and its fingerprint."""
        own = self._options.certificate
        if own is not None:
            key = self._options.key or own
            try:
                self._tls = Tls(own, key)
                return _names_in(own), None, ""
            except (OSError, ValueError) as error:
                raise LanError(
                    f"The certificate {own} with the key {key} cannot be used: {error}. Both have "
                    "to be PEM files, the key without a passphrase."
                ) from error
        hosts = names.host_names(self.shop, self._options.hosts)
        made = certificates(self._folder, self.shop, hosts, self._addresses)
        self._tls = Tls(made.leaf, made.key)
        return tuple(hosts), made.authority.read_bytes(), made.fingerprint

    def _reached(self) -> list[str]:
        """Host names and addresses to be offered, the best first."""
        if self._options.certificate is not None:
            return [host for host in self.hosts if "*" not in host] or ["localhost"]
        named = [*self._options.hosts, f"{names.host_label(self.shop)}.local"]
        return list(dict.fromkeys([*named, *self._reached_in_figures()]))

    def _reached_in_figures(self) -> list[str]:
        # IPv4 only: nobody types the others, and they change more often.
        four = [str(a) for a in self._addresses if a.version == 4]
        outer = [text for text in four if not text.startswith("127.")]
        return outer or four[:1] or [LOOPBACK]

    def _look_after(self) -> None:
        while not self._stop.wait(_LOOK_AGAIN_S):
            self.refresh()

    def refresh(self) -> None:
        """Renew the certificate where that is due, and follow the machine's addresses."""
        found = names.addresses()
        moved, self._addresses = found != self._addresses, found
        if self._options.certificate is None:
            try:
                made = certificates(self._folder, self.shop, self.hosts, found)
            except AuthorityError as error:
                print(f"The certificate could not be renewed: {error}", flush=True)
            else:
                if made.renewed and self._tls:
                    self._tls.renew(made.leaf, made.key)
        elif self._tls:
            self._tls.renew(
                self._options.certificate, self._options.key or self._options.certificate
            )
        if moved and self._announced:
            self._announced.changed(names.host_label(self.shop), self.listeners[0].port, found)


def _shop_name(folder: Path, given: str) -> str:
    """The shop's name, remembered from start to start."""
    file = folder / _NAME_FILE
    if given:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        file.write_text(given, "utf-8")
        return given
    try:
        return file.read_text("utf-8").strip() or "Flangebook"
    except OSError:
        return "Flangebook"


def _names_in(certificate: Path) -> tuple[str, ...]:
    """The names a certificate is good for. Raises ValueError."""
    leaf = x509.load_pem_x509_certificate(certificate.read_bytes())
    try:
        held = leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except x509.ExtensionNotFound:
        raise ValueError("it names no host") from None
    numbers = [str(a) for a in held.get_values_for_type(x509.IPAddress)]
    return (*(n.lower() for n in held.get_values_for_type(x509.DNSName)), *numbers)


def _public(behind: str) -> str:
    """The proxy's address, without what follows the port. Raises LanError."""
    try:
        parts = urlsplit(behind)
        good = parts.scheme == "https" and parts.hostname and parts.port != 0
    except ValueError:
        good = False
    if not good or parts.path not in ("", "/") or parts.query or parts.username:
        raise LanError(
            f"{behind!r} is not the address of a proxy. Give it like https://bend.example:443, "
            "with https, since devices get a token over it."
        )
    return f"https://{parts.netloc.lower()}"
