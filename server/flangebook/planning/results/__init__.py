"""What measured results say and change."""
