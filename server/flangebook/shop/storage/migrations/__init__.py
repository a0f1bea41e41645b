"""Alembic scripts: how the shop's file came to its present form."""
