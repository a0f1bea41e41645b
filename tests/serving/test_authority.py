"""The shop's authority, judged by others: OpenSSL's command and Python's ssl module.

RFC 5280 is what both hold it to (4.2.1.9 basic constraints, 4.2.1.10 name constraints).
"""

from __future__ import annotations

import ipaddress
import socket
import ssl
import stat
import subprocess
import sys
import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec

from flangebook.serving.lan.authority import (
    AUTHORITY_DAYS,
    LEAF_DAYS,
    RENEW_DAYS,
    AuthorityError,
    Certificates,
    certificates,
)

NAMES = ["oak-iron.local", "oak-iron.home.arpa", "localhost"]
NUMBERS = [ipaddress.ip_address(a) for a in ("127.0.0.1", "192.168.1.20", "fd00::5", "8.8.8.8")]


@pytest.fixture
def made(tmp_path: Path) -> Certificates:
    return certificates(tmp_path / "https", "Oak & Iron", NAMES, NUMBERS)


def connected(made: Certificates, name: str) -> str:
    """What a client says that trusts the authority and calls the server by that name."""
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(made.leaf, made.key)
    ours, theirs = socket.socketpair()

    def serve() -> None:
        try:
            with context.wrap_socket(ours, server_side=True) as line:
                line.recv(1)
        except OSError:
            pass

    threading.Thread(target=serve, daemon=True).start()
    trusting = ssl.create_default_context(cafile=str(made.authority))
    if hasattr(ssl, "VERIFY_X509_STRICT"):
        trusting.verify_flags |= ssl.VERIFY_X509_STRICT
    try:
        with trusting.wrap_socket(theirs, server_hostname=name) as line:
            line.sendall(b"x")
        return "trusted"
    except ssl.SSLCertVerificationError as error:
        return error.verify_message


@pytest.mark.parametrize("name", ["oak-iron.local", "localhost", "192.168.1.20", "fd00::5"])
def test_a_client_that_trusts_it_accepts_the_hosts_names(made: Certificates, name: str):
    assert connected(made, name) == "trusted"


@pytest.mark.parametrize("name", ["bank.example", "8.8.8.8", "x.oak-iron.local", "10.0.0.1"])
def test_and_no_other(made: Certificates, name: str):
    assert "mismatch" in connected(made, name).lower()


def signed_by(made: Certificates, san: list[x509.GeneralName], *, ca: bool = False) -> Path:
    """What a thief of the authority's key could make."""
    key = ec.generate_private_key(ec.SECP256R1())
    authority = x509.load_pem_x509_certificate(made.authority.read_bytes())
    secret = serialization.load_pem_private_key(
        (made.authority.parent / "authority.key").read_bytes(), None
    )
    moment = datetime.now(UTC)
    name = x509.Name([x509.NameAttribute(x509.NameOID.COMMON_NAME, "thief")])
    leaf = (
        x509.CertificateBuilder()
        .subject_name(name)
        .issuer_name(authority.subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(moment - timedelta(days=1))
        .not_valid_after(moment + timedelta(days=30))
        .add_extension(x509.BasicConstraints(ca=ca, path_length=None), critical=True)
        .add_extension(x509.SubjectAlternativeName(san), critical=False)
        .sign(secret, hashes.SHA256())
    )
    path = made.authority.parent / "thief.crt"
    path.write_bytes(leaf.public_bytes(serialization.Encoding.PEM))
    return path


def openssl_says(made: Certificates, leaf: Path) -> str:
    done = subprocess.run(
        ["openssl", "verify", "-x509_strict", "-CAfile", str(made.authority), str(leaf)],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    return done.stdout + done.stderr


def test_openssl_accepts_the_leaf(made: Certificates):
    assert openssl_says(made, made.leaf).strip().endswith("OK")


@pytest.mark.parametrize(
    "san",
    [
        [x509.DNSName("bank.example")],
        [x509.DNSName("other.local")],
        [x509.IPAddress(ipaddress.ip_address("8.8.8.8"))],
        [x509.DNSName("oak-iron.local"), x509.DNSName("bank.example")],
    ],
)
def test_openssl_refuses_what_a_stolen_key_would_sign_for_others(
    made: Certificates, san: list[x509.GeneralName]
):
    assert "permitted subtree violation" in openssl_says(made, signed_by(made, san))


def test_only_the_owner_reads_the_keys(made: Certificates):
    if sys.platform == "win32":
        pytest.fail("the modes of files are POSIX's; test another way here")
    folder = made.authority.parent
    assert stat.S_IMODE(folder.stat().st_mode) == 0o700
    for file in folder.iterdir():
        assert stat.S_IMODE(file.stat().st_mode) == 0o600, file


def test_a_second_start_changes_nothing(made: Certificates):
    again = certificates(made.authority.parent, "Oak & Iron", NAMES, NUMBERS)
    assert again.renewed is False
    assert again.fingerprint == made.fingerprint


def test_the_fingerprint_is_what_openssl_shows(made: Certificates):
    done = subprocess.run(
        ["openssl", "x509", "-in", str(made.authority), "-noout", "-fingerprint", "-sha256"],
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    assert done.stdout.strip().rpartition("=")[2].replace(":", "") == made.fingerprint


@pytest.mark.parametrize(
    ("days", "renewed"), [(LEAF_DAYS - RENEW_DAYS - 1, False), (LEAF_DAYS - RENEW_DAYS + 1, True)]
)
def test_the_leaf_is_renewed_in_time_and_the_authority_stays(
    made: Certificates, days: int, renewed: bool
):
    before = made.authority.read_bytes()
    later = certificates(
        made.authority.parent,
        "Oak & Iron",
        NAMES,
        NUMBERS,
        datetime.now(UTC) + timedelta(days=days),
    )
    assert later.renewed is renewed
    assert made.authority.read_bytes() == before


def test_another_address_renews_the_leaf_only(made: Certificates):
    more = [*NUMBERS, ipaddress.ip_address("10.1.2.3")]
    later = certificates(made.authority.parent, "Oak & Iron", NAMES, more)
    assert (later.renewed, later.fingerprint) == (True, made.fingerprint)
    assert connected(later, "10.1.2.3") == "trusted"


def test_another_name_needs_another_authority(made: Certificates):
    later = certificates(made.authority.parent, "Elm", ["elm.local", "localhost"], NUMBERS)
    assert later.fingerprint != made.fingerprint
    assert connected(later, "elm.local") == "trusted"


def test_an_authority_that_ends_soon_is_made_anew(made: Certificates):
    later = datetime.now(UTC) + timedelta(days=AUTHORITY_DAYS - LEAF_DAYS + 2)
    again = certificates(made.authority.parent, "Oak & Iron", NAMES, NUMBERS, later)
    assert again.fingerprint != made.fingerprint


@pytest.mark.parametrize("file", ["authority.crt", "authority.key", "server.crt", "server.key"])
def test_a_broken_file_is_said_and_nothing_is_overwritten(made: Certificates, file: str):
    path = made.authority.parent / file
    path.write_bytes(b"-----BEGIN CERTIFICATE-----\nnonsense\n")
    with pytest.raises(AuthorityError, match="cannot be read"):
        certificates(made.authority.parent, "Oak & Iron", NAMES, NUMBERS)
    assert path.read_bytes().endswith(b"nonsense\n")
