"""What a door to the network shows, and one line in the log where a handshake breaks."""

from __future__ import annotations

import ssl
import threading
import time
from pathlib import Path

from flangebook.serving.log import log

_QUIET_S = 60.0


class Tls:
    """A certificate with its key."""

    def __init__(self, certificate: Path, key: Path) -> None:
        self.context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
        self.context.minimum_version = ssl.TLSVersion.TLSv1_2
        self.renew(certificate, key)

    def renew(self, certificate: Path, key: Path) -> None:
        """Show another certificate from the next handshake on."""
        self.context.load_cert_chain(str(certificate), str(key))


class BrokenHandshakes:
    """Says in the log that handshakes break, at most once a minute."""

    def __init__(self, quiet_s: float = _QUIET_S) -> None:
        self._quiet_s = quiet_s
        self._lock = threading.Lock()
        self._said_at = float("-inf")
        self._unsaid = 0

    def count(self, address: str, error: Exception) -> None:
        """One broke."""
        with self._lock:
            now = time.monotonic()
            if now < self._said_at + self._quiet_s:
                self._unsaid += 1
                return
            more = f" ({self._unsaid} more since the last such line)" if self._unsaid else ""
            self._said_at, self._unsaid = now, 0
        why = getattr(error, "reason", None) or error or type(error).__name__
        log.warning("A TLS handshake with %s broke: %s.%s", address, str(why).rstrip("."), more)
