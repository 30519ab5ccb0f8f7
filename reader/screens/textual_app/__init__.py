"""The full screen: the step in large letters, place, counts, state, and every command on a key."""
