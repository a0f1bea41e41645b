"""Backups of the shop's file, and putting it back."""
