"""Processes that calculate for the server."""
