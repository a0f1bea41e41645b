"""The shop's one SQLite file and how it is written."""
