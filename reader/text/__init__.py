"""Raw text in, numbered clean lines out, every character's origin kept."""
