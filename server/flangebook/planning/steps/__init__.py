"""The steps of a plan and what is checked at each."""
