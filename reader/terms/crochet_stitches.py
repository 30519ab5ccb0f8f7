"""Crochet stitches by their US names, each with its source."""

from __future__ import annotations

from reader.terms.stitches import (
    CYC,
    HANDBOOK,
    LISTS,
    PAMPHLETS,
    PRACTICE,
    Craft,
    Kind,
    Stitch,
)

C = Craft.CROCHET
S = Kind.STITCH


def _plain(name: str, us: str, uk: str, height: int, source: str) -> Stitch:
    return Stitch(name, us, 1, 1, C, S, source, height, uk, name)


ROWS: tuple[Stitch, ...] = (
    Stitch("sl st", "slip stitch", 1, 0, C, Kind.SLIP, LISTS, 0, "slip stitch", "sl st"),
    _plain("sc", "single crochet", "double crochet", 1, CYC),
    _plain("hdc", "half double crochet", "half treble", 2, CYC),
    _plain("dc", "double crochet", "treble", 3, CYC),
    _plain("tr", "treble crochet", "double treble", 4, CYC),
    _plain("dtr", "double treble crochet", "triple treble", 5, CYC),
    _plain("trtr", "triple treble crochet", "quadruple treble", 6, CYC),
    _plain("esc", "extended single crochet", "extended double crochet", 2, LISTS),
    _plain("ehdc", "extended half double crochet", "extended half treble", 3, LISTS),
    _plain("edc", "extended double crochet", "extended treble", 4, LISTS),
    _plain("rev sc", "reverse single crochet", "reverse double crochet", 1, LISTS),
    _plain("lp st", "loop stitch", "loop stitch", 1, PAMPHLETS),
    _plain("spike", "spike stitch", "spike stitch", 1, LISTS),
    _plain("fpsc", "front post single crochet", "front post double crochet", 1, LISTS),
    _plain("bpsc", "back post single crochet", "back post double crochet", 1, LISTS),
    _plain("fphdc", "front post half double crochet", "front post half treble", 2, LISTS),
    _plain("bphdc", "back post half double crochet", "back post half treble", 2, LISTS),
    _plain("fpdc", "front post double crochet", "front post treble", 3, CYC),
    _plain("bpdc", "back post double crochet", "back post treble", 3, CYC),
    _plain("fptr", "front post treble crochet", "front post double treble", 4, CYC),
    _plain("bptr", "back post treble crochet", "back post double treble", 4, CYC),
    Stitch("inc", "increase", 1, 2, C, Kind.INCREASE, CYC, 1),
    Stitch("inc3", "three in one stitch", 1, 3, C, Kind.INCREASE, PRACTICE, 1),
    Stitch("dec", "decrease", 2, 1, C, Kind.DECREASE, CYC, 1),
    Stitch("inv dec", "invisible decrease", 2, 1, C, Kind.DECREASE, LISTS, 1),
    Stitch("bobble", "bobble", 1, 1, C, Kind.CLUSTER, CYC, 3),
    Stitch("popcorn", "popcorn stitch", 1, 1, C, Kind.CLUSTER, PAMPHLETS, 3),
    Stitch("puff", "puff stitch", 1, 1, C, Kind.CLUSTER, LISTS, 2),
    Stitch("cluster", "cluster", 1, 1, C, Kind.CLUSTER, CYC, 3),
    Stitch("shell", "shell", 1, 5, C, Kind.GROUP, PRACTICE, 3),
    Stitch("fan", "fan", 1, 5, C, Kind.GROUP, PRACTICE, 3),
    Stitch("v-st", "V stitch", 1, 2, C, Kind.GROUP, LISTS, 3, spaces=1),
    Stitch("picot", "picot", 0, 0, C, Kind.EXTRA, LISTS),
    Stitch("surf", "surface slip stitch", 0, 0, C, Kind.EXTRA, LISTS),
    Stitch("x-st", "crossed stitch", 2, 2, C, Kind.GROUP, LISTS, 3),
    Stitch("fsc", "foundation single crochet", 0, 1, C, S, LISTS, 1, "foundation double crochet"),
    Stitch("fhdc", "foundation half double crochet", 0, 1, C, S, LISTS, 2, "foundation half treble"),
    Stitch("fdc", "foundation double crochet", 0, 1, C, S, LISTS, 3, "foundation treble"),
    Stitch("star", "star stitch", 2, 1, C, Kind.CLUSTER, HANDBOOK, 1),
    Stitch("st", "stitch", 1, 1, C, S, PRACTICE, 1),
)
"""takes, makes and turning-chain height; `st` stands where the kind is left open."""

FORMS: dict[str, str] = {
    "sl st": "sl st", "slst": "sl st", "slip st": "sl st", "slip stitch": "sl st", "ss": "sl st",
    "slip-stitch": "sl st", "sl-st": "sl st", "slip stitches": "sl st", "sl sts": "sl st",
    "sc": "sc", "s c": "sc", "single crochet": "sc", "single crochets": "sc", "scs": "sc",
    "singles": "sc", "single": "sc", "s. c": "sc", "sc's": "sc", "single crochet stitch": "sc",
    "hdc": "hdc", "h d c": "hdc", "h dc": "hdc", "half double crochet": "hdc", "half double": "hdc",
    "half-double crochet": "hdc", "s d c": "hdc", "short double crochet": "hdc", "sdc": "hdc",
    "hdcs": "hdc", "half double crochets": "hdc", "half doubles": "hdc",
    "dc": "dc", "d c": "dc", "double crochet": "dc", "dcs": "dc", "double": "dc", "doubles": "dc",
    "double crochets": "dc", "dc's": "dc",
    "tr": "tr", "tr c": "tr", "trc": "tr", "tc": "tr", "treble crochet": "tr", "treble": "tr",
    "triple crochet": "tr", "trebles": "tr", "trs": "tr", "t r": "tr", "treble crochets": "tr",
    "dtr": "dtr", "d tr": "dtr", "d trc": "dtr", "d tr c": "dtr", "dtrc": "dtr",
    "double treble crochet": "dtr", "double treble": "dtr", "double trebles": "dtr",
    "trtr": "trtr", "tr tr": "trtr", "tr tr c": "trtr", "triple treble": "trtr", "ttr": "trtr",
    "esc": "esc", "exsc": "esc", "extended single crochet": "esc", "ehdc": "ehdc", "edc": "edc",
    "extended double crochet": "edc",
    "rev sc": "rev sc", "rsc": "rev sc", "reverse sc": "rev sc", "reverse single crochet": "rev sc",
    "crab st": "rev sc", "crab stitch": "rev sc",
    "lp st": "lp st", "loop st": "lp st", "loop stitch": "lp st", "loop sts": "lp st",
    "lp sts": "lp st", "loop stitches": "lp st",
    "spike st": "spike", "spike stitch": "spike", "long sc": "spike", "spike sc": "spike",
    "spike sts": "spike",
    "fpsc": "fpsc", "fp sc": "fpsc", "bpsc": "bpsc", "bp sc": "bpsc", "fphdc": "fphdc",
    "fp hdc": "fphdc", "bphdc": "bphdc", "bp hdc": "bphdc", "fpdc": "fpdc", "fp dc": "fpdc",
    "bpdc": "bpdc", "bp dc": "bpdc", "fptr": "fptr", "fp tr": "fptr", "bptr": "bptr",
    "bp tr": "bptr", "front post double crochet": "fpdc", "back post double crochet": "bpdc",
    "front post dc": "fpdc", "back post dc": "bpdc", "front post sc": "fpsc",
    "back post sc": "bpsc", "front post tr": "fptr", "back post tr": "bptr",
    "front post single crochet": "fpsc", "back post single crochet": "bpsc",
    "front post treble crochet": "fptr", "back post treble crochet": "bptr",
    "inc": "inc", "incs": "inc", "increase": "inc", "increases": "inc",
    "inc3": "inc3",
    "dec": "dec", "decs": "dec", "decrease": "dec", "decreases": "dec",
    "inv dec": "inv dec", "invdec": "inv dec", "invisible decrease": "inv dec", "inv. dec": "inv dec",
    "invisible dec": "inv dec", "invisible decreases": "inv dec",
    "bobble": "bobble", "bob": "bobble", "bobbles": "bobble", "bobble st": "bobble",
    "bobble stitch": "bobble", "bo st": "bobble",
    "popcorn": "popcorn", "popcorn st": "popcorn", "pop": "popcorn", "pc": "popcorn",
    "popcorn sts": "popcorn", "popcorns": "popcorn", "popcorn stitch": "popcorn", "pc st": "popcorn",
    "puff": "puff", "puff st": "puff", "puffs": "puff", "puff stitch": "puff", "puff sts": "puff",
    "ps": "puff", "puff stitches": "puff",
    "cluster": "cluster", "cl": "cluster", "clusters": "cluster", "cluster st": "cluster",
    "cluster sts": "cluster", "cls": "cluster", "beg cl": "cluster", "beginning cluster": "cluster",
    "beg cluster": "cluster",
    "shell": "shell", "shells": "shell", "shell st": "shell", "sh": "shell", "shs": "shell",
    "beg shell": "shell", "beginning shell": "shell",
    "fan": "fan", "fans": "fan",
    "v-st": "v-st", "v st": "v-st", "v-sts": "v-st", "v-stitch": "v-st", "v stitch": "v-st",
    "v sts": "v-st", "v-stitches": "v-st", "vst": "v-st", "beg v-st": "v-st",
    "picot": "picot", "picots": "picot", "p st": "picot",
    "surf": "surf", "surface slip stitch": "surf", "surface sl st": "surf",
    "x-st": "x-st", "x st": "x-st", "cdc": "x-st", "crossed dc": "x-st", "cross st": "x-st",
    "fsc": "fsc", "foundation single crochet": "fsc", "foundation sc": "fsc", "fhdc": "fhdc",
    "foundation half double crochet": "fhdc", "fdc": "fdc", "foundation double crochet": "fdc",
    "foundation dc": "fdc", "foundation hdc": "fhdc",
    "star st": "star", "star stitch": "star", "star stitches": "star", "star sts": "star",
}
"""Written forms -> US short name."""

UK_ONLY: dict[str, str] = {
    "htr": "hdc", "half treble": "hdc", "half trebles": "hdc", "half treble crochet": "hdc",
    "h tr": "hdc", "qtr": "trtr", "quadruple treble": "trtr", "etr": "edc", "ehtr": "ehdc",
    "rev dc": "rev sc", "fptr": "fpdc", "bptr": "bpdc", "rtrf": "fpdc", "rtrb": "bpdc",
    "half-treble": "hdc", "ftr": "fdc", "fhtr": "fhdc", "triple treble": "dtr",
    "double treble": "tr", "double trebles": "tr", "trebles": "dc", "treble": "dc",
    "treble crochet": "dc", "double crochet": "sc", "double": "sc", "doubles": "sc",
    "dc": "sc", "d c": "sc", "tr": "dc", "dtr": "tr", "d tr": "tr", "trtr": "dtr", "ttr": "dtr",
    "fpdc": "fpsc", "bpdc": "bpsc", "edc": "esc", "reverse dc": "rev sc", "dcs": "sc", "trs": "dc",
    "double crochets": "sc", "tr tr": "dtr", "fdc": "fsc", "single": "sl st", "single crochet": "sl st",
}
"""Forms whose meaning differs, or that only exist, in UK terms -> US short name.

Source: funcrochetdesigns.com, crochet terms by country (read 2026); single = slip: Handbook, 1918.
"""
