"""A plan that may take long, told line by line while it is made: newline-delimited JSON.

Each line but the last says how far the search for the order is; the last one is the plan, or
the problem that there is no plan. When the asker hangs up, the search ends.
"""

from __future__ import annotations

import queue
import threading
import time
from collections.abc import Callable, Iterator, Mapping
from dataclasses import asdict
from typing import Any

from flask import Request, Response

from flangebook.api import problems
from flangebook.api.leaving import cancelled_when
from flangebook.bending.ordering.cost import Cost
from flangebook.bending.ordering.search import Progress
from flangebook.planning.deadline import DEADLINE_S, PlanLimits
from flangebook.planning.order.search import HANDLING_WORDS
from flangebook.shop.storage.writing import json_text
from flangebook.shop.work import NotWantedError

CONTENT_TYPE = "application/x-ndjson"
LINE_EVERY_S = 0.3
JsonDict = dict[str, Any]
Planner = Callable[[PlanLimits], Mapping[str, Any]]


def wanted(asked: Request) -> bool:
    """Whether the asker asks for lines by name."""
    kinds = asked.accept_mimetypes
    return CONTENT_TYPE in kinds.values() and kinds[CONTENT_TYPE] > 0


def streamed(make: Planner) -> Response:
    """The plan as lines, made beside the one who sends them."""
    made = Response(_lines(make), content_type=CONTENT_TYPE)
    made.headers["Cache-Control"] = "no-store"
    made.headers["X-Accel-Buffering"] = "no"
    return made


class _Work:
    """The planning, in a thread of its own: the last it told, and how it ended."""

    def __init__(self, make: Planner) -> None:
        self.make = make
        self.began = time.monotonic()
        self.last: Progress | None = None
        self.before = 0
        self.best: Cost | None = None
        self.hung_up = threading.Event()
        self.ended: queue.SimpleQueue[str] = queue.SimpleQueue()
        threading.Thread(target=self._run, name="plan", daemon=True).start()

    def _run(self) -> None:
        cancelled = cancelled_when(self.hung_up.is_set)
        limits = PlanLimits(DEADLINE_S, cancelled=cancelled, progress=self._tell)
        try:
            line = f'{{"plan":{json_text(self.make(limits))}}}'
        except NotWantedError:
            return
        except Exception as error:
            line = f'{{"problem":{problems.said(error).get_data(as_text=True)}}}'
        self.ended.put(line)

    def _tell(self, progress: Progress) -> None:
        """Note how far it is: several searches may make one plan."""
        if self.last is not None and progress.looked_at < self.last.looked_at:
            self.before += self.last.looked_at
        self.last = progress
        self.best = progress.best or self.best

    def progress_json(self) -> JsonDict:
        """How far the planning is; before a search has said anything, that it has begun."""
        last = self.last
        return {
            "seconds": round(time.monotonic() - self.began, 2),
            "deadline_s": DEADLINE_S,
            "looked_at": self.before + (last.looked_at if last else 0),
            "bends_left": last.bends_left if last else None,
            "best": _best_json(self.best),
        }


def _lines(make: Planner) -> Iterator[str]:
    work = _Work(make)
    try:
        while True:
            try:
                yield work.ended.get(timeout=LINE_EVERY_S) + "\n"
            except queue.Empty:
                yield json_text({"progress": work.progress_json()}) + "\n"
            else:
                return
    finally:
        work.hung_up.set()


def _best_json(best: Cost | None) -> JsonDict | None:
    if best is None:
        return None
    return {name: value for name, value in asdict(best).items() if name in HANDLING_WORDS}
