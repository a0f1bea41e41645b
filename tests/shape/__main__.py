"""Print the shape of the code: ``tests/run --shape``, with what stands in the way ``--list``."""

from __future__ import annotations

import argparse
from collections.abc import Mapping

from shape.figures import Figure, figures, files_by_folder, lines_by_package


def main() -> None:
    """Print the figures, each beside its goal."""
    parser = argparse.ArgumentParser(prog="tests/run --shape", description=__doc__)
    parser.add_argument("--list", action="store_true", help="name what stands in a goal's way")
    listed = parser.parse_args().list
    _print_table("Lines", lines_by_package())
    _print_table("Files in a folder", files_by_folder())
    for figure in figures():
        print(line(figure))
        if listed:
            print(*(f"    {one}" for one in figure.offenders), sep="\n")


def _print_table(title: str, rows: Mapping[str, int]) -> None:
    print(f"{title}, {sum(rows.values()):,} in all")
    for name, count in rows.items():
        print(f"    {name:46} {count:7,}")
    print()


def line(figure: Figure) -> str:
    """One figure with its goal."""
    word = "met" if figure.met else "missed"
    end = "at least" if figure.at_least else "at most"
    value = f"{figure.value:.0f}{figure.unit}"
    # A share that is not whole is never rounded up to it.
    if figure.at_least and not figure.met:
        value = f"{int(figure.value)}{figure.unit}"
    return f"{figure.name:46} {value:>7}   goal {end} {figure.goal:.0f}{figure.unit}: {word}"


if __name__ == "__main__":
    main()
