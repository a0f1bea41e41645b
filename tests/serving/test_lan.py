"""The shop's network through its real doors: https, plain http, loopback, a proxy, a name."""

from __future__ import annotations

import socket
import sqlite3
import ssl
import time
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
import requests
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from sqlalchemy.exc import OperationalError
from zeroconf import ServiceInfo, Zeroconf

from flangebook.api import config
from flangebook.serving import shop_server
from flangebook.serving.lan.announce import KIND, Announcement
from flangebook.serving.lan.names import addresses
from flangebook.serving.terminal import qr_text
from flangebook.shop import crew

from .lan import Network, on_the_network, said_after_ready
from .running import PATIENCE_S, command, run, serving

SILENT = 50


@pytest.fixture(scope="module")
def data(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a shop that was only ever served to its own machine."""
    folder = tmp_path_factory.mktemp("lan") / "shop"
    with serving(folder, "--empty") as server:
        answer = requests.get(f"{server.address}api/v1/metals", timeout=PATIENCE_S)
        assert answer.status_code == 200
        server.stop()
    return folder


@pytest.fixture(scope="module")
def lan(data: Path) -> Iterator[Network]:
    with on_the_network(data, "--shop", "Oak & Iron") as network:
        yield network


def test_the_shop_that_was_there_is_still_there(lan: Network, data: Path):
    mine = requests.get(f"{lan.server.address}api/v1/metals", timeout=PATIENCE_S).json()
    assert len(mine["metals"]) > 3
    over = lan.paired("operator").get(f"{lan.https}/api/v1/metals", timeout=PATIENCE_S).json()
    assert over == mine


def test_the_terminal_tells_the_address_its_code_and_the_fingerprint(lan: Network):
    joined = f"{lan.http}/join"
    assert f"A phone begins at {joined}\n" in lan.words
    assert qr_text(joined) in lan.words
    told = requests.get(f"{lan.http}/api/v1/join", timeout=PATIENCE_S).json()
    assert told["fingerprint"] in lan.words.replace(" ", "")
    assert told["shop"] == "Oak & Iron"
    assert any(address.startswith("https://oak-iron.local:") for address in told["https"])


def test_plain_http_gives_the_certificate_that_https_is_trusted_by(lan: Network, tmp_path: Path):
    answer = requests.get(f"{lan.http}/api/v1/authority.crt", timeout=PATIENCE_S)
    assert answer.headers["Content-Type"] == "application/x-x509-ca-cert"
    fetched = tmp_path / "shop.crt"
    fetched.write_bytes(answer.content)
    health = requests.get(f"{lan.https}/api/v1/health", verify=str(fetched), timeout=PATIENCE_S)
    assert health.json()["status"] == "ok"
    page = requests.get(f"{lan.http}/join", timeout=PATIENCE_S)
    assert page.headers["Content-Type"].startswith("text/html")
    assert lan.https in page.headers["Content-Security-Policy"]


def test_a_device_that_does_not_trust_the_authority_is_told_so_by_tls(lan: Network):
    with pytest.raises(requests.exceptions.SSLError):
        requests.get(f"{lan.https}/api/v1/health", timeout=PATIENCE_S)


def test_the_first_owner_pairs_with_the_code_from_the_terminal_once(tmp_path: Path):
    with on_the_network(tmp_path / "new", "--empty") as network:
        assert network.code
        phone, other = network.session(), network.session()
        taken = phone.post(
            f"{network.https}/api/v1/pair", json={"code": network.code.lower()}, timeout=PATIENCE_S
        )
        assert taken.json()["role"] == "owner"
        cookie = taken.headers["Set-Cookie"]
        assert cookie.startswith("__Host-flangebook=")
        assert {"Secure", "HttpOnly", "Path=/", "SameSite=Strict"} <= set(cookie.split("; "))
        again = other.post(
            f"{network.https}/api/v1/pair", json={"code": network.code}, timeout=PATIENCE_S
        )
        assert again.status_code == 410
        assert phone.get(f"{network.https}/api/v1/devices", timeout=PATIENCE_S).status_code == 200
        network.server.stop()
    with on_the_network(tmp_path / "new") as network:  # a restart: still paired, no new code
        assert network.code == ""
        me = phone.get(f"{network.https}/api/v1/me", timeout=PATIENCE_S).json()
        assert me["role"] == "owner"
        assert me["way"] == "https"


def test_a_full_disk_at_start_costs_the_owners_code_only(monkeypatch: pytest.MonkeyPatch):
    full = sqlite3.OperationalError("database or disk is full")
    full.sqlite_errorname = "SQLITE_FULL"

    def offer(*_: object) -> None:
        raise OperationalError("INSERT", {}, full) from full

    monkeypatch.setattr(crew, "offer", offer)
    store: Any = None  # nothing else is asked of it
    words = shop_server._first_owner(config.Network("Oak", ("https://oak.local",)), store)
    assert "Make room" in words


def test_a_token_is_kept_as_its_hash_only(lan: Network, data: Path):
    device = lan.paired("operator")
    token = next(iter(device.cookies)).value
    assert token
    for file in data.glob("flangebook.sqlite*"):
        assert token.encode() not in file.read_bytes()


def test_a_device_that_is_turned_out_is_out_at_once(lan: Network):
    device = lan.paired("operator", "Ben's phone")
    listed = requests.get(f"{lan.server.address}api/v1/devices", timeout=PATIENCE_S).json()
    found = next(one for one in listed["devices"] if one["name"] == "Ben's phone")
    assert device.get(f"{lan.https}/api/v1/cards", timeout=PATIENCE_S).status_code == 200
    requests.delete(f"{lan.server.address}api/v1/devices/{found['id']}", timeout=PATIENCE_S)
    answer = device.get(f"{lan.https}/api/v1/cards", timeout=PATIENCE_S)
    assert answer.status_code == 401
    assert answer.json()["errors"]["pairing"] == ["revoked"]


def test_a_device_that_was_not_used_for_long_has_to_pair_again(lan: Network, data: Path):
    device = lan.paired("operator", "Old tablet")
    long_ago = (datetime.now(UTC) - timedelta(days=181)).isoformat()
    with closing(sqlite3.connect(data / "flangebook.sqlite", timeout=20)) as file, file:
        file.execute("UPDATE devices SET seen_at = ? WHERE name = 'Old tablet'", (long_ago,))
    answer = device.get(f"{lan.https}/api/v1/cards", timeout=PATIENCE_S)
    assert answer.status_code == 401
    assert answer.json()["errors"]["pairing"] == ["expired"]


def test_a_token_from_https_is_worth_nothing_over_plain_http(lan: Network):
    token = next(iter(lan.paired("owner").cookies)).value
    for name in ("flangebook-http", "__Host-flangebook"):
        answer = requests.get(
            f"{lan.http}/api/v1/cards", headers={"Cookie": f"{name}={token}"}, timeout=PATIENCE_S
        )
        assert answer.status_code == 401


def test_everything_works_over_plain_http_for_who_pairs_there(lan: Network):
    owner = f"{lan.server.address}api/v1/pairings"
    code = requests.post(owner, json={"role": "operator"}, timeout=PATIENCE_S).json()["code"]
    device = requests.Session()
    paired = device.post(f"{lan.http}/api/v1/pair", json={"code": code}, timeout=PATIENCE_S)
    assert paired.json()["way"] == "http"
    assert "Secure" not in paired.headers["Set-Cookie"]
    assert device.get(f"{lan.http}/api/v1/cards", timeout=PATIENCE_S).status_code == 200
    assert device.get(f"{lan.http}/", timeout=PATIENCE_S).status_code == 200


def test_a_foreign_name_gets_nothing_even_with_a_token(lan: Network):
    device = lan.paired("owner")
    port = lan.https.rpartition(":")[2]
    answer = device.get(
        f"{lan.https}/api/v1/cards", headers={"Host": f"evil.example:{port}"}, timeout=PATIENCE_S
    )
    assert answer.status_code == 403


def test_a_page_of_another_site_can_not_write(lan: Network):
    device = lan.paired("owner")
    answer = device.put(
        f"{lan.https}/api/v1/crew-options", json={"labels_open": True},
        headers={"Origin": "https://evil.example"}, timeout=PATIENCE_S,
    )  # fmt: skip
    assert answer.status_code == 403


def answered_beside(lan: Network) -> None:
    with lan.session() as fresh:
        assert fresh.get(f"{lan.https}/api/v1/health", timeout=PATIENCE_S).status_code == 200


@pytest.mark.parametrize("said", [b"", b"\x16\x03\x01\x02\x00\x01\x00", b"GET / HTTP/1.1\r\n"])
def test_silent_and_half_open_connections_hold_nobody_up(lan: Network, said: bytes):
    """They are all given up only after the handshake's bound; until then others are answered.

    No time is asserted: the lines stay open for the whole of the test, so an answer at all
    shows that they are not waited for.
    """
    port = int(lan.https.rpartition(":")[2])
    lines = [socket.create_connection(("127.0.0.1", port), timeout=20) for _ in range(SILENT)]
    try:
        for line in lines:
            line.sendall(said)
        for _ in range(3):
            answered_beside(lan)
        if said == b"":
            assert all(still_open(line) for line in lines)
    finally:
        for line in lines:
            line.close()


def still_open(line: socket.socket) -> bool:
    line.setblocking(False)
    try:
        return line.recv(1) != b""
    except BlockingIOError:
        return True


def test_connections_that_stop_after_the_handshake_hold_nobody_up(lan: Network):
    port = int(lan.https.rpartition(":")[2])
    context = ssl.create_default_context(cafile=str(lan.authority))
    lines = []
    try:
        for _ in range(SILENT):
            raw = socket.create_connection(("127.0.0.1", port), timeout=20)
            lines.append(context.wrap_socket(raw, server_hostname="127.0.0.1"))
        for _ in range(3):
            answered_beside(lan)
    finally:
        for line in lines:
            line.close()


def own_certificate(folder: Path) -> tuple[Path, Path]:
    """A certificate as somebody else's authority would give it, here signed by itself."""
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(x509.NameOID.COMMON_NAME, "localhost")])
    made = (
        x509.CertificateBuilder()
        .subject_name(name)
        .issuer_name(name)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(datetime.now(UTC) - timedelta(days=1))
        .not_valid_after(datetime.now(UTC) + timedelta(days=90))
        .add_extension(x509.SubjectAlternativeName([x509.DNSName("localhost")]), critical=False)
        .sign(key, hashes.SHA256())
    )
    crt, secret = folder / "own.crt", folder / "own.key"
    crt.write_bytes(made.public_bytes(serialization.Encoding.PEM))
    secret.write_bytes(
        key.private_bytes(
            serialization.Encoding.PEM,
            serialization.PrivateFormat.PKCS8,
            serialization.NoEncryption(),
        )
    )
    return crt, secret


def test_a_certificate_of_the_owners_own_is_shown_instead(tmp_path: Path):
    crt, key = own_certificate(tmp_path)
    more = ["--empty", "--certificate", str(crt), "--key", str(key)]
    with serving(tmp_path / "shop", *more) as server:
        assert server.process.stdout
        address = server.process.stdout.readline().rpartition(": ")[2].strip()
        assert address.startswith("https://localhost:")
        health = requests.get(f"{address}/api/v1/health", verify=str(crt), timeout=PATIENCE_S)
        assert health.status_code == 200
        told = requests.get(f"{address}/api/v1/join", verify=str(crt), timeout=PATIENCE_S).json()
        assert (told["authority"], told["fingerprint"]) == (False, "")
        assert not (tmp_path / "shop/https/authority.key").exists()


def test_a_certificate_that_can_not_be_used_is_said(tmp_path: Path):
    crt, _ = own_certificate(tmp_path)
    done = run([*command(tmp_path / "shop", "--empty"), "--certificate", str(crt)])
    assert done.returncode == 1
    assert "cannot be used" in done.stderr
    assert not (tmp_path / "shop/flangebook.sqlite").exists()


def test_behind_a_proxy_only_its_address_counts_and_nobody_is_owner_for_nothing(tmp_path: Path):
    with serving(tmp_path / "shop", "--empty", "--behind", "https://bend.example") as server:
        words = said_after_ready(server)
        assert "https://bend.example" in words
        listed = requests.post(
            f"{server.address}api/v1/pairings", json={"role": "owner"}, timeout=PATIENCE_S
        ).json()
        assert listed["address"].startswith("https://bend.example/pair#")
        proxied = {"Host": "bend.example", "X-Forwarded-For": "192.168.1.9"}
        there = words.partition("passes on to ")[2].split()[0] + "api/v1"
        me = requests.get(f"{there}/me", headers=proxied, timeout=PATIENCE_S).json()
        assert (me["role"], me["way"]) == (None, "proxy")
        session = requests.Session()
        paired = session.post(
            f"{there}/pair", json={"code": listed["code"]},
            headers={**proxied, "Origin": "https://bend.example"}, timeout=PATIENCE_S,
        )  # fmt: skip
        assert paired.json()["role"] == "owner"
        cookie = paired.headers["Set-Cookie"].partition(";")[0]
        got = requests.get(
            f"{there}/devices", headers={**proxied, "Cookie": cookie}, timeout=PATIENCE_S
        )
        assert got.status_code == 200
        direct = requests.get(f"{there}/me", timeout=PATIENCE_S)
        assert direct.status_code == 403  # not by the proxy's name


@pytest.mark.parametrize(
    "address", ["bend.example", "http://bend.example", "https://", "https://x/y"]
)
def test_a_proxys_address_has_to_be_https(tmp_path: Path, address: str):
    done = run([*command(tmp_path / "shop", "--empty"), "--behind", address])
    assert done.returncode == 1
    assert "https" in done.stderr


def test_the_name_can_be_asked_for_on_the_network():
    """Multicast DNS on the loopback interface, asked by the library's own resolver."""
    said: list[str] = []
    here = [a for a in addresses() if a.version == 4][-1:]
    announced = Announcement("oak-iron-test", 8418, here, said.append, ["127.0.0.1"])
    try:
        found = asked_for("oak-iron-test", said)
        assert said == []
        assert found is not None
        assert (found.server, found.port) == ("oak-iron-test.local.", 8418)
        assert found.parsed_addresses() == [str(a) for a in here]
    finally:
        announced.end()


def asked_for(label: str, said: Sequence[str]) -> ServiceInfo | None:
    """What the network answers for the shop's name; None when it is silent, or said speaks.

    Asked in a thread of its own: the resolver refuses to wait in one with an event loop, and the
    browser tests leave theirs running in the thread that runs the tests.
    """

    def ask() -> ServiceInfo | None:
        until = time.monotonic() + PATIENCE_S
        found = None
        with closing(Zeroconf(interfaces=["127.0.0.1"])) as resolver:
            while found is None and not said and time.monotonic() < until:
                found = resolver.get_service_info(KIND, f"{label}.{KIND}", timeout=3000)
        return found

    with ThreadPoolExecutor(1) as thread:
        return thread.submit(ask).result()
