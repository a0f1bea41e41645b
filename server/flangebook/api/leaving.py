"""Who asked may leave before the answer is there: then nobody works on it any longer."""

from __future__ import annotations

from collections.abc import Callable

from flask import has_request_context, request

from flangebook.api.caller import GONE_KEY
from flangebook.planning.limits import Limits
from flangebook.shop.work import NotWantedError


def limits_of_request() -> Limits:
    """What a plan may take: it ends when the one who asked for it leaves."""
    gone = request.environ.get(GONE_KEY) if has_request_context() else None
    return Limits() if gone is None else Limits(cancelled=_raising(gone))


def _raising(gone: Callable[[], bool]) -> Callable[[], bool]:
    def cancelled() -> bool:
        if gone():
            raise NotWantedError
        return False

    return cancelled
