"""Who asked may leave before the answer is there: then nobody works on it any longer."""

from __future__ import annotations

from collections.abc import Callable

from flask import has_request_context, request

from flangebook.api.caller import GONE_KEY
from flangebook.planning.deadline import PlanLimits
from flangebook.shop.work import NotWantedError


def limits_of_request() -> PlanLimits:
    """What a plan may take: it ends when the one who asked for it leaves."""
    gone = request.environ.get(GONE_KEY) if has_request_context() else None
    return PlanLimits() if gone is None else PlanLimits(cancelled=cancelled_when(gone))


def cancelled_when(gone: Callable[[], bool]) -> Callable[[], bool]:
    """What a plan asks from time to time: it raises NotWantedError once who asked is gone."""

    def cancelled() -> bool:
        if gone():
            raise NotWantedError
        return False

    return cancelled
