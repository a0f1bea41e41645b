"""The order of the bends: the cheapest one that clears the tools, or the proof of none."""
