"""In which order the bends are made."""
