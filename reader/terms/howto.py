"""How each stitch is made, in a few words of our own, by its US short name, with where it was
checked.

The words name motions only (insert, yarn over, pull up a loop), so that they hold in US and UK
terms
alike. Crochet motions follow the Handbook of Wool Knitting and Crochet of 1918, which describes
each
stitch loop by loop under the English names, and the abbreviation lists named in the stitch table.
"""

from __future__ import annotations

from dataclasses import dataclass

from reader.terms.stitches import (
    CYC,
    HANDBOOK,
    KNIT_LISTS,
    LISTS,
    NUMBER_WORDS,
    PAMPHLETS,
    PRACTICE,
    TOGETHER,
    Craft,
)


@dataclass(frozen=True, slots=True)
class HowTo:
    """The making of one stitch in spoken words, and the source it was checked against."""

    words: str
    source: str


_POST = "around the post of the stitch below, from the {side}, instead of into its top"

CROCHET: dict[str, HowTo] = {
    "ch": HowTo("Yarn over, and pull through the loop on the hook.", HANDBOOK),
    "sl st": HowTo(
        "Insert the hook, yarn over, and pull through the stitch and the loop on the hook at once.",
        HANDBOOK,
    ),
    "sc": HowTo(
        "Insert the hook, yarn over, pull up a loop. Yarn over, pull through both loops.", HANDBOOK
    ),
    "hdc": HowTo(
        "Yarn over first. Insert the hook, yarn over, pull up a loop. Yarn over, pull through all "
        "three loops.",
        PAMPHLETS,
    ),
    "dc": HowTo(
        "Yarn over first. Insert the hook, yarn over, pull up a loop. Then twice: yarn over, pull "
        "through two loops.",
        HANDBOOK,
    ),
    "tr": HowTo(
        "Yarn over twice first. Insert the hook, yarn over, pull up a loop. Then three times: yarn "
        "over, pull through two loops.",
        HANDBOOK,
    ),
    "dtr": HowTo(
        "Yarn over three times first. Insert the hook, yarn over, pull up a loop. Then four times: "
        "yarn over, pull through two loops.",
        HANDBOOK,
    ),
    "trtr": HowTo(
        "Yarn over four times first. Insert the hook, yarn over, pull up a loop. Then five times: "
        "yarn over, pull through two loops.",
        HANDBOOK,
    ),
    "esc": HowTo(
        "Insert the hook, yarn over, pull up a loop. Yarn over, pull through one loop. Yarn over, "
        "pull through both loops.",
        LISTS,
    ),
    "ehdc": HowTo(
        "Yarn over first. Insert the hook, yarn over, pull up a loop. Yarn over, pull through one "
        "loop. Yarn over, pull through all three loops.",
        LISTS,
    ),
    "edc": HowTo(
        "Yarn over first. Insert the hook, yarn over, pull up a loop. Yarn over, pull through one "
        "loop. Then twice: yarn over, pull through two loops.",
        LISTS,
    ),
    "rev sc": HowTo("Work plain stitches backwards, from left to right, without turning.", LISTS),
    "lp st": HowTo(
        "Insert the hook, wrap the yarn over a finger for a loop, catch both strands, pull up. "
        "Yarn over, pull through all loops.",
        PAMPHLETS,
    ),
    "spike": HowTo(
        "Insert the hook into a row further down, pull up a long loop. Yarn over, pull through "
        "both "
        "loops.",
        LISTS,
    ),
    "inc": HowTo("Make two stitches in the same place.", CYC),
    "inc3": HowTo("Make three stitches in the same place.", PRACTICE),
    "dec": HowTo(
        "Pull up a loop in each of the next two stitches. Yarn over, pull through all three loops.",
        CYC,
    ),
    "inv dec": HowTo(
        "Put the hook through the front loops of the next two stitches, pull up one loop. Yarn "
        "over, "
        "pull through both loops.",
        LISTS,
    ),
    "sc2tog": HowTo(
        "Pull up a loop in each of the next two stitches. Yarn over, pull through all three loops.",
        CYC,
    ),
    "sc3tog": HowTo(
        "Pull up a loop in each of the next three stitches. Yarn over, pull through all four "
        "loops.",
        LISTS,
    ),
    "hdc2tog": HowTo(
        "Twice: yarn over, pull up a loop in the next stitch. Yarn over, pull through all five "
        "loops.",
        LISTS,
    ),
    "dc2tog": HowTo(
        "Twice: yarn over, pull up a loop in the next stitch, yarn over, pull through two loops. "
        "Then "
        "yarn over, pull through all three loops.",
        CYC,
    ),
    "dc3tog": HowTo(
        "Three times: yarn over, pull up a loop in the next stitch, yarn over, pull through two "
        "loops. Then yarn over, pull through all four loops.",
        LISTS,
    ),
    "bobble": HowTo(
        "In one place make several tall stitches, each without its last pull. Then yarn over, and "
        "pull through all loops.",
        CYC,
    ),
    "popcorn": HowTo(
        "Make several whole stitches in one place. Take the hook out, put it into the top of the "
        "first of them, and pull the dropped loop through.",
        PAMPHLETS,
    ),
    "puff": HowTo(
        "Several times in one place: yarn over, pull up a long loop. Then yarn over, and pull "
        "through all loops.",
        LISTS,
    ),
    "cluster": HowTo(
        "Make several stitches, each without its last pull. Then yarn over, and pull through all "
        "loops.",
        CYC,
    ),
    "shell": HowTo(
        "Make a group of tall stitches in one place; the pattern says how many.", PRACTICE
    ),
    "fan": HowTo(
        "Make a group of tall stitches in one place; the pattern says how many.", PRACTICE
    ),
    "v-st": HowTo("In one place: a tall stitch, chain one, a tall stitch.", LISTS),
    "picot": HowTo("Chain three, then slip stitch back into the first of the three.", LISTS),
    "x-st": HowTo(
        "Skip a stitch, work the next one, then go back and work the skipped one.", LISTS
    ),
    "waistcoat": HowTo(
        "A single crochet, but insert the hook between the two legs of the stitch below. Work "
        "loosely.",
        PRACTICE,
    ),
    "tss": HowTo("Hook under the front bar, yarn over, pull up a loop and keep it.", LISTS),
    "tks": HowTo("Hook through the middle of the stitch to the back, pull up a loop.", LISTS),
    "tps": HowTo("Yarn in front, hook under the front bar, pull up a loop.", LISTS),
    "tfs": HowTo("Hook into the space between two bars, pull up a loop.", LISTS),
    "star": HowTo(
        "Pull up a loop in each of several places side by side. Yarn over, pull through all, and "
        "chain one to close the eye.",
        HANDBOOK,
    ),
    "fsc": HowTo(
        "Insert the hook into the chain, pull up a loop, chain one: that is the new foundation. "
        "Yarn "
        "over, pull through both loops.",
        LISTS,
    ),
    "fhdc": HowTo(
        "Yarn over, insert into the chain, pull up a loop, chain one: that is the new foundation. "
        "Yarn over, pull through all three loops.",
        LISTS,
    ),
    "fdc": HowTo(
        "Yarn over, insert into the chain, pull up a loop, chain one: that is the new "
        "foundation. Then "
        "twice: yarn over, pull through two loops.",
        LISTS,
    ),
    "surf": HowTo(
        "Hold the yarn behind the fabric, insert the hook from the front, and pull a loop up and "
        "through the loop on the hook.",
        LISTS,
    ),
    "mr": HowTo(
        "Wind the yarn once around a finger, pull up a loop through the ring, chain one. Work the "
        "stitches into the ring, then pull the tail to close it.",
        PRACTICE,
    ),
    "blo": HowTo("Insert the hook under the strand of the stitch that is further from you.", LISTS),
    "flo": HowTo("Insert the hook under the strand of the stitch that is nearer to you.", LISTS),
    "st": HowTo("Work the stitch of the row, one in each.", PRACTICE),
}
"""Crochet, by US short name; post stitches are made from the plain ones, see `how_to`."""

KNITTING: dict[str, HowTo] = {
    "k": HowTo(
        "Yarn at the back. Insert the needle from front to back, wrap the yarn, pull the loop "
        "through, and let the old stitch drop off.",
        HANDBOOK,
    ),
    "p": HowTo(
        "Yarn at the front. Insert the needle from back to front, wrap the yarn, pull the loop "
        "through, and let the old stitch drop off.",
        HANDBOOK,
    ),
    "ktbl": HowTo("Knit, with the needle in the strand behind the left needle.", CYC),
    "ptbl": HowTo("Purl, with the needle in the strand behind the left needle, from behind.", CYC),
    "sl": HowTo("Move the stitch to the right needle without working it.", CYC),
    "k2tog": HowTo("Put the needle through two stitches at once, and knit them as one.", CYC),
    "k3tog": HowTo("Put the needle through three stitches at once, and knit them as one.", CYC),
    "p2tog": HowTo("Put the needle through two stitches at once, and purl them as one.", CYC),
    "p3tog": HowTo("Put the needle through three stitches at once, and purl them as one.", CYC),
    "ssk": HowTo(
        "Slip two stitches one by one as if to knit. Put the left needle into their fronts, and "
        "knit "
        "them as one.",
        CYC,
    ),
    "ssp": HowTo(
        "Slip two stitches one by one as if to knit, put them back, and purl both as one through "
        "their backs.",
        CYC,
    ),
    "sssk": HowTo(
        "Slip three stitches one by one as if to knit. Put the left needle into their fronts, and "
        "knit them as one.",
        CYC,
    ),
    "ssssk": HowTo("As for sssk, with four stitches.", PRACTICE),
    "kyok": HowTo("Knit, lay the yarn over, and knit again, all into one stitch.", PRACTICE),
    "skp": HowTo(
        "Slip one, knit one, and lift the slipped stitch over the knitted one.", PAMPHLETS
    ),
    "sk2p": HowTo("Slip one, knit two as one, and lift the slipped stitch over that.", PAMPHLETS),
    "cdd": HowTo(
        "Slip two together as if to knit, knit one, and lift both slipped stitches over it.", CYC
    ),
    "psso": HowTo("Lift the slipped stitch over the stitch just worked.", PAMPHLETS),
    "p2sso": HowTo("Lift the two slipped stitches over the stitch just worked.", PAMPHLETS),
    "yo": HowTo("Lay the yarn over the right needle, and go on: one new loop.", PAMPHLETS),
    "yo2": HowTo("Lay the yarn twice around the right needle: two new loops.", PAMPHLETS),
    "m1": HowTo(
        "Lift the strand between two stitches onto the left needle, and knit it with a twist.", CYC
    ),
    "m1l": HowTo(
        "Lift the strand between two stitches from front to back, and knit it through its back.",
        CYC,
    ),
    "m1r": HowTo(
        "Lift the strand between two stitches from back to front, and knit it through its front.",
        CYC,
    ),
    "m1p": HowTo(
        "Lift the strand between two stitches onto the left needle, and purl it with a twist.", CYC
    ),
    "kfb": HowTo(
        "Knit into the front and leave the stitch on, knit into its back, then let it drop off.",
        CYC,
    ),
    "pfb": HowTo(
        "Purl into the front and leave the stitch on, purl into its back, then let it drop off.",
        CYC,
    ),
    "kfbf": HowTo(
        "Knit into the front, the back and the front again of one stitch, then let it drop off.",
        KNIT_LISTS,
    ),
    "rli": HowTo(
        "Lift the right leg of the stitch below the next one onto the left needle, and knit it.",
        KNIT_LISTS,
    ),
    "lli": HowTo(
        "Lift the left leg of the stitch two rows below the last one made, and knit it.", KNIT_LISTS
    ),
    "inc": HowTo("Make two stitches from one, as the pattern says.", PRACTICE),
    "dec": HowTo("Work two stitches together as one.", PRACTICE),
    "drop": HowTo("Let the loop fall off the needle.", PRACTICE),
    "brk": HowTo("Knit the stitch together with the yarn over that lies on it.", KNIT_LISTS),
    "brp": HowTo("Purl the stitch together with the yarn over that lies on it.", KNIT_LISTS),
    "sl1yo": HowTo(
        "Bring the yarn to the front, slip one, and lay the yarn over that stitch.", KNIT_LISTS
    ),
    "brkyobrk": HowTo(
        "Knit the stitch with its yarn over and leave it on, yarn over, and knit both again.",
        KNIT_LISTS,
    ),
    "br4st inc": HowTo(
        "Into the stitch with its yarn over knit, yarn over, knit, yarn over, and knit.", KNIT_LISTS
    ),
    "brlsl": HowTo(
        "Slip one with its yarn over, knit the next two as one, and lift the slipped one over.",
        KNIT_LISTS,
    ),
    "brrsl": HowTo(
        "Slip one with its yarn over, knit one, lift the slipped one over, put the stitch back, "
        "lift the next one over it, and slip it again.",
        KNIT_LISTS,
    ),
    "rt": HowTo(
        "Knit two as one but leave them on, knit the first of them again, then drop both off.",
        KNIT_LISTS,
    ),
    "lt": HowTo(
        "Knit the second stitch from behind, then the first one, then drop both off.", KNIT_LISTS
    ),
    "cross 2": HowTo("Knit the second stitch first, then the first, then drop both off.", PRACTICE),
    "mb": HowTo(
        "Make several stitches from one, turn and work them, then close them to one.", KNIT_LISTS
    ),
    "ds": HowTo(
        "Turn, bring the yarn to the front, slip one, and pull the yarn up and over the needle so "
        "that the stitch shows two legs.",
        KNIT_LISTS,
    ),
    "co": HowTo("Put new stitches on the needle, in the way you like best.", PRACTICE),
    "bo": HowTo(
        "Work two, lift the first over the second, work one more, lift again, and so on.", CYC
    ),
    "w&t": HowTo(
        "Slip the next stitch, bring the yarn to the other side, slip the stitch back, and turn.",
        KNIT_LISTS,
    ),
    "pm": HowTo("Put a marker on the needle.", PRACTICE),
    "sm": HowTo("Move the marker from the left needle to the right.", PRACTICE),
    "st": HowTo("Work the stitch as the pattern shows.", PRACTICE),
}
"""Knitting, by short name; cables are made on demand, see `how_to`."""


def how_to(name: str, craft: Craft) -> HowTo | None:
    """How the stitch of that US short name is made; None where nothing is known about it."""
    table = KNITTING if craft is Craft.KNITTING else CROCHET
    if name in table:
        return table[name]
    tog = TOGETHER.match(name)
    if tog:
        return _together(int(tog.group(2)), craft)
    if craft is Craft.KNITTING:
        return _cable(name)
    return _post(name)


def _together(number: int, craft: Craft) -> HowTo:
    """Decreases of any stitch over any number."""
    many = NUMBER_WORDS.get(number, str(number))
    if craft is Craft.KNITTING:
        return HowTo(f"Put the needle through {many} stitches at once, and work them as one.", CYC)
    return HowTo(
        f"Work into each of the next {many} stitches, each time without the last pull. Then yarn "
        "over, pull through all loops.",
        LISTS,
    )


def _post(name: str) -> HowTo | None:
    """Post stitches: the plain stitch, elsewhere."""
    plain = CROCHET.get(name[2:])
    if plain is None or name[:2] not in ("fp", "bp"):
        return None
    side = "front" if name.startswith("fp") else "back"
    return HowTo(f"Put the hook {_POST.format(side=side)}. {plain.words}", LISTS)


def _cable(name: str) -> HowTo | None:
    """Cables: half of the stitches wait at the front or the back."""
    if not (name[:1] in ("c", "t") and name[1:2].isdigit()):
        return None
    where = "back" if name.rstrip("p").endswith(("b", "r")) else "front"
    return HowTo(
        f"Put the first half of the stitches on a cable needle at the {where}, knit the other "
        f"half, "
        "then knit the waiting ones.",
        KNIT_LISTS,
    )
