"""What standards and handbooks say of a bend."""
