"""Make the finite element witness: write the decks, run ccx, read the results into the data file.

    python tests/reference/finite_elements/make_cases.py --run [NAME ...] [--keep DIRECTORY]

Never part of a test run: it needs the solver CalculiX (``ccx``, packaged as calculix-ccx) and one
to ten minutes a case. Without names it runs every case that the data file does not have yet.
The tests read the data file only.

The depths pressed to are plain numbers, chosen beforehand so that the released angles come out
near 120 and 90 degrees. They are not taken from the product. Most cases with two depths were
run before the decks got their binary grid of times and a spring of 0.5 instead of 0.2 N/mm, by
estimate worth under 0.01 degrees. Of the listed cases not in the data file none has been run.
"""

from __future__ import annotations

import argparse
import json
import os
import re
import subprocess
import tempfile
from pathlib import Path

from deck import Case, Sheet, deck
from reading import results

DATA = Path(__file__).with_name("results.json")
LOW_CARBON = Sheet("low-carbon steel", 207_000, 200, 530, 0.22)
STAINLESS = Sheet("stainless 304", 193_000, 290, 1350, 0.45)
ALUMINIUM = Sheet("aluminium 5052-H32", 70_000, 193, 365, 0.13)
HSLA = Sheet("HSLA steel", 207_000, 380, 720, 0.13)
BRASS = Sheet("brass half-hard", 103_000, 303, 621, 0.135, poisson=0.33)
SOFT_ALUMINIUM = Sheet("aluminium 5052-O", 70_300, 90, 348, 0.24, poisson=0.33)


def _case(
    name: str, sheet: Sheet, v: float, rp: float, rd: float, depths: tuple[float, ...],
    friction: float = 0.0,
) -> Case:  # fmt: skip
    return Case(name, sheet, v, rp, rd, depths, friction)


# A second press after a release does not always find its way back; where it did not, the bend to
# 90 degrees is a run of its own (..._90).
CASES = (
    _case("low_carbon_v16_r1", LOW_CARBON, 16, 1, 2.4, (4.17, 6.50)),
    _case("stainless_v16_r1", STAINLESS, 16, 1, 2.4, (4.02, 6.18)),
    _case("aluminium_v16_r1", ALUMINIUM, 16, 1, 2.4, (4.46, 6.92)),
    _case("hsla_v16_r1", HSLA, 16, 1, 2.4, (4.40, 6.85)),
    _case("low_carbon_v12_r3", LOW_CARBON, 12, 3, 2.0, (2.92, 4.05)),
    _case("stainless_v24_r3", STAINLESS, 24, 3, 3.0, (6.20, 9.65)),
    _case("hsla_v24_r3", HSLA, 24, 3, 3.0, (6.64, 10.30)),
    _case("aluminium_v12_r3", ALUMINIUM, 12, 3, 2.0, (3.00, 4.13)),
    _case("low_carbon_v24_r3", LOW_CARBON, 24, 3, 3.0, (6.35, 9.94)),
    _case("hsla_v16_r1_90", HSLA, 16, 1, 2.4, (6.80,)),
    _case("stainless_v24_r3_90", STAINLESS, 24, 3, 3.0, (9.60,)),
    _case("aluminium_v12_r3_90", ALUMINIUM, 12, 3, 2.0, (4.10,)),
    _case("hsla_v12_r3_90", HSLA, 12, 3, 2.0, (4.06,)),
    _case("stainless_v12_r3_90", STAINLESS, 12, 3, 2.0, (4.04,)),
    _case("hsla_v24_r3_90", HSLA, 24, 3, 3.0, (10.24,)),
    _case("low_carbon_v24_r3_90", LOW_CARBON, 24, 3, 3.0, (9.86,)),
    _case("aluminium_v24_r3_90", ALUMINIUM, 24, 3, 3.0, (10.46,)),
    _case("low_carbon_v16_r1_friction_90", LOW_CARBON, 16, 1, 2.4, (6.46,), 0.1),
    _case("stainless_v16_r1_friction_90", STAINLESS, 16, 1, 2.4, (6.18,), 0.1),
    _case("aluminium_v16_r1_90", ALUMINIUM, 16, 1, 2.4, (6.86,)),
    _case("low_carbon_v16_r1", LOW_CARBON, 16, 1, 2.4, (4.17,)).finer(),
    _case("hsla_v24_r3_friction_90", HSLA, 24, 3, 3.0, (10.24,), 0.15),
    _case("brass_v16_r1_90", BRASS, 16, 1, 2.4, (6.90,)),
    _case("brass_v16_r1_120", BRASS, 16, 1, 2.4, (4.37,)),
    _case("soft_aluminium_v16_r1_90", SOFT_ALUMINIUM, 16, 1, 2.4, (6.42,)),
    _case("soft_aluminium_v16_r1_120", SOFT_ALUMINIUM, 16, 1, 2.4, (4.08,)),
)


def known() -> dict[str, dict[str, object]]:
    """Results kept so far, by name."""
    if not DATA.exists():
        return {}
    return {row["name"]: row for row in json.loads(DATA.read_text("utf-8"))["cases"]}


def save(rows: dict[str, dict[str, object]]) -> None:
    """Write the data file, cases in the order of the list, a line a value."""
    order = [c.name for c in CASES if c.name in rows]
    text = {
        "solver": "CalculiX ccx 2.20, C3D20R, plane strain; see deck.py",
        "cases": [rows[name] for name in order],
    }
    lines = json.dumps(text, indent=1)
    DATA.write_text(_one_line_lists(lines) + "\n", "utf-8")


def _one_line_lists(text: str) -> str:
    return re.sub(
        r"\[\s+(-?[\d.e-]+(?:,\s+-?[\d.e-]+)*)\s+\]",
        lambda m: "[" + re.sub(r"\s+", " ", m.group(1)) + "]",
        text,
    )


def run(case: Case, directory: Path) -> dict[str, object]:
    """Run one case in a directory; its results."""
    (directory / f"{case.name}.inp").write_text(deck(case), "utf-8")
    with (directory / f"{case.name}.out").open("w") as out:
        subprocess.run(
            ["nice", "-n", "15", "ccx", case.name],
            cwd=directory,
            stdout=out,
            stderr=subprocess.STDOUT,
            env={**os.environ, "OMP_NUM_THREADS": "1"},
            check=False,
        )
    return results(case, directory / f"{case.name}.dat")


def main() -> None:
    """Run the cases asked for, one at a time, keeping each as soon as it is done."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("names", nargs="*")
    parser.add_argument("--run", action="store_true", help="really run the solver")
    parser.add_argument("--keep", type=Path, help="directory for decks and the solver's output")
    asked = parser.parse_args()
    rows = known()
    by_name = {c.name: c for c in CASES}
    todo = [by_name[name] for name in asked.names or by_name if asked.names or name not in rows]
    if not asked.run:
        print("would run:", *[c.name for c in todo])
        return
    for case in todo:
        with tempfile.TemporaryDirectory() as scratch:
            directory = asked.keep or Path(scratch)
            directory.mkdir(parents=True, exist_ok=True)
            try:
                found = run(case, directory)
            except (ValueError, KeyError, IndexError) as trouble:
                print(case.name, "failed:", trouble, flush=True)
                continue
            rows = {**known(), case.name: found}
            save(rows)
            print(case.name, "done", flush=True)


if __name__ == "__main__":
    main()
