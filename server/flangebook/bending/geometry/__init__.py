"""Points, rings, strips and lines in the plane."""
