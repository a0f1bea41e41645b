"""Labels that get dirty: the way they are printed reads as well as it was measured to.

The counts are of seeded labels, with readers pinned in the lock file; on another machine a
grey level may fall to the other side, hence the margin. The whole experiment, from which the
way was chosen, prints its tables with

    tests/run tests/labels/test_dirty_labels.py -m benchmark -s
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

import numpy as np
import pytest

from flangebook.labels.label import SIZES

from .dirty import DAMAGES, READERS, counts, dirtied, read, seen
from .printed import PX_PER_MM, Way, modules_mm, printed

LABELS = range(12)
MARGIN = 2  # readings, of both readers' twelve each
SMALL, LARGE = Way(), Way(size="100x50")
# Labels of twelve read by ZXing and by OpenCV.
MEASURED = {
    "clean": (12, 11),
    "few blots on the data": (12, 8),
    "many blots on the data": (8, 1),
    "few blots anywhere": (9, 6),
    "many blots anywhere": (3, 0),
    "scratches": (8, 1),
    "blur": (9, 2),
    "turned and slanted": (12, 1),
    "dim and noisy": (12, 5),
    "far": (5, 0),
    "pale": (9, 2),
    "glare": (12, 9),
    "all at once": (3, 0),
}
MEASURED_LARGE = {
    "few blots anywhere": (9, 4),
    "scratches": (6, 0),
    "far": (10, 0),
}


def as_measured(way: Way, kind: str, measured: tuple[int, int]) -> bool:
    return sum(counts(way, kind, LABELS)) >= sum(measured) - MARGIN


@pytest.mark.parametrize("kind", DAMAGES)
def test_the_small_label_reads_as_measured(kind: str) -> None:
    assert sum(MEASURED[kind]) > MARGIN  # else the bound could not fail
    assert as_measured(SMALL, kind, MEASURED[kind]), counts(SMALL, kind, LABELS)


@pytest.mark.parametrize("kind", MEASURED_LARGE)
def test_the_large_label_reads_as_measured(kind: str) -> None:
    assert sum(MEASURED_LARGE[kind]) > MARGIN
    assert as_measured(LARGE, kind, MEASURED_LARGE[kind]), counts(LARGE, kind, LABELS)


@pytest.mark.parametrize(("place", "reader"), list(enumerate(READERS)))
def test_each_reader_does_its_share(place: int, reader: str) -> None:
    read_now = sum(counts(SMALL, kind, LABELS)[place] for kind in MEASURED)
    assert read_now >= sum(both[place] for both in MEASURED.values()) - 2 * MARGIN, reader


@pytest.mark.parametrize("kind", MEASURED)
def test_no_reader_takes_a_dirty_label_for_another_card(kind: str) -> None:
    assert not any(read(number, SMALL, kind).wrong for number in LABELS)


@pytest.mark.parametrize("kind", DAMAGES)
def test_the_pictures_are_the_same_each_time(kind: str) -> None:
    for one, again in zip(seen(3, SMALL, kind), seen(3, SMALL, kind), strict=True):
        assert np.array_equal(one, again)


@pytest.mark.parametrize("kind", ["few blots on the data", "many blots on the data"])
@pytest.mark.parametrize("size", SIZES)
def test_blots_on_the_data_spare_every_finder_pattern(size: str, kind: str) -> None:
    for number in range(4):
        one = printed(number, Way(size=size))
        changed = dirtied(one, kind, number) != one.picture
        assert changed.any()
        for corner in one.corners:
            left, top, right, bottom = (round(v * PX_PER_MM) for v in corner)
            assert not changed[top:bottom, left:right].any()


def total(way: Way, kinds: Iterable[str]) -> int:
    """Readings by both readers over all these kinds."""
    return sum(sum(counts(way, kind, LABELS)) for kind in kinds)


def small(level: str, **otherwise: object) -> Way:
    return Way(levels=(level,), **otherwise)  # type: ignore[arg-type]


def large(*levels: str) -> Way:
    return Way(size="100x50", levels=levels)


def test_more_correction_reads_through_more_dirt_on_the_data() -> None:
    kinds = ["few blots on the data", "many blots on the data"]
    by_level = [total(small(level), kinds) for level in "LMQH"]
    assert by_level[0] < by_level[1] < min(by_level[2:])
    assert total(SMALL, kinds) == by_level[3] >= by_level[2] - MARGIN


def test_capitals_make_larger_modules_that_read_from_farther_off() -> None:
    mixed = small("H", capitals=False)
    assert modules_mm(SMALL)[0][0] < modules_mm(mixed)[0][0]
    assert modules_mm(SMALL)[0][1] > 1.09 * modules_mm(mixed)[0][1]
    assert total(SMALL, ["blur", "far"]) > total(mixed, ["blur", "far"])


def test_black_on_white_reads_in_dim_light_where_grey_on_grey_does_not() -> None:
    faint = small("H", ink=110.0, paper=190.0)
    assert total(SMALL, ["dim and noisy"]) > total(faint, ["dim and noisy"]) + MARGIN


def test_a_second_code_reads_where_dirt_has_hit_the_first() -> None:
    kinds = ["few blots anywhere", "scratches"]
    assert total(LARGE, kinds) > total(large("Q"), kinds)


def test_the_large_code_reads_from_farther_off_at_level_q() -> None:
    assert modules_mm(LARGE)[0][1] > 1.1 * modules_mm(large("H"))[0][1]
    assert total(LARGE, ["far"]) > total(large("H"), ["far"]) + MARGIN


def test_the_measure_tells_a_worse_label_from_ours() -> None:
    """The bounds above can fail: they do for other ways to print the same label."""
    kind = "few blots on the data"
    assert not as_measured(small("L"), kind, MEASURED[kind])
    assert not as_measured(small("H", capitals=False), "far", MEASURED["far"])


EXPERIMENT: Mapping[str, tuple[Mapping[str, Way], Iterable[str]]] = {
    "Level and spelling": (
        {f"{level} {words}": small(level, capitals=capitals)
         for capitals, words in ((True, "capitals"), (False, "mixed")) for level in "LMQH"},
        DAMAGES,
    ),
    "White around it, ink and paper": (
        {f"{level}, {quiet} modules": small(level, quiet=quiet)
         for level in "QH" for quiet in (4, 2, 1)}
        | {"grey ink": small("H", ink=90.0), "grey paper": small("H", paper=170.0)},
        DAMAGES,
    ),
    "Codes on the large label": (
        {"Q": large("Q"), "H": large("H"), "Q and H": large("Q", "H"), "H and H": large("H", "H"),
         "Q and a larger H": Way("100x50", ("Q", "H"), squares=((0, 0, 36, 0), (76, 26, 24, 0)))},
        ["few blots anywhere", "many blots anywhere", "scratches", "glare", "blur", "far",
         "all at once"],
    ),
}  # fmt: skip


@pytest.mark.benchmark
@pytest.mark.parametrize("name", EXPERIMENT)
def test_print_the_whole_experiment(name: str) -> None:
    """Thirty labels a cell: read by ZXing + by OpenCV."""
    ways, kinds = EXPERIMENT[name]
    print(f"\n{name}\n| damage | {' | '.join(ways)} |\n|{' --- |' * (len(ways) + 1)}")
    for kind in kinds:
        cells = ["{} + {}".format(*counts(way, kind, range(30))) for way in ways.values()]
        print(f"| {kind} | {' | '.join(cells)} |", flush=True)
