"""A whole session without hardware: a script and voices in, the conversation, its sound and its figures out."""
