"""The steps at the press: tools, gauge, turns and drawing of each, from one set of numbers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from flangebook.bending.errors import InputError
from flangebook.bending.gauging import End, Gauge, draw_back_mm, gauge_options
from flangebook.bending.part import Part
from flangebook.bending.pose import StepDrawing, Stroke, flatten_drawing
from flangebook.bending.section import FoldedBend, allowance_at, strip_of
from flangebook.bending.step_bending import hit_gauge_x_mm, hit_numbers, stepped
from flangebook.bending.strip import Strip
from flangebook.planning.drawing import drawn, stroke_of
from flangebook.planning.fit import Equipment, Fit
from flangebook.planning.gauge_choice import ENDS, choose_ends, end_cost
from flangebook.planning.operations import Operation
from flangebook.planning.stand_ins import press_to_draw_with
from flangebook.planning.tool_choice import here_of
from flangebook.planning.touching import Touch, touches

USUAL_ACUTE_DEG = 30.0

EndPenalties = Mapping[tuple[int, End], float]


@dataclass(frozen=True, slots=True)
class Bench:
    """What every step is worked out from.

    folded: how the bends come out of the chosen tools, in the part's order.
    """

    part: Part
    folded: tuple[FoldedBend, ...]
    equipment: Equipment


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """One step, planned.

    fit: the tools and what they give, None for a flattening. gauge: None where neither end
    can be gauged. refused: why a gauge or a drawing could not be worked out, or "".
    hit_x_mm: gauge X of each hit of a stepped radius, in the order they are made.
    """

    operation: Operation
    fit: Fit | None
    end: End
    gauge: Gauge | None
    no_gauge: str
    turn_over: bool
    turn_end: bool
    drawing: StepDrawing | None
    touches: tuple[Touch, ...]
    refused: str = ""
    hit_x_mm: tuple[float, ...] = ()

    @property
    def owned(self) -> bool:
        """Whether both tools are the shop's own and the bend could be predicted."""
        fit = self.fit
        return fit is not None and bool(fit.die.code and fit.punch.code) and fit.bend is not None


@dataclass(frozen=True, slots=True)
class _Gauged:
    """The best place at an end, None without one, and why."""

    gauge: Gauge | None
    why: str


def planned_steps(
    bench: Bench,
    steps: Sequence[Operation],
    fits: Sequence[Fit | None],
    penalties: EndPenalties,
) -> list[PlannedStep]:
    """Every step with its gauge, turns and drawing.

    penalties: what speaks against an end at the gauge, by step number.
    """
    options = [_gauges(bench, step, one) for step, one in zip(steps, fits, strict=True)]
    costs = [
        _end_costs(bench, step, by_end, penalties)
        for step, by_end in zip(steps, options, strict=True)
    ]
    ends = choose_ends([step.direction for step in steps], costs)
    found: list[PlannedStep] = []
    for step, one, end, by_end in zip(steps, fits, ends, options, strict=True):
        before = found[-1] if found else None
        found.append(_planned(bench, step, one, end, by_end[end], before))
    return found


def _gauges(bench: Bench, step: Operation, one: Fit | None) -> dict[End, _Gauged]:
    """The best place for the finger at either end."""
    if one is None:
        return {end: _Gauged(None, "") for end in ENDS}
    strip = strip_of(bench.part, bench.folded, step.made)
    press = press_to_draw_with(bench.equipment.press)
    try:
        places = gauge_options(strip, step.bend, step.direction, press, one.die, punch=one.punch)
    except InputError as error:
        return {end: _Gauged(None, error.what) for end in ENDS}
    found = {}
    for end in ENDS:
        here = [g for g in places if g.end == end]
        best = next((g for g in here if g.reachable), None)
        why = best.reason if best else here[0].reason if here else "Nothing there faces the back."
        found[end] = _Gauged(best, why)
    return found


def _end_costs(
    bench: Bench, step: Operation, by_end: Mapping[End, _Gauged], penalties: EndPenalties
) -> dict[End, float]:
    if step.flattens:
        return dict.fromkeys(ENDS, 0.0)
    strip = strip_of(bench.part, bench.folded, step.made)
    left_share = strip.folds[step.bend - 1].at_mm / strip.length_mm
    share: dict[End, float] = {"left": left_share, "right": 1.0 - left_share}
    return {
        end: end_cost(by_end[end].gauge, share[end]) + penalties.get((step.number, end), 0.0)
        for end in ENDS
    }


def _planned(
    bench: Bench,
    step: Operation,
    one: Fit | None,
    end: End,
    gauged: _Gauged,
    before: PlannedStep | None,
) -> PlannedStep:
    over = before is not None and before.operation.direction != step.direction
    turned = before is not None and before.end != end
    bare = PlannedStep(step, one, end, None, "", over, turned, None, ())
    if one is None:
        return replace(bare, drawing=_flattened(bench, step, before))
    gauge = gauged.gauge
    bare = replace(bare, gauge=gauge, no_gauge="" if gauge else gauged.why)
    stroke = stroke_of(one)
    if stroke is None:
        return bare
    try:
        return _drawn(bench, bare, one, stroke)
    except InputError as error:
        return replace(bare, refused=error.what)


def _drawn(bench: Bench, bare: PlannedStep, one: Fit, stroke: Stroke) -> PlannedStep:
    """The step with its draw-back and drawing; of a stepped radius the last hit is drawn."""
    step, end, gauge = bare.operation, bare.end, bare.gauge
    strip, number = strip_of(bench.part, bench.folded, step.made), step.bend
    hit_x: tuple[float, ...] = ()
    first = gauge
    if step.hits is not None:
        strip, number = _last_hit(strip, step, one, end)
        hit_x = () if gauge is None else hit_gauge_x_mm(step.hits, gauge.x_mm, end)
        gauge, first = _at(gauge, hit_x[-1:]), _at(gauge, hit_x[:1])
    if gauge is None and end == "left":
        strip, number = strip.reversed(), len(strip.folds) + 1 - number
    if gauge is not None:
        press = press_to_draw_with(bench.equipment.press)
        back = draw_back_mm(
            gauge, strip, number, step.direction,
            stroke=stroke, press=press, die=one.die, punch=one.punch,
        )  # fmt: skip
        gauge = replace(gauge, draw_back_mm=back)
        first = gauge if first is None or not hit_x else replace(first, draw_back_mm=back)
    drawing = drawn(strip, number, step.direction, one, bench.equipment, gauge)
    found = tuple(touches(drawing)) if drawing is not None and bare.owned else ()
    return replace(bare, gauge=first, drawing=drawing, touches=found, hit_x_mm=hit_x)


def _at(gauge: Gauge | None, x_mm: Sequence[float]) -> Gauge | None:
    """The same place at another X."""
    if gauge is None or not x_mm:
        return gauge
    return replace(gauge, x_mm=x_mm[0], contact=(x_mm[0], gauge.contact[1]))


def _last_hit(strip: Strip, step: Operation, one: Fit, end: End) -> tuple[Strip, int]:
    """The strip when all hits of a stepped radius but the last are made, and that hit's bend."""
    assert step.hits is not None
    made = hit_numbers(step.hits.count, end)
    hit = here_of(one)
    if hit.allowance_mm > step.hits.pitch_mm:  # hits that run into one another: draw them sharper
        hit = replace(hit, allowance_mm=step.hits.pitch_mm)
    whole = stepped(strip, step.bend, step.hits, step.direction, hit, made[:-1])
    return whole, step.bend + made[-1] - 1


def _flattened(bench: Bench, step: Operation, before: PlannedStep | None) -> StepDrawing:
    """The closing of a hem, the sheet alone, from the acute bend of the step before."""
    part, folded = bench.part, bench.folded[step.bend - 1]
    acute_fit = before.fit if before is not None else None
    if before is None or acute_fit is None or acute_fit.bend is None:
        angle, radius = USUAL_ACUTE_DEG, part.thickness_mm
        bend = part.bends[step.bend - 1]
        taken = allowance_at(angle, radius, bend, folded, part.thickness_mm)
    else:
        angle = before.operation.included_angle_deg
        radius = acute_fit.bend.inside_radius_mm.nominal
        taken = acute_fit.bend.bend_allowance_mm.nominal
    return flatten_drawing(
        strip_of(part, bench.folded, step.made),
        step.bend,
        step.direction,
        acute=(angle, radius, taken),
        closed=(0.0, folded.inside_radius_mm, folded.allowance_mm),
        hem_end=hem_end(part, step.bend),
    )


def hem_end(part: Part, bend: int) -> End:
    """The end of the part a hem is at; of a part with one bend, the shorter flat's."""
    if len(part.bends) == 1:
        return "left" if part.flats_mm[0] <= part.flats_mm[1] else "right"
    return "left" if bend == 1 else "right"
