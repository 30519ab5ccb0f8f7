"""The words of places: nouns, prepositions and phrases that say where a stitch goes."""

from __future__ import annotations

PREPOSITIONS = frozenset(
    {"in", "into", "over", "around", "under", "on", "through", "across", "to", "up", "along",
    "between",
     "within", "behind", "from", "at", "until", "inside", "among", "round", "bet", "til", "till",
     "working"}
)  # fmt: skip
STITCH_NOUNS = frozenset(
    {"st", "sts", "stitch", "stitches", "stich", "stiches", "s", "stitiches", "stitch(es"}
)
SPACE_NOUNS = frozenset(
    {"sp", "sps", "space", "spaces", "loop", "loops", "lp", "lps", "corner", "corners", "gap",
    "gaps",
     "hole", "holes", "arch", "arches", "eyelet", "eyelets", "mesh", "meshes",
     "ls",
     "handle", "handles", "strap", "straps", "buttonhole", "buttonholes"}
)  # fmt: skip
CHAIN_NOUNS = frozenset({"ch", "chs", "chain", "chains"})
GROUP_NOUNS = frozenset(
    {"group", "groups", "petal", "petals", "leaf", "leaves", "scallop", "scallops",
     "grp", "grps", "block", "blocks"}
)  # fmt: skip
RING_WORDS = (
    "magic ring", "magic circle", "magic loop", "mr", "adjustable ring", "ring", "the ring",
    "circle",
    "center of ring", "centre of ring", "mc", "adjustable loop", "sliding loop", "beginning ring",
    "center ring", "center of circle", "center of the circle", "center of the ring",
    "centre of circle", "centre of the circle", "centre of the ring", "middle of ring",
    "middle of the ring", "middle of circle", "middle of the circle", "center of magic ring",
    "thread ring", "yarn ring", "magical ring", "slip ring", "starting ring", "magic loop ring",
    "center of magic circle", "center of the magic ring", "center of the magic circle",
)  # fmt: skip
AROUND = (
    "all the way around", "all the way across", "all around", "all round", "all across", "around",
    "across",
    "in the rest", "in all the rest", "in rest", "in the others", "in all others",
    "in the rest of them",
    "round to the start", "around to the start", "round to the beginning",
    "around to the beginning", "back to the start", "back to the beginning",
    "to the end of the row", "to the end of the round", "to the end of row", "to end of row",
    "to end of round", "to end of rnd", "to the end of rnd", "to the end", "to end", "even",
    "evenly across", "evenly around",
    "evenly", "straight", "plain", "every row", "in every round", "each row", "every rnd",
    "every round",
    "in each row", "in every row", "in each round", "in each rnd", "each round", "each rnd",
    "per round", "per rnd", "per row", "to the other end", "until end", "till end", "until the end",
    "till the end",
    "until end of row", "till end of row", "round",
    "all along", "all the way along", "along the row", "along row", "all through",
    "throughout", "all round",
    "the whole row", "the whole round", "the rest of the row", "the rest of the round",
    "the rest of row", "the rest of the stitches", "the rest", "the remainder of the row",
    "the remainder of row", "the remainder", "the others", "all the others", "all the rest",
    "remainder", "rest of row", "rest of round", "rest of sts", "rest of the sts",
    "rest of stitches", "rest of the stitches", "the rest of the sts", "the rest of sts",
    "rest", "the other sts",
    "the other stitches", "all other sts", "out the row", "out the round",
    "all sts", "all stitches", "all the stitches",
    "all the way", "every stitch", "every st", "to the end of the needle", "to end of needle",
    "to the end of needle", "the entire row", "the entire round", "to the other end", "back",
    "across to end", "to the end of the pin", "for the rest of the row",
    "for the rest of the round", "along the round", "down the row",
    "down the chain", "along the chain", "to the very end",
    *(f"{over} {each} {row}" for over in ("across", "along", "over", "on")
      for each in ("each", "every") for row in ("row", "round", "rnd")),
    "over the whole row", "for the whole row", "for the whole round", "over the entire row",
    *(
        f"{until} {the}end{of}"
        for until in ("to", "till", "until", "right to", "all the way to")
        for the in ("", "the ", "your ")
        for of in ("", *(f" of {its}{row}" for its in ("", "the ", "this ", "your ")
                         for row in ("row", "round", "rnd", "chain")))
    ),
)  # fmt: skip
LOOP_ONLY = (
    "in both loops", "in back loops only", "in front loops only", "in back loop only",
    "in front loop only", "in top of sts only", "through top of sts only", "in top of sts",
    "through top of sts", "in top loops only", "in top loops", "in center of sts",
    "in back loops", "in front loops", "in back loop", "in front loop", "in back lp only",
    "in front lp only",
    "in back lp", "in front lp", "through both loops", "through back loop only",
    "through front loop only",
    "through back loop", "through the back loop", "tbl", "in blo", "in flo", "blo", "flo", "in bl",
    "through both", "through both layers", "through both thicknesses", "through both pieces",
    "through all layers", "through all thicknesses",
    "in fl", "in the blo", "in the flo",
    "in the back loop only", "in the front loop only", "in the back loop", "in the front loop",
    "in the back loops only", "in the front loops only", "in back loops only of", "into back loop",
    "into the back loop", "in the back loops", "in the front loops", "into the front loop",
    "in 3rd loop", "knitwise",
    "purlwise", "kwise", "pwise", "in back vein", "in back vein of stitch", "wyif", "wyib",
    "with yarn in back", "with yarn in front", "as if to p", "as if to k", "as if to purl",
    "as if to knit",
    "in back of work", "in front of work", "at back of work", "behind work", "in back of",
    "from behind", "from back",
    "loosely", "in back lps only", "in front lps only", "in the third loop", "in third loop",
    "through both layers", "thru both layers", "through both thicknesses", "thru both thicknesses",
    "through both pieces", "through both sides", "through all layers", "thru both",
    "through 2 layers",
    *(f"{into}successive {loops}" for into in ("in ", "into ", "on ", "along ")
      for loops in ("loops", "stitches", "sts", "chains", "chain", "chain stitches")),
)  # fmt: skip
AFTER = frozenset(
    {"of", "on", "at", "from", "along", "around", "across", "below", "made", "the", "each", "side",
    "sides", "end",
     "ends", "row", "rnd", "round", "ring", "hook", "ch", "chain", "chains", "previous", "prev",
     "last", "both",
     "working", "worked", "left", "right", "rem", "remaining", "unworked", "base", "beg",
     "beginning", "starting",
     "foundation", "turning", "tch", "opposite", "other", "same", "second", "edge", "center",
     "centre",
     "needle", "holder", "only", "sp", "space", "st", "sts", "stitch", "stitches", "all",
     "following", "back", "front",
     "loop", "loops", "shell", "petals", "petal", "group", "motif", "to", "marker", "top", "in",
     "where", "were", "as", "first",
     "your", "way", "down", "ea", "rnds", "rows", "up", "post", "that", "piece", "now", "join",
     "joining", "corner", "strip", "pineapple", "pineapples", "thumb", "opening", "armhole",
     "armholes", "underarm",
     "this"}
)  # fmt: skip
AFTER_IT = (
    "the one after it", "the one after", "the one following", "following one", "the following one",
    "the next one", "next one", "the one beside it", "the other one", "one after",
    "one following",
)  # fmt: skip
TO_LAST = (
    "to within the last", "to within last", "to the last", "to last", "until the last",
    "until last", "up to last",
    "across to last", "around to last", "across to within last", "till last", "up to the last",
    "to within",
    "until you come to the last", "till you come to the last", "until you come to last",
    "until you reach the last", "until you come to within", "all but the last",
    "all but last", "all except the last", "all except last", "till the last",
    "till within the last", "till within last", "till within", "until within the last",
    "until within", "up to within", "as far as the last", "as far as last", "except the last",
    "across to the last", "around to the last", "across to within the last", "even to last",
    "around to within last", "around to within the last", "around to within", "across to within",
    "round to last", "round to within last", "along to last", "along to within last",
    "until within last", "to the final", "to final", "until the final", "across to final",
)  # fmt: skip
OF_ROWS = (
    "row", "rows", "rnd", "rnds", "round", "rounds", "rib", "ribs", "stripe", "stripes", "ridge",
    "ridges",
)  # fmt: skip
"""What a list is repeated to over many rows, and not inside one."""
ROW_WORDS = frozenset(
    [
        "row",
        "rows",
        "rnd",
        "rnds",
        "round",
        "rounds",
        "the",
        "circle",
        "needle",
        "of",
        "entire",
        "whole",
    ]
)
DETERMINERS = frozenset(
    [
        "next",
        "following",
        "nxt",
        "first",
        "last",
        "same",
        "any",
        "remaining",
        "rem",
        "all",
        "both",
        "beg",
        "foll",
    ]
)
"""Words that may begin a place without a preposition."""
PASSED_OVER = frozenset(
    [
        "the",
        "of",
        "very",
        "exact",
        "center",
        "centre",
        "previous",
        "prev",
        "following",
        "skipped",
        "missed",
        "worked",
        "beginning",
        "turning",
        "end",
        "opposite",
        "ea",
        "middle",
        "indicated",
        "marked",
        "foundation",
        "starting",
        "back",
        "front",
        "side",
        "single",
        "other",
        "available",
    ]
)
"""Words inside a place that change neither which stitch nor how many."""
ADJECTIVES = frozenset(
    [
        "corner",
        "corresponding",
        "center",
        "centre",
        "new",
        "large",
        "turning",
        "ch",
        "end",
        "unworked",
        "marked",
        "single",
        "underarm",
        "armhole",
        "working",
    ]
)
"""Words that may stand right before a noun."""
OF_SPACE = frozenset(["side", "edge", "straight", "small", "little", "big", "wide", "narrow",
                      "empty", "open", "inner", "outer", "middle", "ordinary", "plain"])
"""Words that may stand right before a space."""
TOPS = (
    "center of", "centre of", "middle of", "the center of", "the centre of", "the middle of",
    "center st of", "centre st of", "top st of", "top stitch of", "the top st of",
    "center ch of", "center dc of", "top ch of", "top chain of", "middle st of",
    "middle dc of", "back of", "between",
    "post of", "posts of", "the post of", "stem of", "tip of", "the tip of", "tips of",
    "head of", "the head of", "top of", "the top of", "tops of", "base of",
    "the base of", "foot of", "the foot of", "bottom of", "the eye of", "eye of", "the eyes of",
    "eyes of", "the hole of", "hole of", "the hole in", "hole in", "the hole at top of",
)  # fmt: skip
OF_ROW = tuple(
    f" of {the}{row}"
    for the in ("the ", "this ", "that ", "same ", "the same ", "")
    for row in ("row", "rnd", "round", "needle", "1st needle", "first needle", "needle 1", "ndl")
)
OF_ROW_BEFORE = tuple(
    f"{of} {the}{which}{side}{row}"
    for of in ("of", "on", "from", "in") for the in ("the ", "")
    for which in ("previous ", "prev ", "last ", "")
    for side in ("rs ", "ws ", "right side ", "wrong side ", "short ", "") for row in ("row", "rnd")
    if which or side
)
"""Behind a stitch that was turned at, the row that turned there."""
ROW_ENDS = (
    *(f"{of} {the}end{row}" for of in ("of", "from") for the in ("the ", "")
      for row in (*OF_ROW, "")),
    *(row.strip() for row in OF_ROW), "of other end", "of the other end", "of opposite end",
    "of the row end",
)  # fmt: skip
LEFT_OVER = (
    *(f"{at} {the}end{row}" for at in ("before", "from", "of", "away from", "short of")
      for the in ("the ", "") for row in (*OF_ROW, "")),
    "remain", "rem", "are left", "left", "remaining", "remain unworked",
    "is left", "remains", "is remaining", "are remaining", "left over", "to go", "are left over",
    "left unworked", "are left unworked", "is left unworked", "are unworked", "still to work",
    "stay", "remain to be worked", "left to work",
)  # fmt: skip
MARKERS = (
    "marker", "m", "markers", "mkr", "mrk", "bor", "center st", "centre st", "marked st", "gap",
    "turn", "turning point", "wrapped st", "wrapped stitch", "wrap", "double st", "double stitch",
    "ds", "dst", "wrapped sts", "turned st",
    "cast off sts", "cast off stitches", "bound off sts", "bound off stitches",
    "cast off edge", "cast off ones", "cast off", "bind off", "buttonhole", "opening",
)  # fmt: skip
BEFORE_NOUN = frozenset(
    ["of", "the", "each", "last", "previous", "prev", "first", "same", "these", "front", "corner",
     "below", "above", "beside", "behind"]
)
"""After these, a stitch's name is the noun of the place, not the next instruction."""
DANGLING = frozenset(
    ["the", "to", "in", "at", "on", "each", "all", "now", "join", "joining", "working", "as"]
)
"""Words that belong to what comes next when a place ends with them."""
SIDES = frozenset(["side", "sides", "end", "ends", "edge"])
ALONG = frozenset(["in", "on", "along", "across", "into", "down", "around"])
