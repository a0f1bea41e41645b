"""Which punch and die, and where they stand."""
