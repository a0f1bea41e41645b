"""Flangebook: set-ups for the press brake, from the part to the card on the bin."""

__version__ = "0.3.0"
