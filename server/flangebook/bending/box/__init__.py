"""Boxes with bends in two directions."""
