"""The plan of a box."""
