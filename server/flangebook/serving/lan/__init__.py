"""The shop's network: names, certificates."""
