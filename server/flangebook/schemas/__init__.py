"""What comes in and goes out as JSON: read into values, described for the API document."""
