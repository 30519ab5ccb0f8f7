"""Where events, transitions and effects meet; the command line."""
