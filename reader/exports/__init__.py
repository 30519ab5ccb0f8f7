"""A plan in, something to keep or print out. Pure; the app writes the file."""
