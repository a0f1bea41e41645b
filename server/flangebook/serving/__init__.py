"""Serving: the command line, the web server, and the environment both scripts make."""
