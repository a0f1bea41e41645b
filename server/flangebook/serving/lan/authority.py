"""The shop's own certificate authority, small and bound to this one host.

Made once, kept in the shop's folder, readable by its owner only. What it may vouch for is
written into it (RFC 5280, 4.2.1.10, name constraints, critical): the host's names and
private addresses. A stolen key can therefore not be used against any other site.

The leaf certificate is renewed by itself; who trusts the authority notices nothing.
"""

from __future__ import annotations

import ipaddress
import os
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from flangebook.shop.errors import CopyError
from flangebook.shop.storage.whole_file import unfinished

Address = ipaddress.IPv4Address | ipaddress.IPv6Address
Key = ec.EllipticCurvePrivateKey

AUTHORITY_DAYS = 3650
LEAF_DAYS = 397  # browsers refuse longer ones (CA/Browser Forum baseline, before 2026)
RENEW_DAYS = 60
_EARLIER = timedelta(hours=1)  # a phone's clock may be behind
# Loopback, the private ranges of RFC 1918 and RFC 4193, link-local ones of RFC 3927 and 4291.
NETWORKS = (
    "127.0.0.0/8", "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16",
    "::1/128", "fc00::/7", "fe80::/10",
)  # fmt: skip


class AuthorityError(Exception):
    """The certificates can't be made, read or used; the message says what helps."""


@dataclass(frozen=True, slots=True)
class Certificates:
    """The files of the shop's https.

    authority: what devices are asked to trust (PEM). leaf, key: what the server shows, and its
    secret. fingerprint: SHA-256 of the authority, hexadecimal. renewed: whether the leaf is new.
    """

    authority: Path
    leaf: Path
    key: Path
    fingerprint: str
    renewed: bool


def certificates(
    folder: Path, shop: str, names: Iterable[str], addresses: Iterable[Address],
    today: datetime | None = None,
) -> Certificates:  # fmt: skip
    """The certificates in ``folder``, made or renewed where that is due.

    shop: the name people know. names: the host's, in lower case. addresses: the host's, of
    which those outside the private ranges are left out. Raises AuthorityError.
    """
    moment = today or datetime.now(UTC)
    wanted = tuple(dict.fromkeys(names))
    numbers = tuple(a for a in dict.fromkeys(addresses) if is_private(a))
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        os.chmod(folder, 0o700)
        authority, key = _authority(folder, shop, wanted, moment)
        renewed = not _fits(folder, authority, wanted, numbers, moment)
        if renewed:
            _make_leaf(folder, authority, key, wanted, numbers, moment)
    except OSError as error:
        raise AuthorityError(
            f"The folder {folder} cannot be used: {error.strerror or error}."
        ) from error
    except CopyError as error:
        raise AuthorityError(str(error)) from error
    except ValueError as error:
        raise AuthorityError(
            f"A certificate in {folder} cannot be read ({error}). Move the folder away and start "
            "again: new ones are made, and the devices have to trust the new authority."
        ) from error
    fingerprint = authority.fingerprint(hashes.SHA256()).hex().upper()
    return Certificates(
        folder / "authority.crt", folder / "server.crt", folder / "server.key", fingerprint, renewed
    )


def is_private(address: Address) -> bool:
    """Whether the authority may vouch for the address.

    >>> is_private(ipaddress.ip_address("192.168.1.20"))
    True
    >>> is_private(ipaddress.ip_address("8.8.8.8"))
    False
    """
    return any(
        address.version == network.version and address in network
        for network in map(ipaddress.ip_network, NETWORKS)
    )


def _authority(
    folder: Path, shop: str, names: tuple[str, ...], moment: datetime
) -> tuple[x509.Certificate, Key]:
    """The authority that is there, or a new one where there is none, it ends soon, or the
    host has got a name that it may not vouch for."""
    crt, key_file = folder / "authority.crt", folder / "authority.key"
    if crt.exists() and key_file.exists():
        kept = x509.load_pem_x509_certificate(crt.read_bytes())
        key = serialization.load_pem_private_key(key_file.read_bytes(), None)
        if not isinstance(key, Key):
            raise ValueError("its key is of another kind")
        lasts = kept.not_valid_after_utc - moment > timedelta(days=LEAF_DAYS)
        if lasts and set(names) <= _permitted(kept):
            return kept, key
    key = ec.generate_private_key(ec.SECP256R1())
    made = _signed_authority(shop, names, key, moment)
    _write(key_file, _secret(key))
    _write(crt, made.public_bytes(serialization.Encoding.PEM))
    return made, key


def _permitted(authority: x509.Certificate) -> set[str]:
    limits = authority.extensions.get_extension_for_class(x509.NameConstraints).value
    return {n.value for n in limits.permitted_subtrees or () if isinstance(n, x509.DNSName)}


def _signed_authority(
    shop: str, names: tuple[str, ...], key: Key, moment: datetime
) -> x509.Certificate:
    subject = x509.Name(
        [
            x509.NameAttribute(NameOID.ORGANIZATION_NAME, "Flangebook"),
            x509.NameAttribute(NameOID.COMMON_NAME, f"{shop} - Flangebook"[:64]),
        ]
    )
    permitted: list[x509.GeneralName] = [x509.DNSName(name) for name in names]
    permitted += [x509.IPAddress(ipaddress.ip_network(one)) for one in NETWORKS]
    return (
        _begun(subject, subject, key, moment, AUTHORITY_DAYS)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(signs_certificates=True), critical=True)
        .add_extension(x509.NameConstraints(permitted, None), critical=True)
        .sign(key, hashes.SHA256())
    )


def _usage(*, signs_certificates: bool) -> x509.KeyUsage:
    """An authority's key signs certificates and their withdrawal, a server's the handshake."""
    return x509.KeyUsage(
        digital_signature=not signs_certificates, content_commitment=False,
        key_encipherment=False, data_encipherment=False, key_agreement=False,
        key_cert_sign=signs_certificates, crl_sign=signs_certificates, encipher_only=False,
        decipher_only=False,
    )  # fmt: skip


def _begun(
    subject: x509.Name, issuer: x509.Name, key: Key, moment: datetime, days: int
) -> x509.CertificateBuilder:
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(issuer)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(moment - _EARLIER)
        .not_valid_after(moment + timedelta(days=days))
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
    )


def _make_leaf(
    folder: Path, authority: x509.Certificate, signer: Key, names: tuple[str, ...],
    addresses: tuple[Address, ...], moment: datetime,
) -> None:  # fmt: skip
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, names[0][:64])])
    alternatives: list[x509.GeneralName] = [x509.DNSName(name) for name in names]
    alternatives += [x509.IPAddress(one) for one in addresses]
    made = (
        _begun(subject, authority.subject, key, moment, LEAF_DAYS)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(signs_certificates=False), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectAlternativeName(alternatives), critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_public_key(signer.public_key()), critical=False
        )
        .sign(signer, hashes.SHA256())
    )
    _write(folder / "server.key", _secret(key))
    _write(folder / "server.crt", made.public_bytes(serialization.Encoding.PEM))


def _fits(
    folder: Path, authority: x509.Certificate, names: tuple[str, ...],
    addresses: tuple[Address, ...], moment: datetime,
) -> bool:  # fmt: skip
    """Whether the leaf that is there is this authority's, lasts, and holds all names."""
    crt, key_file = folder / "server.crt", folder / "server.key"
    if not crt.exists() or not key_file.exists():
        return False
    leaf = x509.load_pem_x509_certificate(crt.read_bytes())
    key = serialization.load_pem_private_key(key_file.read_bytes(), None)
    form = serialization.Encoding.DER, serialization.PublicFormat.SubjectPublicKeyInfo
    if key.public_key().public_bytes(*form) != leaf.public_key().public_bytes(*form):
        return False
    try:
        leaf.verify_directly_issued_by(authority)
    except Exception:
        return False
    held = leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    return (
        leaf.not_valid_after_utc - moment > timedelta(days=RENEW_DAYS)
        and set(names) <= set(held.get_values_for_type(x509.DNSName))
        and set(addresses) <= set(held.get_values_for_type(x509.IPAddress))
    )


def _secret(key: Key) -> bytes:
    return key.private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )


def _write(path: Path, content: bytes) -> None:
    with unfinished(path) as file:
        file.write_bytes(content)
