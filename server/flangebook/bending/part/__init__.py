"""The part: its section, metal and thickness, its blank."""
