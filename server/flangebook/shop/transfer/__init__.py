"""The whole shop as one open document, out and in."""
