"""The steps at the press: tools, gauge, turns and drawing of each, from one set of numbers."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, field, replace

from flangebook.bending.checks import Sentence
from flangebook.bending.errors import InputError
from flangebook.bending.geometry.ring import moved
from flangebook.bending.geometry.strip import Strip
from flangebook.bending.motion.gauging import Gauge, gauge_options, retract_mm
from flangebook.bending.motion.lying import Stroke
from flangebook.bending.motion.pose import StepDrawing, flatten_drawing
from flangebook.bending.part.bump_bends import bump_gauge_x_mm, bump_numbers, stepped
from flangebook.bending.part.part import End, Part
from flangebook.bending.part.section import FoldedBend, allowance_at, strip_of
from flangebook.bending.prediction.first_hit import FirstHit
from flangebook.bending.tools.outline import finger_outline
from flangebook.planning.steps.drawing import drawn, stroke_of, with_punch
from flangebook.planning.steps.gauge_choice import ENDS, NO_GAUGE, choose_ends, end_cost
from flangebook.planning.steps.operations import Operation
from flangebook.planning.steps.touching import LOWER, UPPER, Sheets, Touch
from flangebook.planning.tools.fit import Equipment, Fit
from flangebook.planning.tools.stand_ins import press_to_draw_with
from flangebook.planning.tools.tool_choice import TOUCH_COST, here_of

USUAL_ACUTE_DEG = 30.0


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """One step, planned.

    fit: the tools and what they give, None for a flattening. gauge: None where that end cannot
    be gauged, no_gauge says why. refused: why gauge or drawing could not be worked out, or "".
    bump_x_mm: gauge X of each bump of a stepped radius, in the order they are made.
    """

    operation: Operation
    fit: Fit | None
    end: End
    gauge: Gauge | None = None
    no_gauge: Sentence | None = None
    drawing: StepDrawing | None = None
    touches: tuple[Touch, ...] = ()
    refused: str = ""
    bump_x_mm: tuple[float, ...] = ()
    turn_over: bool = False
    turn_end: bool = False

    @property
    def owned(self) -> bool:
        """Whether both tools are the shop's own and the bend could be predicted."""
        fit = self.fit
        return fit is not None and bool(fit.die.code and fit.punch.code) and fit.bend is not None

    @property
    def first_hit(self) -> FirstHit | None:
        """The first hit of the step, where it leads.

        A hem's acute bend is flattened after it, and a hem too open buckles; of a radius made of
        many bumps each bump's error adds up: both are set as expected.
        """
        if self.fit is None or not self.owned or self.operation.kind != "bend":
            return None
        return self.fit.first_hit

    @property
    def troubled(self) -> bool:
        """Whether the sheet runs into a tool as drawn, or nothing can be gauged."""
        return bool(self.touches or self.no_gauge)


@dataclass(frozen=True, slots=True)
class _Gauged:
    """The best place at an end, None without one, and why."""

    gauge: Gauge | None
    why: Sentence


@dataclass(frozen=True, slots=True)
class _Pose:
    """A step drawn, the strip and bend number it was drawn from (that end at the back)."""

    drawing: StepDrawing | None
    strip: Strip
    number: int
    sheets: Sheets | None = None
    touches: tuple[Touch, ...] = ()
    refused: str = ""


_Key = tuple[int, str, str, str]
"""Step number, punch, die, and what predicted the bend."""


@dataclass(slots=True)
class StepMaker:
    """Where steps are worked out, each way of making one only once.

    folded: how the bends come out of the chosen tools, in the part's order.
    """

    part: Part
    folded: tuple[FoldedBend, ...]
    equipment: Equipment
    _places: dict[_Key, dict[End, _Gauged]] = field(default_factory=dict)
    _drawings: dict[tuple[_Key, End], _Pose] = field(default_factory=dict)
    _alike: dict[tuple[int, End, str, Stroke | None], _Pose] = field(default_factory=dict)

    def strip(self, step: Operation) -> Strip:
        """The part before a step."""
        return strip_of(self.part, self.folded, step.made)

    def places(self, step: Operation, one: Fit) -> dict[End, _Gauged]:
        """The best place for the finger at either end."""
        key = _key(step, one)
        if key not in self._places:
            self._places[key] = _gauges(self, step, one)
        return self._places[key]

    def pose(self, step: Operation, one: Fit, end: End) -> _Pose:
        """The step drawn without a gauge, this end at the back."""
        key = (_key(step, one), end)
        if key not in self._drawings:
            stroke = stroke_of(one)
            alike = (step.number, end, one.die.code, stroke)
            if alike in self._alike:
                self._drawings[key] = _under_another_punch(self, self._alike[alike], one)
            else:
                self._drawings[key] = self._alike[alike] = _posed(self, step, one, end)
        return self._drawings[key]

    def touching(self, step: Operation, one: Fit, end: End) -> bool:
        """Whether the sheet runs into a tool as drawn, with this end at the back."""
        return bool(self.pose(step, one, end).touches)

    def trouble_cost(self, step: Operation, one: Fit, end: End) -> float:
        """What speaks against these tools with this end at the gauge."""
        if self.touching(step, one, end):
            return TOUCH_COST
        return 0.0 if self.places(step, one)[end].gauge else NO_GAUGE


def _key(step: Operation, one: Fit) -> _Key:
    origin = one.bend.inside_radius_mm.origin if one.bend is not None else ""
    return (step.number, one.punch.code, one.die.code, origin)


def chosen_ends(
    maker: StepMaker,
    steps: Sequence[Operation],
    fits: Sequence[Fit | None],
    doubtful: Collection[int],
) -> list[End]:
    """The end at the gauge in each step.

    doubtful: numbers of the steps where an end at which the sheet runs into a tool as drawn
    is to be avoided.
    """
    costs = [_end_costs(maker, step, one, doubtful) for step, one in zip(steps, fits, strict=True)]
    return choose_ends([step.direction for step in steps], costs)


def planned_steps(
    maker: StepMaker, steps: Sequence[Operation], fits: Sequence[Fit | None], ends: Sequence[End]
) -> list[PlannedStep]:
    """Every step with its gauge, turns and drawing."""
    found: list[PlannedStep] = []
    for step, one, end in zip(steps, fits, ends, strict=True):
        before = found[-1] if found else None
        made = (
            PlannedStep(step, None, end, drawing=_flattened(maker, step, before))
            if one is None
            else _made(maker, step, one, end)
        )
        over = before is not None and before.operation.direction != step.direction
        turned = before is not None and before.end != end
        found.append(replace(made, turn_over=over, turn_end=turned))
    return found


def _gauges(maker: StepMaker, step: Operation, one: Fit) -> dict[End, _Gauged]:
    press = press_to_draw_with(maker.equipment.press)
    try:
        places = gauge_options(
            maker.strip(step), step.bend, step.direction, press, one.die,
            punch=one.punch, holder=maker.equipment.holder,
        )  # fmt: skip
    except InputError as error:
        return {end: _Gauged(None, Sentence(error.template, error.numbers)) for end in ENDS}
    found = {}
    for end in ENDS:
        here = [g for g in places if g.end == end]
        best = next((g for g in here if g.reachable), None)
        nothing = Sentence("Nothing there faces the back.")
        why = best.reason if best else here[0].reason if here else nothing
        found[end] = _Gauged(best, why)
    return found


def _end_costs(
    maker: StepMaker, step: Operation, one: Fit | None, doubtful: Collection[int]
) -> dict[End, float]:
    if one is None:
        return dict.fromkeys(ENDS, 0.0)
    strip = maker.strip(step)
    at = strip.folds[step.bend - 1].at_mm
    behind: dict[End, float] = {"left": at, "right": strip.length_mm - at}
    costs = {}
    for end in ENDS:
        gauge = maker.places(step, one)[end].gauge
        in_hand = strip.length_mm - behind[end] - one.die.width_mm / 2.0
        costs[end] = end_cost(gauge, behind[end] / strip.length_mm, in_hand)
        if step.number in doubtful and maker.touching(step, one, end):
            costs[end] += TOUCH_COST
    return costs


def _posed(maker: StepMaker, step: Operation, one: Fit, end: End) -> _Pose:
    """The step drawn without a gauge; of a stepped radius the last bump."""
    strip, number = maker.strip(step), step.bend
    if step.bumps is not None and one.bend is not None:
        strip, number = _last_hit(strip, step, one, end)
    if end == "left":  # without a gauge the drawing puts the right end to the back
        back, at_back = strip.reversed(), len(strip.folds) + 1 - number
    else:
        back, at_back = strip, number
    try:
        drawing = drawn(back, at_back, step.direction, one, maker.equipment, None)
    except InputError as error:
        return _Pose(None, strip, number, refused=error.what)
    pose = _Pose(drawing, strip, number)
    if drawing is None or not (one.punch.code and one.die.code):
        return pose
    sheets = Sheets.of(drawing)
    below = sheets.run_into(drawing, LOWER)
    above = sheets.run_into(drawing, UPPER)
    return replace(pose, sheets=sheets, touches=(*above, *below))


def _under_another_punch(maker: StepMaker, pose: _Pose, one: Fit) -> _Pose:
    """The same sheet and die with another punch: only what is above is looked at anew."""
    if pose.drawing is None or pose.sheets is None:
        return pose
    try:
        drawing = with_punch(pose.drawing, one, maker.equipment)
    except InputError as error:
        return replace(pose, drawing=None, touches=(), refused=error.what)
    below = tuple(t for t in pose.touches if t[0] in LOWER)
    return replace(pose, drawing=drawing, touches=(*pose.sheets.run_into(drawing, UPPER), *below))


def _made(maker: StepMaker, step: Operation, one: Fit, end: End) -> PlannedStep:
    """The step with gauge, draw-back and drawing; turns apart."""
    gauged = maker.places(step, one)[end]
    pose = maker.pose(step, one, end)
    gauge = gauged.gauge
    made = PlannedStep(
        step,
        one,
        end,
        gauge,
        None if gauge else gauged.why,
        pose.drawing,
        pose.touches,
        pose.refused,
    )
    stroke = stroke_of(one)
    if gauge is None or pose.drawing is None or stroke is None:
        return made
    bump_x: tuple[float, ...] = ()
    if step.bumps is not None:
        bump_x = bump_gauge_x_mm(step.bumps, gauge.x_mm, end)
    press = press_to_draw_with(maker.equipment.press)
    last = _at(gauge, bump_x[-1:])
    back = retract_mm(
        last, pose.strip, pose.number, step.direction,
        stroke=stroke, press=press, die=one.die, punch=one.punch, holder=maker.equipment.holder,
    )  # fmt: skip
    finger = finger_outline(press, last.x_mm, last.finger_bottom_mm)
    drawing = replace(
        pose.drawing,
        gauge=finger,
        gauge_after=moved(finger, back, 0.0),
        gauge_point=last.contact,
    )
    first = replace(_at(gauge, bump_x[:1]), retract_mm=back)
    return replace(made, gauge=first, drawing=drawing, bump_x_mm=bump_x)


def _at(gauge: Gauge, x_mm: Sequence[float]) -> Gauge:
    """The same place at another X, if one is given."""
    if not x_mm:
        return gauge
    return replace(gauge, x_mm=x_mm[0], contact=(x_mm[0], gauge.contact[1]))


def _last_hit(strip: Strip, step: Operation, one: Fit, end: End) -> tuple[Strip, int]:
    """The strip when all bumps of a stepped radius but the last are made, and that bump's bend."""
    assert step.bumps is not None
    made = bump_numbers(step.bumps.count, end)
    bump = here_of(one)
    if (
        bump.allowance_mm > step.bumps.pitch_mm
    ):  # bumps that run into one another: draw them sharper
        bump = replace(bump, allowance_mm=step.bumps.pitch_mm)
    whole = stepped(strip, step.bend, step.bumps, step.direction, bump, made[:-1])
    return whole, step.bend + made[-1] - 1


def _flattened(maker: StepMaker, step: Operation, before: PlannedStep | None) -> StepDrawing:
    """The closing of a hem, the sheet alone, from the acute bend of the step before."""
    part, folded = maker.part, maker.folded[step.bend - 1]
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
        strip_of(part, maker.folded, step.made),
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
