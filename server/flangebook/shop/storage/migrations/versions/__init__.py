"""One script a step, in order."""
