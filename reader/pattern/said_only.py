"""Lines that only say something of stitches: what a word means, a list of abbreviations, a rule for
the whole text.
"""

from __future__ import annotations

import re

from reader.pattern.meant_groups import without_meant
from reader.pattern.printed import ONLY_A_TOTAL
from reader.terms.numbers import SPELLED
from reader.text.chain_notes import only_chain_notes

HOOKED = re.compile(
    r"\b(?:(?:pull|draw)(?:ing)? up (?:a )?(?:loop|lp)|insert(?:ing)? (?:the |your )?hook"
    r"|yo(?:h|rh)?,(?=[^.]{0,40}\b(?:draw|pull|insert|loop|hook|through))|yarn over (?:and|hook))",
    re.IGNORECASE,
)
"""Words that tell how a stitch is made."""
NEAR = 80
"""Characters behind a name in which its meaning tells so."""


NAMED = re.compile(r"[A-Za-z][\w/-]{0,14}(?: [\w/-]{1,10}){0,2}(?: ?\([^()\n]{1,16}\))? ?=(?! ?\d)")


def tells_how(words: str) -> bool:
    """Whether a paragraph only tells how a stitch is made: "bob = (yo, insert hook, pull up loop)
    5 times in same st, yo, pull through all loops".
    """
    name = NAMED.match(words)
    return name is not None and HOOKED.search(words[name.end() : name.end() + NEAR]) is not None


GOES_ON = re.compile(r"\b(?:until|till|repeat this|rep this|every row|each row)\b", re.IGNORECASE)
"""How a piece goes on: what stands before is worked, not only told."""


BEGUN = re.compile(
    r"\s*(?:(?:with|using)\s[^.;,:]{1,30}?,?\s)?(?:make\s(?:a\s)?)?(?:ch(?:ain)?(?:\sof)?\s\d{2}"
    r"|\d{2,}\sch)",
    re.IGNORECASE,
)
"""A piece that begins with its chain: "RUG: With blue ch 60, insert hook in 4th st ..."."""


def defines(words: str, head: str) -> bool:
    """ "V-st: (dc, ch 1, dc) in one stitch." defines; "BODY: With red, ch 4" begins a part."""
    low = head.lower()
    if re.match(r"to (?:inc|dec|narrow|widen)", low) and GOES_ON.search(words):
        return False
    told = re.match(rf"{re.escape(head)}\s*:", words)
    begins = BEGUN.match(words[told.end() :]) if told else None
    if told and not begins and HOOKED.search(words[told.end() : told.end() + NEAR]):
        return True
    return bool(
        re.match(
            r"^(?:(?!(?:wai|wri|che|ve|ne|cre|brea|toa|ma|po|fir|la|be|re|ru|du)st$)[a-z]+[- ]?"
            r"st(?:itch)?|shell|fan|cluster|cl|puff|bobble|popcorn|picot|c\d\w|inc|dec"
            r"|multiple\b.*|terms?|to \w+)$",
            low,
        )
    )


CROCHETED = re.compile(r"\b(?:\d*(?:sc|hdc|dc|htr|tr)|crochet|ch ?\d+|doubles?|trebles?)\b")
GROUP_IS = re.compile(
    r"(?:shell|fan|v-? ?st(?:itch)?|cluster|popcorn|bobble|puff|group|picot)s?\s*="
)
STARTS = re.compile(
    r"\b(?:ch(?:ain)?s?|ch\d+|ring|circle|mr|mc|magic|cast|co ?\d+|f[sh]?d?c|foundation|join|attach"
    r"|rejoin|pick(?:ing)? up|loop|fasten|knot|unite)\b|\dch\b",
    re.IGNORECASE,
)
"""How a piece begins: without one of these there is nothing to work into."""


RULES = re.compile(
    r"\b(?:(?:beg(?:inning)? |turning |starting |the )*ch(?:ain)?[- ]?\d+ at (?:the )?(?:start|beg)"
    r"|(?:[a-z]+ ?/ ?){2,}[a-z]+\b|(?:always )?join(?:ed|ing)? (?:each|every|all) (?:rnd|round|row)"
    r"|(?:worked|made|turn(?:ed)?) (?:each|every|from|in|at|the end))[^.\n]*(?:\.|$)",
    re.IGNORECASE | re.MULTILINE,
)
"""What holds for many rows, said before them."""


def without_rules(words: str) -> str:
    """The words of a paragraph without what only tells how all rows are worked."""
    return RULES.sub(" ", words)


MEANING = re.compile(
    r"(?:[A-Za-z0-9][\w/()-]{0,9}(?: (?:st|sts|cl))?)\s*(?:[=:—-]\s*|\s)"
    r"(?:chain|double|single|treble|triple|half|slip|stitch|space|skip|miss|repeat|round|yarn"
    r"|increase|decrease|together|beginning|begin|front|back|turning|follow|remain|right|wrong"
    r"|next|cluster|magic|popcorn|loop|through|between|skein|pattern|foundation|approx|alternate"
    r"|continue|previous|contrast|main|colou?r|place|marker|group|center|centre|picot|knit|purl|cast|bind|stocking|garter|make|slip|pick|tog)"
    r"[\w()']*(?: [\w()'/-]+){0,6}",
    re.IGNORECASE,
)
LEAST_MEANINGS = 3


SHORT_MEANING = re.compile(
    r"\W*[A-Z][A-Za-z0-9]{0,7}(?: ?\([a-z][a-z -]{2,19}\)| over \d+ sts?)? ?= ?(?=\S)"
)


def tells_short(words: str) -> bool:
    """Whether a line tells what one short name means: "PC (popcorn) = 5 dc in same st, ..."."""
    return SHORT_MEANING.match(words) is not None


LISTED = re.compile(r"^\W*(?:abbr\w*|key|terms)\.?\s*[:.—-]\s*", re.IGNORECASE)


def lists_meanings(words: str) -> bool:
    """Whether a paragraph is a list of abbreviations: "ch chain; dc double crochet; tr treble"."""
    told = without_meant(LISTED.sub("", words))
    pieces = [one.strip(" .") for one in re.split(r"[;,\n]", told) if one.strip(" .")]
    meant = sum(MEANING.fullmatch(one) is not None for one in pieces)
    return meant >= LEAST_MEANINGS and 3 * meant >= 2 * len(pieces)


SPEAKS = re.compile(
    r"(?:(?:in|for|with|at|on|here|now|first|today|before|after|as)\b[^.;:]{0,40}?,? )?"
    r"(?:you(?:'re|'ll| will| are| might| may| can| could)|we(?:'re|'ll| will| are| can)"
    r"|i(?:'ve|'m| have| am)|for each|remember)\b[^.]*(?:\.|$)"
    r"|(?:making|working|crocheting) [^.;:]{1,40} is\b|this is (?:a|an|the)\b"
)
"""A first sentence that speaks to the maker."""
NUMBERED = re.compile(rf"\d|\b(?:{SPELLED})\b")


_MADE = r"(?:sts?|stitches|sc|dc|hdc|tr|htr|rows|rnds|rounds)"
WHAT_FOLLOWS = re.compile(
    r"to (?:narrow|widen|shape|decrease|increase|turn|close|finish|begin|make|divide)\b"
    r"[^.;\d]{0,40}:"
)
"""A heading that says what the rows below it do: "To narrow for the crown:"."""
TENSION = re.compile(
    rf"\d ?{_MADE}\b(?:[^.;]{{0,24}}\d ?{_MADE}\b)?\s*(?:=|/|to|per|over|in)\s*(?:\d+ ?x ?)?\d+ ?"
    r"(?:cm\b|in\b|inch|\")"
)
"""How many stitches a measure takes."""
WORKED = re.compile(
    r"\b(?:cast|co \d|ch(?:ain)? \d|[kp] ?\d|knit|purl|work|rep(?:eat)?|in (?:next|each)"
    r"|(?:row|rnd|round) \d)\b|\*"
)
OF_ALL_ROWS = re.compile(
    r"(?:(?:you|we)(?: will|'ll| should)?(?: always)? have"
    r"|there (?:are|will be|should be)(?: always)?"
    r"|(?:the )?(?:stitch count|number of (?:sts|stitches)|total|count)\b)"
    r"[^.;]*\b(?:every|each|all|always|throughout|same|constant|remains?|stays?)\b[^.;]*\.?"
)
"""A count said of every row, in a sentence of its own."""


_ONE_STITCH = (
    r"(?:s ?c|d ?c|h ?d ?c|h?tr|(?:half[- ]?)?(?:single|double|treble)s?(?: crochets?)?)\b"
    r"(?: \((?:us|uk|british|american)\))?"
)
OF_ONE_STITCH = re.compile(
    r"\W*(?:(?:it's |it is )?(?:all|everything|the whole (?:thing|piece|lot))\b"
    rf"(?: is| are| in| of| done| worked| made)* {_ONE_STITCH}"
    rf"|{_ONE_STITCH} (?:throughout|everywhere|only))(?:[,.;/]|$| and )"
)
"""What all of it is worked in: "all single crochet, no turning", "hdc throughout"."""
PLACED = re.compile(
    r"\b(?:\d+ ?(?:s ?c|d ?c|hdc|tr|sts)|in(?:to)? (?:the )?(?:next|each|every|ring|loop)|around"
    r"|across|to (?:the )?end|(?:row|rnd|round) \d)\b"
)
ON_SO_MANY = re.compile(
    r"(?:you (?:should |will |now )*(?:be|are) (?:now )?(?:on|working (?:on|with|over))"
    r"|(?:the |short[- ]row |turned )*(?:heel|flap|toe|panel|thumb|yoke|crown|strap|tab)"
    r"(?: is)?(?: (?:worked|knit))?(?: only)? (?:over|on))"
    r" (?:only )?\d+(?: ?[(\[][\d,;: /-]+[)\]])? (?:sts|stitches)\b(?: only)?"
    r"(?:[,(][^.]*|[ ][(][^.]*)?"
    r"(?:\. (?:leave|the other|the rest)\b[^.]*)?\.?"
)
"""What a piece is worked on, and nothing done: "short-row heel over 28 sts (the others wait)"."""


ANOTHER_WAY = re.compile(
    r"\W*(?:alternat(?:e|ive) (?:way|method|start|option|beginning)\b|alternatively\b"
    r"|optional\b ?[:,]|or use a\b|(?:or,? )?if you (?:prefer|can't|don't|do not|cannot)\b)"
)
"""What may be done instead, or as well."""
IN_BRACKET = re.compile(r"\((?:inc|dec)\w* [^()]{3,40}\)\.?")
"""A line that is only a remark on its row, "(increase in every 3rd st)"."""


NEEDLE_FIRST = re.compile(
    r"(?:on )?(?:the )?(?:\w+ )?(?:needles?|ndls?|n)(?: ?[1-5])?(?: and [1-5])?:"
)
"""A needle named before what it works is no word that is explained."""


def only_says(words: str) -> bool:
    """Notes that speak of stitches without working any."""
    low = " ".join(words.lower().split())
    if SPEAKS.match(low) and not NUMBERED.search(low):
        return True
    if re.match(r"(?:for [^:.]{2,30}: )?\d+ (?:sts?|stitches|rows|sc|dc)\b[^.;]{0,40}=\s*\d", low):
        return True
    if re.match(r"(?:[a-z]+ ?/ ?){2,}[a-z]+\b", low) and not re.search(r"\d", low):
        return True
    if ANOTHER_WAY.match(low) or IN_BRACKET.fullmatch(low):
        return True
    if GROUP_IS.match(low) or ON_SO_MANY.fullmatch(low):
        return True
    if WHAT_FOLLOWS.fullmatch(low):
        return True
    if TENSION.search(low) and not WORKED.search(low):
        return True
    if only_chain_notes(low) or ONLY_A_TOTAL.fullmatch(low) or OF_ALL_ROWS.fullmatch(low):
        return True
    if OF_ONE_STITCH.match(low) and not PLACED.search(low):
        return True
    return bool(
        re.match(
            r"^(?:(?:the |a |your |all )?(?:beg(?:inning)? |turning |starting |first |initial )*"
            r"(?:ch(?:ain)?[- ]?\d+|\d+[ -]?ch) (?:at|counts?|always|does|do|is|will|never)\b"
            r"|(?:the |your |all )?(?:beg(?:inning)?|turning|starting|first|initial) ch(?:ain)?s?"
            r" (?:at|counts?|always|does|do|is|will|never|stands?)\b"
            r"|note|worked|this pattern|pattern is|each (?:round|rnd)|join each|all rounds|use "
            r"a|multiple of|do not join|here and|gauge|inc =|the ch|always|turn each|first number"
            r"|stitch marker|stitches? used|sizes?\b|finished)",
            low,
        )
    ) or bool(
        re.match(r"^[a-z0-9/& -]{1,24}(?:\([^()]{1,20}\)\s*)?(?:=|:)\s*[a-z]", low)
        and not NEEDLE_FIRST.match(low)
        and (
            not re.search(r"\bch(?:ain)? \d+|cast on|\bco \d", low)
            or re.match(r"^[^:=]{1,40}=", low) is not None
        )
    )
