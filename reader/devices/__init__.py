"""The edge: every outside library and every file lives here, once."""
