"""Clean lines in, a typed pattern tree out; what cannot be read stays whole."""
