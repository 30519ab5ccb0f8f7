"""A pattern's words -> its craft, and whether its terms are US or UK with the evidence."""

from __future__ import annotations

import re

from reader.terms.crafts import CROCHET_WORDS, KNITTING_WORDS, Terms
from reader.terms.stitches import Craft
from reader.text.sought import Sought


def craft_of(text: str) -> Craft:
    """Crochet or knitting, by the words used."""
    low = text.lower()
    knit, crochet = len(re.findall(KNITTING_WORDS, low)), len(re.findall(CROCHET_WORDS, low))
    return Craft.KNITTING if knit > crochet else Craft.CROCHET


UK_WORDS = re.compile(
    r"\bhtr\b|\bhalf treble|\bmiss\b|\btension\b|\bss\b|\bcast off\b|\bdc2tog in uk"
    r"|\btrebles?\b(?! crochet)|\bcolour"
    r"|\bdoubles?\b(?! crochet| in half| (?:strand|thread|yarn|wool))"
)
UK_TERMS = Sought(
    ("term",),
    r"\b(?:uk|british|english)\b[^.\n]{0,20}\bterms?\b"
    r"|\bterm(?:s|inology)\b(?: used)?\W{0,4}(?:is |are )?(?:in )?(?:uk|british|english)\b",
)
UK_PATTERN = Sought(
    ("uk", "british"),
    r"\b(?:uk|british)\b(?: \w+){0,3}? (?:pattern|version|format)\b"
    r"|\((?:uk|british)(?: (?:version|pattern|english))?\)",
)
US_TERMS = Sought(
    ("term",),
    r"\b(?:us|u\.s\.|american)\b[^.\n]{0,20}\bterms?\b"
    r"|\bterm(?:s|inology)\b(?: used)?\W{0,4}(?:is |are )?(?:in )?(?:us\b|u\.s\.|american\b)",
)
OLD_ENGLISH = Sought(
    ("long",),
    r"\b(?:\d+|a|one|two|three|four|five) (?:double )?long\b"
    r"(?: st|(?= (?:into|in|on|over|and)\b|[,.;]))",
)
"""The long stitch, for which later books say treble."""
SHORT_US = re.compile(r"\b(?:s ?c|hdc|s d c|skip)\b")
TWISTED = re.compile(r"\b3 ch(?:ain)?[ .,]+(?:and )?twist\b[^;]{0,40}?\bdc\b")
"""Three chains twisted stand for a stitch of their height."""
NETTED_DC = re.compile(
    r"\bd\.? ?c\.? (?:in|into) (?:the )?(?:[4-9]|1\d)th (?:st|ch)"
    r"|\b(?:3 ch(?:ain)?|ch(?:ain)? 3)s?,? (?:and |work |make )*\d+ d\.? ?c\.? in(?:to)?"
    r" (?:the )?ring"
    r"|\b(?:3 ch(?:ain)?|ch(?:ain)? 3)s?,? (?:and |to )?turn\b[^;.]{0,80}?\bd\.? ?c\b"
)
"""A dc so far from the hook, or over a chain of three that was turned, is no UK double crochet."""
TALL_DC = re.compile(
    r"(?:rnd|round|row)[ .\d:]*\**\s*(?:work |make )?(?:3 ch|ch 3)\b[^.;*]{0,24}?\b(?:\d+ )?dcs? in"
)


THREE_FOR_DC = re.compile(
    r"\b(?:ch(?:ain)? ?-?(?:[3-7]|three)|(?:[3-7]|three) ch(?:ain)?s?)\b[^.;:]{0,60}?"
    r"\b(?:counts?|stands?|counting|counted)\b[^.;:]{0,30}?\b(?:double|dc)\b"
)
TREBLES = re.compile(r"\bh?tr\b|\btrebles?\b|\bmiss\b")


def terms_of(text: str) -> tuple[Terms, str]:
    """US or UK, and the evidence in one sentence."""
    low = text.lower()
    if UK_TERMS.search(low):
        return Terms.UK, "the pattern says that its terms are UK"
    if UK_PATTERN.search(low):
        return Terms.UK, "the pattern says that it is a UK one"
    if US_TERMS.search(low):
        return Terms.US, "the pattern says that its terms are US"
    us = len(
        re.findall(
            r"\b(?:sc\b|s c\b|hdc\b|s d c\b|skip\b|sk\b|sc2tog)|single crochet|\d ?sc\b",
            low,
        )
    )
    uk = len(UK_WORDS.findall(low))
    faint = 0 if us else len(re.findall(r"\bss\b|\bcolour", low))
    if not us and ((uk <= faint and TALL_DC.search(low)) or TWISTED.search(low)):
        return Terms.US, "three chains begin its dc rows, the height of a US double crochet"
    if not us and NETTED_DC.search(low) and not re.search(r"\btr|\bss\b|\bhtr", low):
        return Terms.US, "three chains stand beside its dc, the height of a US double crochet"
    if OLD_ENGLISH.search(low) and not SHORT_US.search(low):
        return Terms.UK, "it has long stitches, as old English books call their trebles"
    if not us and THREE_FOR_DC.search(low) and not TREBLES.search(low):
        return Terms.US, "three chains stand for its double crochet, the height of a US one"
    if us and us >= uk:
        return (
            Terms.US,
            "it speaks of single crochet, half double crochet or skip, which are US words",
        )
    if uk and not us:
        return (
            Terms.UK,
            "it uses miss, ss, htr, tension or trebles and never sc, which are UK words",
        )
    if re.search(r"\b[123] ch\b[^.\n]{0,24}\bdc\b", low) and not us:
        return Terms.UK, "a dc row begins with one chain, the height of a UK double crochet"
    return Terms.US, "nothing tells US from UK terms; US is taken"
