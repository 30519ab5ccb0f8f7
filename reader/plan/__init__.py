"""A counted pattern in, the steps a maker works in order out."""
