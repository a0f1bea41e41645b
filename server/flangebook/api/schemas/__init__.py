"""Schemas of what the API takes and gives."""
