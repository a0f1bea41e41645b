"""The web API: schemas in, plans and cards out; and the web app's files."""
