"""Knitting text -> the same text, length kept, with what makers write as they speak put as
patterns have it: "purl till there's 3 left, k3" -> "purl to last 3           , k3", "carry on with
rows 3 and 4" -> "repeat        rows 3 and 4", "repeat from *-*" -> "repeat from *  ".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_N = rf"(?:\d+(?:\s?[(\[][\d\s,;:/-]+[)\]])?|{SPELLED})"
_STS = r"(?:sts?\b|stitch(?:es)?\b)"
_ROW = r"(?:rows?|rounds?|rnds?)"
_YOU_HAVE = (
    r"(?:(?:there(?:'s|'re|s| are| is)|you(?:'ve| have|'re| are)(?: got)?|i(?:'ve| have)(?: got)?"
    r"|it's|only|just|down to|got|but|reach|get to)\s+)*"
)
_WORKED = (
    r"(?:[kp]\s?\d|k\b|p\b|knit|purl|yo\b|yarn over|m1|make|inc|dec|ssk|ssp|sk2?p|sl\b|slip|turn"
    r"|w&t|wrap|\*|work|rib|cdd|kfb|pfb|cast|bind|bo\b|brk|sm\b)"
)
TILL_LEFT = Sought(
    ("til",),
    r"(?P<lead>(?:\b(?:k|p|knit|purl|pearl|rib|work|across|around|round|plain|even|on|patt\w*"
    r"|as set|as est(?:ablished)?)"
    r"|\*|\))\s+)"
    rf"(?:until|till|til)\s+{_YOU_HAVE}(?P<n>{_N})\s*(?P<sts>{_STS})?\s*(?:are |is |still )?"
    r"(?:left|rem(?:ain(?:s|ing)?)?|to go)\b(?: on (?:the|your|that) (?:\w+ )?needle| unworked)?"
    r"(?P<before> before (?:the |next )*(?:m\b|marker))?"
    rf"(?=\s*[,;:.]?\s*(?:(?:and|then)\s+)*{_WORKED})",
    re.IGNORECASE,
)
"""How far a list of a row is worked; behind other words it is a rule over rows."""
FROM_STAR = Sought(
    ("*",),
    r"(?P<lead>\b(?:rep(?:eat)?|work)\.? (?P<from>from |between |what is between )?)"
    r"\*\s?(?:-|—|to|and)\s?\*(?= (?:until|till|til|to (?:the )?(?:last|end)|around|across|all)\b)",
    re.IGNORECASE,
)
"""A list named by both of its stars, "repeat from *-*"."""
OF_TWO = Sought(
    ("cast", "co"),
    r"(?P<cast>(?:^|(?<=[.\n]))[^.\n]*?\b(?:cast(?:ing)? on|co) (?:[^.\n]*?\. ?)??[^.\n]*?)"
    r"(?P<of>(?:,|;|:|\s-|\swith)\s+(?:the\s+)?(?:first|1st)\s+"
    rf"{_N}(?: {_STS})?\s+(?:are )?(?:for|on|form|to)\s[^.;\n]{{3,50}}?\s?(?:and|,)\s+(?:the\s+)?"
    rf"(?:others?|other {_N}|rest|remaining(?: {_N})?|rem|next {_N}|last {_N}|{_N})\b"
    rf"(?: {_STS})?\s+(?:are )?(?:for|on|form|to)\s[^.;,\n]{{3,40}})(?=[.;,\n])",
    re.IGNORECASE,
)
"""What lies on which needle, told with the cast on: all of them are worked."""
IN_A_WAY = Sought(
    ("method", "cast-on", "cast on", "style", "technique", "caston", "provisional", "tail"),
    r"(?P<lead>(?:^|(?<=[.:;\n]))[ ]*)(?P<way>(?:with|using|use|work)\b[^.;:\n\d]{2,90}?"
    r"(?:method|cast[ -]?on|style|technique|provisionally)\b[^.;:\n\d]{0,50}?,?\s+)"
    r"(?=(?:loosely |tightly )?(?:cast(?:ing)? on|co) (?:a total of )?\d)",
    re.IGNORECASE | re.MULTILINE,
)
"""In which way to cast on, told before it."""
GOES_ON = Sought(
    (" with", " repeating", " working", " alternating", " doing", " in "),
    r"\b(?:carry on|keep on|keep going|keep|go on|going|continue|cont)"
    r"(?: (?:going|on))*(?: (?:with|working|repeating|doing|alternating|in))+"
    rf"(?= (?:the )?(?:(?:last|these|those|above) (?:{_N} )?{_ROW}\b|{_ROW} \d))",
    re.IGNORECASE,
)
"""Other words for repeating."""
LIKE_THAT = Sought(
    ("like th", "as be"),
    r"\b(?:keep going|keep on|carry on|go on|keep doing (?:it|this)|continue)(?: going)?"
    r" (?:like (?:that|this)|as before)(?=[^.;\n]{0,120}?\btil)",
    re.IGNORECASE,
)
TIL = Sought(
    ("til ",),
    r"(?<!\w)'?til(?P<you> (?:there(?:'s|'re|s| are| is)|you(?:'ve| have|'re down to)(?: got)?"
    r"|u have|uve got|i have|it's|only|just))(?= (?:\d|(?:only|just) \d))",
    re.IGNORECASE,
)
JUST_DONE = Sought(
    ("done", "worked", "finished", "completed"),
    r",? (?:and|&) (?:(?:you|you've|you have|have|uve|u) )*(?:just )?(?:done|worked|finished"
    rf"|completed) (?:a|the|another) (?:ws |rs |wrong[- ]side |right[- ]side )?{_ROW}(?: \d+)?\b",
    re.IGNORECASE,
)
"""With which row a repeat ends: the goal says it already."""
NEXT_OF = Sought(
    ("next ",),
    r"(?P<next>(?:^|(?<=[.;:!)\n])) ?(?:the )?next )(?P<kind>[a-z]{3,12}(?: [a-z]{3,10})?)"
    r"(?P<row> (?:row|round|rnd))(?P<end>\s?(?:\([^()\n]{2,12}\))?:)(?=\s)",
    re.IGNORECASE | re.MULTILINE,
)
NOT_KINDS = re.compile(r"few|couple|two|three|four|five|six|ten|several|knit|purl|and\b|of\b", re.I)
CHATTED = Sought(
    ("next ", " then"),
    rf"(?:^|(?<=[.!?)\n]))(?P<gap>[ ]*)(?:(?:now|then|so|and|ok|okay),? )*(?:(?:on|for|in|over)?"
    rf" ?the )next (?P<row>row|round|rnd)\b(?P<talk>,? (?![^:.\n]*\d)[^:.;\n*]{{6,110}}):"
    rf"(?=\s+{_WORKED})",
    re.IGNORECASE | re.MULTILINE,
)
"""A sentence that leads up to a row, "On the next round I sneak in two stitches: knit 20, ..."."""


_STITCH_NUMBERS = r"(?:[kp]\s?\d+,?\s*(?:and\s+)?)+"
FABRIC_ROWS = Sought(
    ("rows", "rounds", "rnds"),
    r"(?P<at>(?:^|(?<=[.;:)\]\n]))[ ]*(?:(?:then|now|and),? )*)"
    r"(?P<lead>(?:(?:beg|begin|beginning|starting|start)\.? with an? \w+ (?:row|round|rnd),? )?)"
    r"(?P<what>(?:(?:rev(?:erse)?\.? )?(?:st[- ]?st(?:itch)?|stocking st(?:itch)?"
    r"|stockinett?e?(?: st(?:itch)?)?|g[- ]st|garter(?:[- ]st(?:itch)?)?"
    r"|(?:double |irish )?(?:moss|seed)(?: st(?:itch)?)?|plain(?: knitting)?)"
    rf"|[(\[]?{_STITCH_NUMBERS}[)\]]? ?rib(?:bing)?|\d ?x ?\d rib(?:bing)?|twisted rib|rib)"
    rf"(?:,| x| for|:)?) (?P<n>{_N}) (?P<more>(?:more |further )?)(?P<row>rows|rounds|rnds)\b",
    re.IGNORECASE | re.MULTILINE,
)
"""A fabric and so many rows with no verb: "St-st 6 rows", "k2, p2 rib x 12 rnds"."""
LEFT_TURNED = Sought(
    ("unworked", "unknit"),
    rf",? (?:and )?leav(?:e|ing) (?:the )?(?:last |remaining |rem |other )?{_N} (?:sts|stitches|st)"
    r" (?:unworked|unknit(?:ted)?)(?=,? (?:and )?(?:turn|w&t|wrap))",
    re.IGNORECASE,
)
"""Before a turn, what is left by it: "k15, leave 5 sts unworked, turn"."""
WRAPPED = Sought(
    ("sl",),
    r"\b(?:sl|slip) (?:the )?next st(?:itch)?(?: p(?:url)?-?wise)?(?: (?:to|onto) (?:the )?right"
    r"(?: hand)? needle)?, (?:bring|take|put|move|pass) (?:the )?(?:yarn|wool) (?:to (?:the )?)?"
    r"(?:forward|front|fwd|back)(?: between (?:the )?needles)?,? (?:and )?(?:sl|slip|return|put)"
    r" (?:the )?(?:same |slipped )?st(?:itch)?(?: back)?(?: (?:to|on|onto) (?:the )?left(?: hand)?"
    r" needle)?,? (?:and )?turn\b",
    re.IGNORECASE,
)
"""How the stitch at a turn is wrapped."""
PLAIN_ROWS = Sought(
    ("plain knitting",),
    rf"(?P<rows>\b{_N} (?:rows|rounds|rnds))(?P<plain>,? (?:of |in )?plain knitting)\b",
    re.IGNORECASE,
)
ACROSS_SO_MANY = Sought(
    (" across the ", " across all ", " across these "),
    r"(?P<verb>\b(?:k|p|knit|purl|work|rib))(?P<across> across (?:the|all(?: of)?(?: the)?|these))"
    rf"(?= {_N} (?:(?:heel|instep|sole|held|thumb|palm|back|front|top|flap|remaining|rem) )?"
    r"(?:sts|stitches)\b(?! (?:on|of|from|for|that|left|which|held)\b))",
    re.IGNORECASE,
)
OVER_INSTEP = Sought(
    (" instep",),
    r"(?P<k>\b(?:k|knit|work)) ?(?P<n>\d+)(?: sts| stitches)? (?:across|over|along) (?:the )?instep"
    r"(?: (?:sts|stitches))?\b",
    re.IGNORECASE,
)
"""So many stitches across the instep are those of the instep."""
BY_TURNS = Sought(
    ("creasing",),
    r"(?P<again>\brep(?:eat)?(?:ing)?\b[^.;:]{0,60}?\b(?:rows?|rounds?|rnds?)\b[^.;:,]{0,16}?)"
    r",?\s+(?:inc|dec)reasing\s+(?:by\s+)?(?:\d+|one|two|three|four)\s+(?:sts?|stitch(?:es)?)"
    r"\s+(?:on\s+|in\s+|at\s+)?(?:every|each)\s+[a-z\d -]{0,24}?(?:row|round|rnd|time),?"
    r"(?=\s+(?:until|till|til)\b)",
    re.IGNORECASE,
)
"""How the numbers change of rows that go on as before."""
OF_THEM = Sought(
    (" of th", " of which"),
    r",? (?:and |with )?(?:\d+|SPELLED) of (?:them|those|these|which)\b[^.;:,()\[\]\n]{0,50}"
    r"(?=[.;:,)\]\n]|$)".replace("SPELLED", SPELLED),
    re.IGNORECASE | re.MULTILINE,
)
"""Behind a total, where some of the stitches lie."""
LED_TO = Sought(
    (" and dec", " and inc"),
    r"(?P<talk>(?:^|(?<=[.!?]))[ ]*(?:after that|from here|now|then|next|finally)\b,? (?:i|we|you)"
    r" [a-z' ]{2,30} and )(?=(?:dec|inc)rease in? ?(?:every|each)\b)",
    re.IGNORECASE | re.MULTILINE,
)
MORE_FROM = Sought(
    (" more ",),
    rf"(?P<n>\b{_N}) more(?= (?:out of|from|along|into|in|on|across|over) (?:the |your )"
    r"(?:provisional |other |long |short |first )*(?:cast|side|edge|end))",
    re.IGNORECASE,
)
THERE_ARE = Sought(
    ("there's your ", "that's your ", "there are your "),
    rf"\b(?:there's|that's|there are) your (?=(?:\d|(?:{SPELLED})\b))",
    re.IGNORECASE,
)
LED_ROW = Sought(
    (" row:", " round:", " rnd:"),
    r"(?:^|(?<=[.!?)\n]))[ ]*(?:now|then|next|and|so|after that)(?:,| comes| for| do| work)*"
    r" (?:a|an|the|one|your) (?:(?:first|last|final|more|nice|quick|single)"
    r" )*(?:wrong[- ]side|right[- ]side|ws|rs|plain|purl|knit|inc\w*|dec\w*|set-?up|eyelet|lace)"
    rf" (?P<row>row|round|rnd):(?=\s+{_WORKED})",
    re.IGNORECASE | re.MULTILINE,
)
""" "Now a wrong side row: knit 3, ..."."""
CHANGING_PART = Sought(
    ("inc", "dec"),
    r"(?:^|(?<=[.\n]))[ ]*(?:inc|dec)(?:reas(?:e|ing|es))?\.? (?:section|part|half|side|portion"
    rf"|end|triangle|phase)\.?:(?=\s+{_WORKED})",
    re.IGNORECASE | re.MULTILINE,
)
"""A heading in a paragraph that is no decrease."""
ONLY_ROW = Sought(
    ("only", "just"),
    rf"(?P<then>\bthen )(?P<only>only|just)(?= (?:repeat )?{_ROW} \d+\b)", re.IGNORECASE,
)
ONCE_AGAIN = Sought(
    (" again", " more"),
    r"\b(?:do|work|knit|make) (?:that|the|this|another|one more) (?P<kind>(?:inc|dec)\w*)"
    r" (?P<row>round|row|rnd)(?P<again> again| once more| one more time)\b",
    re.IGNORECASE,
)
CHANGE_NAMED = re.compile(
    r"\b(?:inc|dec)[a-z]*\.? (?:round|row|rnd)s? ?(?:\([^()\n]{2,12}\) ?)?[:—]", re.IGNORECASE
)
"""A row that is named by what it changes, to be called back."""
BOTH_ENDS_OF = Sought(
    ("first ",),
    r"(?P<the>\b(?:the )?first )(?P<a>\d{1,3})(?: sts| stitches)?(?: and|,)(?: the)? last"
    r" (?P<b>\d{1,3})(?P<sts> sts| stitches)(?= (?:on|onto|to)\b)",
    re.IGNORECASE,
)
""" "The first 4 and last 4 sts on a pin": eight of them."""
FOLLOWING = Sought(
    ("follow", "foll"),
    r"(?P<at>(?:^|(?<=[.!?\n]))[ ]*)(?:on|in|for) the foll(?:owing|\.)? (?P<row>row|round|rnd),?"
    r" (?=cast|knit|purl|pick|bind|[kp]\s?\d|work \d|\*)",
    re.IGNORECASE | re.MULTILINE,
)
WHO_WORKS = Sought(
    ("i ", "we ", "you ", "'ll ", "'re "),
    r"(?P<at>(?:^|(?<=[.!?:;)\n]))[ ]*(?:(?:and|then|now|next|so|ok|okay|after that),? )*)"
    r"(?P<who>(?:i|we|you)(?:'ll|'re going to|'re gonna| will| can| should| are going to)?"
    r"(?: (?:just|simply|then|now|also|always|usually|only))* )"
    r"(?P<verb>knit|purl|work|rib|repeat|rep|decrease|increase|dec|inc|bind|do|k|p)(?= (?:\d"
    rf"|(?:{SPELLED})\b|the (?:last|next|following)|every|each|all|even|plain|straight|across"
    r"|around|to|until|till|off|in (?:rib|patt|st|garter|moss|seed)))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Then I knit 3 rounds plain": who works it is no part of the work."""
KEEPS_DOING = Sought(
    ("continu", "keep", "carry", "go "),
    r"\b(?:continue|continuing|keep|go(?= )|carry)(?:\s+on)?(?:\s+to)?\s+(?P<verb>knit|purl|pearl"
    r"|narrow|seam|tak)(?:ting|ing|e)?(?P<two>(?:\s+(?:2|two) tog(?:ether)?)?)(?=\s+(?:to|until"
    r"|till)\s[^.;,]{0,20}?\blast\b)",
    re.IGNORECASE,
)
""" "Continue to knit 2 together until you come to the last": stitches of this row."""
MADE_LEANING = Sought(("m1-",), r"\b(?P<m>m1)-(?=[lrpk]\b)", re.IGNORECASE)
"""An increase and how it leans, "M1-L"."""

LEADS_TO_ROWS = Sought(
    ("rep",),
    r"(?P<lead>(?:^|(?<=[.\n]))[ ]*)(?P<told>(?:cont(?:inue)?|carry on|keep going|work|proceed)\.?"
    r"(?: (?:as (?:set|est\w*|before|above)|in (?:this|the same) (?:manner|way)|in patt(?:ern)?"
    r"(?: as (?:set|est\w*))?))+,?(?: and)? |(?:cont(?:inue)?|go on|carry on|keep on|proceed)\.?"
    r"(?: on)? to )(?=rep(?:eat)?\.? (?:(?:the )?last|these|those|rows?"
    r"|rnds?|rounds?)\b)",
    re.IGNORECASE | re.MULTILINE,
)
"""Before rows called back, words that only say so: "Cont as set, rep rows 3 and 4"."""


def everyday_words(text: str) -> str:
    """The text so put; any text goes in."""
    text = IN_A_WAY.sub(_with_needles, text)
    text = OF_TWO.sub(lambda m: m["cast"] + " " * len(m["of"]), text)
    text = LEADS_TO_ROWS.sub(lambda m: m["lead"] + " " * len(m["told"]), text)
    text = TILL_LEFT.sub(_to_last, text)
    text = FROM_STAR.sub(_from_star, text)
    text = MADE_LEANING.sub(lambda m: m["m"] + " ", KEEPS_DOING.sub(_done, text))
    text = WHO_WORKS.sub(lambda m: m["at"] + " " * len(m["who"]) + m["verb"], text)
    text = CHANGING_PART.sub(_spaces, text)
    text = FOLLOWING.sub(
        lambda m: f"{m['at']}Next {m['row']}: ".ljust(len(m.group())), text
    )
    text = ONLY_ROW.sub(lambda m: m["then"] + "rep ", text)
    if CHANGE_NAMED.search(text):
        text = ONCE_AGAIN.sub(
            lambda m: f"rep {m['kind']} {m['row']} once".ljust(len(m.group()))[: len(m.group())],
            text,
        )
    text = BOTH_ENDS_OF.sub(
        lambda m: f"next {int(m['a']) + int(m['b'])}{m['sts']}".ljust(len(m.group())), text
    )
    text = ACROSS_SO_MANY.sub(lambda m: m["verb"] + " " * len(m["across"]), text)
    text = OVER_INSTEP.sub(
        lambda m: f"{m['k']} {m['n']} instep sts".ljust(len(m.group()))[: len(m.group())], text
    )
    text = OF_THEM.sub(_spaces, LED_TO.sub(_spaces, BY_TURNS.sub(_goes_on, text)))
    text = WRAPPED.sub(lambda m: "w&t".ljust(len(m.group())), LEFT_TURNED.sub(_spaces, text))
    text = FABRIC_ROWS.sub(_rows_worked, text)
    text = PLAIN_ROWS.sub(lambda m: m["rows"] + " plain".ljust(len(m["plain"])), text)
    text = TIL.sub(lambda m: "until".ljust(len(m.group())), text)
    text = LIKE_THAT.sub(lambda m: "continue thus".ljust(len(m.group())), text)
    text = JUST_DONE.sub(_spaces, text)
    text = GOES_ON.sub(lambda m: "repeat".ljust(len(m.group())), text)
    text = MORE_FROM.sub(lambda m: f"{m['n']} sts ", text)
    text = THERE_ARE.sub(lambda m: "there are".ljust(len(m.group()))[: len(m.group())], text)
    text = LED_ROW.sub(lambda m: f"Next {m['row']}:".rjust(len(m.group())), text)
    return CHATTED.sub(_labelled, NEXT_OF.sub(_kind_left, text))


def _with_needles(found: re.Match[str]) -> str:
    return f"{found['lead']}{'With yarn'.ljust(len(found['way']) - 2)}, "


def _done(found: re.Match[str]) -> str:
    verb = "take" if found["verb"].lower() == "tak" else found["verb"]
    return f"{verb}{found['two']}".rjust(len(found.group()))


def _goes_on(found: re.Match[str]) -> str:
    return (found["again"] or "").ljust(len(found.group()))


def _spaces(found: re.Match[str]) -> str:
    return " " * len(found.group())


def _to_last(found: re.Match[str]) -> str:
    said = f"{found['lead']}to last {found['n']}" + (f" {found['sts']}" if found["sts"] else "")
    if found["before"]:
        said = f"{found['lead']}to {found['n']} st before m"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _from_star(found: re.Match[str]) -> str:
    said = f"{'rep' if len(found['lead']) < len('repeat from ') else 'repeat'} from *"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _rows_worked(found: re.Match[str]) -> str:
    """ "St-st 6 rows" as "Work 6 rows"."""
    said = f"{found['at']}Work {found['n']} {found['more']}{found['row']}"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _kind_left(found: re.Match[str]) -> str:
    if NOT_KINDS.match(found["kind"]):
        return found.group()
    said = f"{found['next'].rstrip()}{found['row']}{found['end']}"
    return said.ljust(len(found.group()))


def _labelled(found: re.Match[str]) -> str:
    return f"Next {found['row']}:".rjust(len(found.group()))
