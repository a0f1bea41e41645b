"""Connections, requests and answers."""
