"""The API's addresses, a file for each thing they are about. Thin: schema in, answer out."""
