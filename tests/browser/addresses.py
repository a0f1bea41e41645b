"""Every screen of the app, by an address that shows it and the name it is ready under."""

from __future__ import annotations

CARD = "STEP6BQ"  # six bends, findings of every kind
BOX = "TRAY4CH"  # a tray

ADDRESSES = [
    ("/", "home"),
    ("/bend", "bend"),
    ("/bend?metal=mild-steel-cr&thickness=2 mm&length=500 mm", "bend"),
    ("/press-screen", "press-screen"),
    ("/part", "part"),
    ("/scan", "scan"),
    (f"/part?from={CARD}", "part"),
    ("/part?shape=box", "part"),
    (f"/part?from={BOX}", "part"),
    (f"/c/{CARD}", "card"),
    (f"/c/{CARD}/step/3", "step"),
    (f"/c/{CARD}/result/3", "result"),
    (f"/c/{CARD}/history", "history"),
    (f"/c/{CARD}/note", "note"),
    (f"/c/{CARD}/resolve", "resolve"),
    (f"/c/{CARD}/print", "print"),
    (f"/c/{CARD}/label", "label"),
    (f"/c/{BOX}", "card"),
    (f"/c/{BOX}/step/3", "step"),
    (f"/c/{BOX}/result/3", "result"),
    (f"/c/{BOX}/print", "print"),
    ("/c/0000001", "card"),  # a slip in the code
    (f"/labels?codes={CARD},SHE7FA1", "labels"),
    ("/chart", "chart"),
    ("/shop", "shop"),
    ("/shop/press", "press"),
    ("/shop/punches", "tools"),
    ("/shop/punches/G85-1", "tool"),
    ("/shop/punches/+", "tool"),
    ("/shop/dies", "tools"),
    ("/shop/dies/V32", "tool"),
    ("/shop/holders", "tools"),
    ("/shop/holders/NH1", "tool"),
    ("/shop/metals", "tools"),
    ("/shop/metals/stainless-304", "tool"),
    ("/shop/nothing", "tools"),
    ("/shop/test-bend", "test-bend"),
    ("/shop/learned/mild-steel-cr", "learned"),
    ("/backups", "backups"),
    ("/settings", "settings"),
    ("/guide", "guide"),
    ("/guide/strip", "guide-page"),
    ("/words", "words"),
]
