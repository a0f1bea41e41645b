"""Everything that makes the JSON of an answer."""
