"""Punches, dies, holders and press: outlines, ratings, and what they can be set to."""
