"""A real server on the shop's network, seen from this machine."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import requests

from .running import PATIENCE_S, Running, serving

CODE = re.compile(r"first owner's code.*?: (\w{4}-\w{4})")


@dataclass
class Network:
    """A server with its doors. code: the first owner's, empty where there is an owner."""

    server: Running
    https: str
    http: str
    authority: Path
    words: str
    code: str

    def session(self) -> requests.Session:
        """A device that trusts the shop's authority."""
        made = requests.Session()
        made.verify = str(self.authority)
        made.trust_env = False
        return made

    def paired(self, role: str, name: str = "A phone") -> requests.Session:
        """A device that the owner at the server let in."""
        offer = requests.post(
            f"{self.server.address}api/v1/pairings", json={"role": role}, timeout=PATIENCE_S
        ).json()
        device = self.session()
        answer = device.post(
            f"{self.https}/api/v1/pair", json={"code": offer["code"], "name": name},
            timeout=PATIENCE_S,
        )  # fmt: skip
        assert answer.status_code == 200, answer.text
        return device


@contextmanager
def on_the_network(data: Path, *more: str) -> Iterator[Network]:
    """A server with --lan, in a process of its own."""
    with serving(data, "--lan", *more) as server:
        words = said_after_ready(server)
        ports = [int(p) for p in re.findall(r"127\.0\.0\.1:(\d+)", words)]
        code = CODE.search(words)
        yield Network(
            server, f"https://127.0.0.1:{ports[0]}", f"http://127.0.0.1:{ports[1]}",
            data / "https/authority.crt", words, code[1] if code else "",
        )  # fmt: skip


def said_after_ready(server: Running) -> str:
    """What it says after the ready line, to the end of it."""
    assert server.process.stdout
    said = []
    while not (said and said[-1].startswith("Only paired devices")):
        line = server.process.stdout.readline()
        assert line, "".join(said)
        said.append(line)
    return "".join(said)
