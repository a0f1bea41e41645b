"""How the web's files lie: few in a folder, none that leads back to itself."""

from __future__ import annotations

import re
from collections import Counter
from graphlib import TopologicalSorter
from pathlib import Path

WEB = Path(__file__).resolve().parents[2] / "web"
FOLDERS = ("app", "view", "screens", "drawing", "style")
MOST = 20
# Static and dynamic imports, and those of types in comments.
IMPORT = re.compile(r"""(?:\bfrom|\bimport)\s*\(?\s*["'](\.{1,2}/[^"']+)["']""")


def sources() -> list[Path]:
    return [file for name in FOLDERS for file in sorted((WEB / name).rglob("*.js"))]


def imports(file: Path) -> set[Path]:
    return {(file.parent / name).resolve() for name in IMPORT.findall(file.read_text("utf-8"))}


def test_no_folder_is_crowded() -> None:
    files = [file for name in FOLDERS for file in (WEB / name).rglob("*.*")]
    crowded = {str(f): n for f, n in Counter(f.parent for f in files).items() if n > MOST}
    assert len(files) > 150
    assert crowded == {}


def test_every_import_names_a_file() -> None:
    lost = [(file.name, one) for file in sources() for one in imports(file) if not one.is_file()]
    assert lost == []


def test_no_file_leads_back_to_itself() -> None:
    graph = {file: imports(file) for file in sources()}
    assert sum(map(len, graph.values())) > 500
    TopologicalSorter(graph).prepare()  # names the files of a circle


def test_routes_are_addresses_without_imports() -> None:
    assert imports(WEB / "app/shell/routes.js") == set()
