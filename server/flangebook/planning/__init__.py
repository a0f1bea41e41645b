"""Under way."""
