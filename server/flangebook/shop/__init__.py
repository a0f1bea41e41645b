"""What the shop keeps: press, crib, metals, cards, revisions, trials; one SQLite file."""
