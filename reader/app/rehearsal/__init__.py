"""A whole session without hardware: script and voices in; the talk, its sound and figures out."""
