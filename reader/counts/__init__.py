"""A pattern tree in, stitches taken and made, verdicts and problems out."""
