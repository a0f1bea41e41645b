"""What the shop keeps: press, crib, metals, cards, revisions, results; one SQLite file."""
