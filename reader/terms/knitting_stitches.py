"""Knitting stitches, each with its source."""

from __future__ import annotations

from reader.terms.stitches import CYC, KNIT_LISTS, PAMPHLETS, PRACTICE, Craft, Kind, Stitch

K = Craft.KNITTING


def _row(name: str, spoken: str, takes: int, makes: int, kind: Kind, source: str = CYC) -> Stitch:
    return Stitch(name, spoken, takes, makes, K, kind, source, base=name)


ROWS: tuple[Stitch, ...] = (
    _row("k", "knit", 1, 1, Kind.STITCH),
    _row("p", "purl", 1, 1, Kind.STITCH),
    _row("ktbl", "knit through the back loop", 1, 1, Kind.STITCH),
    _row("ptbl", "purl through the back loop", 1, 1, Kind.STITCH),
    _row("sl", "slip", 1, 1, Kind.STITCH),
    _row("st", "stitch", 1, 1, Kind.STITCH, PRACTICE),
    _row("ssk", "slip, slip, knit", 2, 1, Kind.DECREASE),
    _row("ssp", "slip, slip, purl", 2, 1, Kind.DECREASE),
    _row("sssk", "slip, slip, slip, knit", 3, 1, Kind.DECREASE),
    _row("skp", "slip one, knit one, pass slipped stitch over", 2, 1, Kind.DECREASE),
    _row("sk2p", "slip one, knit two together, pass slipped stitch over", 3, 1, Kind.DECREASE),
    _row("cdd", "centered double decrease", 3, 1, Kind.DECREASE),
    _row("dec", "decrease", 2, 1, Kind.DECREASE, PRACTICE),
    _row("psso", "pass slipped stitch over", 0, -1, Kind.DECREASE),
    _row("p2sso", "pass two slipped stitches over", 0, -2, Kind.DECREASE),
    _row("yo", "yarn over", 0, 1, Kind.INCREASE),
    _row("yo2", "yarn over twice", 0, 2, Kind.INCREASE, PAMPHLETS),
    _row("m1", "make one", 0, 1, Kind.INCREASE),
    _row("m1l", "make one left", 0, 1, Kind.INCREASE),
    _row("m1r", "make one right", 0, 1, Kind.INCREASE),
    _row("m1p", "make one purlwise", 0, 1, Kind.INCREASE),
    _row("kfb", "knit front and back", 1, 2, Kind.INCREASE),
    _row("pfb", "purl front and back", 1, 2, Kind.INCREASE),
    _row("inc", "increase", 1, 2, Kind.INCREASE, PRACTICE),
    _row("kfbf", "knit front, back and front", 1, 3, Kind.INCREASE, KNIT_LISTS),
    _row("rli", "right lifted increase", 0, 1, Kind.INCREASE, KNIT_LISTS),
    _row("lli", "left lifted increase", 0, 1, Kind.INCREASE, KNIT_LISTS),
    _row("drop", "drop a loop", 1, 0, Kind.DECREASE, PRACTICE),
    _row("rt", "right twist", 2, 2, Kind.CABLE, KNIT_LISTS),
    _row("lt", "left twist", 2, 2, Kind.CABLE, KNIT_LISTS),
    _row("mb", "make bobble", 1, 1, Kind.CLUSTER, KNIT_LISTS),
    _row("ds", "double stitch", 1, 1, Kind.STITCH, KNIT_LISTS),
    _row("cable twist", "cable twist", 6, 6, Kind.CABLE, PAMPHLETS),
)

FORMS: dict[str, str] = {
    "k": "k", "knit": "k", "p": "p", "purl": "p", "kwise": "k", "pwise": "p",
    "ktbl": "ktbl", "k tbl": "ktbl", "k1tbl": "ktbl", "k1-b": "ktbl", "ptbl": "ptbl", "p1tbl": "ptbl",
    "sl": "sl", "slip": "sl", "s": "sl",
    "ssk": "ssk", "ssp": "ssp", "sssk": "sssk", "slip slip knit": "ssk",
    "skp": "skp", "skpo": "skp", "s1k1psso": "skp", "slip and bind": "skp",
    "sk2p": "sk2p", "sk2po": "sk2p", "cdd": "cdd", "s2kp": "cdd", "s2kp2": "cdd", "sl2kp": "cdd",
    "dec": "dec", "decrease": "dec", "decs": "dec",
    "psso": "psso", "p.s.s.o": "psso", "p.s.s.o.": "psso", "pass slipped stitch over": "psso",
    "pass slipped st over": "psso", "pass sl st over": "psso", "pass the slipped stitch over": "psso",
    "pass the slipped st over": "psso", "p2sso": "p2sso",
    "yo": "yo", "y o": "yo", "yarn over": "yo", "yarnover": "yo", "yfwd": "yo", "yrn": "yo",
    "yon": "yo", "yf": "yo", "wl fwd": "yo", "y.o": "yo", "yos": "yo",
    "yo2": "yo2", "double yarn over": "yo2", "double yo": "yo2", "yo twice": "yo2", "yo 2": "yo2",
    "m1": "m1", "make one": "m1", "make 1": "m1", "m 1": "m1", "m1l": "m1l", "m1r": "m1r",
    "m1p": "m1p", "m1k": "m1", "mk1": "m1", "make 1 st": "m1",
    "kfb": "kfb", "k1f&b": "kfb", "kf&b": "kfb", "k1fb": "kfb", "k f&b": "kfb", "pfb": "pfb",
    "p1f&b": "pfb", "inc": "inc", "increase": "inc", "inc 1": "inc", "kfbf": "kfbf", "rli": "rli",
    "lli": "lli", "k1fbf": "kfbf", "incs": "inc", "inc1": "inc",
    "rt": "rt", "lt": "lt", "mb": "mb", "make bobble": "mb", "ds": "ds",
    "cable twist": "cable twist", "drop": "drop",
}
"""Written forms -> name."""
