"""Words of the trade: crafts, stitches, abbreviations, measures; imports nothing from the other
rooms.
"""
