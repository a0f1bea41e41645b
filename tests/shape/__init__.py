"""The shape of the code in figures: ``tests/run --shape``."""
