"""Words in, what the maker asked for out."""
