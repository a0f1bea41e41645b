"""Whether the part clears the tools through the whole motion of a bend."""
