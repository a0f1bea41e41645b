"""What a bend comes out as: the model and the handbook side by side."""
