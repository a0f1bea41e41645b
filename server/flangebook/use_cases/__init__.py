"""What happens to a card, a result, a test bend, an import: between the web API and the shop."""
