"""The words of rules over rows, as patterns; white space is single and numbers are in figures."""

from __future__ import annotations

import re

_N = r"(\d+)(?:st|nd|rd|th|d)?"
_ROWS = r"(?:rows?|rnds?|rounds?|rds?|r(?=\d))"
_ONES = (
    r"(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen"
    r"|twenty)"
)

ROW_NAMED = re.compile(rf"(?<!a){_ROWS}|needle|pin", re.IGNORECASE)
"""Without one of these no row is named; in old books a needle is one."""
_UNTIL = r"\b(?:until|till|til)\b"
_IN_INCHES = r"\binch(?:es)?\b|[\d½¼¾⅓⅔⅛⅜⅝⅞] ?ins?\b|[\"″]|\bcms?\b"
OF_LENGTH = re.compile(rf"{_IN_INCHES}|\b(?:measures?|long|deep|desired|required)\b", re.IGNORECASE)
_AGAIN = r"(?:rep(?:eat)?(?:ing)?|work|knit|do)"
REPEAT_LAST = re.compile(
    rf"(?:\b{_AGAIN}\s+|^\W*(?=(?:the|this|that|these|those)\s[^.;]{{0,24}}{_ROWS}\s(?:\d+ )?"
    rf"(?:more |over )?(?:times|again|twice|once)))"
    rf"(?:the(?=\s+\d+\s+{_ROWS})|(?:the\s+)?(?:last|these|those|this|that|prev(?:ious)?|preceding|foregoing"
    r"|above|both(?:\s+of\s+these)?)(?:\s+(?:last|same|previous|preceding|foregoing|above))?)\s*"
    rf"(?:(\d+)|{_ONES})?\s*(?:(?:pattern|patt|dec\w*|inc\w*)\s+)?{_ROWS}",
    re.IGNORECASE,
)
REPEAT_CHANGE = re.compile(
    rf"\b(?:rep(?:eat)?(?:ing)?|work(?:ing)?)\s+(?:the\s+|this\s+|these\s+|last\s+|above\s+)*"
    rf"(?:(?P<way>inc|dec|shaping)\w*\.?\s+{_ROWS}\b|(?=(?:on |in )?every\b))(?P<tail>[^.;]*)",
    re.IGNORECASE,
)
"""The row that increases or decreases, again and again at a pace."""
REPEAT_THIS = re.compile(
    r"\brep(?:eat)?\s+for\s+(?:the next\s+|another\s+)?(?=\d+ (?:more )?(?:rows|rnds|rounds)\b)"
    r"|\brep(?:eat(?:ing)?)?\s+(?:this|that)(?: (?:row|round|rnd)(?= (?:until|till|til)\b))?"
    r"(?!\s+(?:until|till|to)\s+(?:the\s+|end\s+)?(?:of\s+)?(?:the\s+)?"
    r"(?:row|round|end|rnd)\b)(?=\s+(?:until|till|til|\d|once|twice|three|four|five|six))"
    rf"(?!\s+\w+\s+{_ROWS})",
    re.IGNORECASE,
)
_OFTEN = (
    r"(?:again|once|twice|thrice|\d+ (?:(?:more|additional|further|extra) )?times|\d+ ?x more"
    r"|for pattern"
    r"|(?:until|till|til) (?:you(?:'ve)? |there(?:'s| are| is) |have |only |just )*\d+ "
    r"(?:sts?|stitches|sc|dc|hdc|tr|rem\w*|are left|left))\b"
)
REPEAT_ROWS = re.compile(
    r"(?:\b(?:(?:(?:keep|carry|go|continue)(?: on| to| by)? )?rep(?:eat)?(?:ing)?"
    rf"|alternat(?:e|ing)(?: between)?(?=\s+(?:the\s+)?(?:{_ROWS}\s*\d+\s*(?:-|—|to|and|&|,)|\d)))"
    r"|^\W*(?:and |then )+(?:work|rep(?:eat)?)?"
    rf"|(?:^|(?<=[.;] ))(?:work|do|knit)(?= (?!.{{0,50}}\bchart)[^.;]{{3,60}}? {_OFTEN}))\s*"
    r"(?:the\s+)?"
    rf"(?P<from>from\s+)?(?:the\s+)?(?:{_ROWS}\s*(?P<a>\d+)(?:(?:\s*,\s*\d+)*\s*(?:-|—|to"
    rf"|through|thru|&|,?\s*and)\s*(?:{_ROWS}\s*)?(?P<b>\d+)(?!\d| ?st))?|(?P<c>\d+)"
    rf"(?:st|[nr]?d|th)(?:\s*{_ROWS})?(?:\s*(?:,\s*and|,|-|to|through|thru|and|&)\s*(?:the )?"
    rf"(?:\d+(?:st|[nr]d|th)\s*(?:,\s*and|,|and)\s*)*(?P<d>\d+)(?:st|[nr]d|th))?\s*{_ROWS})",
    re.IGNORECASE,
)
UP_TO_ROW = re.compile(
    rf"\brep(?:eat)?\s+(?:from (?:the )?(?:beginning|beg|1st {_ROWS})\s+)?(?:up\s+)?to\s+"
    rf"(?:the\s+)?(\d+)(?:st|nd|rd|th|d)\s+{_ROWS}",
    re.IGNORECASE,
)
_NO_NUMBER_OF = r"(?!\d|\s*(?:extra|more|fewer|less|sts?|stitches|sc|dc|hdc|tr|times)\b)"
"""Behind a number: it is one of rows, not of stitches, "as row 3, 2 more sts each row"."""
_LIST = r"(?:\s*(?:,|-|&|and|to|through)\s*(?:the\s+)?"
_BUT = r"(?:but|with|having|except|only|making|putting)\b"
SAME_AS = re.compile(
    rf"^\W*(?:(?:attach|join|with|using|change to|carry|behind|still|always)\b"
    rf"(?:[^.;:]|\b(?:dk|lt|med)\.)*?[, ]\s*(?:and\s+)?)?(?:work\s+|working\s+)?(?:the\s+)?"
    rf"(?:(?:same|exactly)\s+as|as|like|follow "
    rf"directions for|repeat|rep|just repeat)\s+(?:for\s+|in\s+)?(?:the\s+)?(?:(?P<last>(?:last"
    rf"|previous|preceding|prev)\s+{_ROWS}|(?:last|before)(?=\s*(?:[.,;]|$)|\s+{_BUT}))"
    rf"|(?P<a>{_N}{_LIST}{_N})*)\s*(?:{_ROWS}|(?=[.,;:=(\[]|$|-\s|once more|again|{_BUT}))"
    rf"|{_ROWS}\s*(?P<b>\d+{_LIST}\d+{_NO_NUMBER_OF})*))\b(?P<rest>.*)$",
    re.IGNORECASE | re.DOTALL,
)
THE_SAME = re.compile(
    r"\W*(?:the\s+)?same(?:\s+(?:again|as before|once more))?\s*(?:[.;]|$)", re.IGNORECASE
)
"""A row that is the last one again."""
TIMES = re.compile(
    rf"(?:(\d+)|{_ONES})\s*(?:(?:more|additional|further|extra)\s*)?times?\b|\b(once|twice|thrice)\b"
    r"|\bx ?(\d{1,3})\b(?! ?[\dx])|\((?P<x>\d{1,2})x\)"
    r"|\b(?P<y>\d{1,2}) ?x(?= (?:more|in all|total)\b| ?(?:[.,;)]|$))",
    re.IGNORECASE,
)
UNTIL = re.compile(
    r"\b(?:until|till|til|to)\s+(?:(?:there(?:\s+(?:are|is|remains?|will be|shall be)|'s)"
    r"|i(?:\s+have|'ve|\s+reach)|you(?:\s+(?:have|get to|reach|are down to|are back to|are at"
    r"|only have)|'ve"
    r"|'re (?:down|back) to)"
    r"|got|it\s+has"
    r"|but|only|just|all but|an? total of|in all)\s+)*(\d+)\s*(?:\([\d,\s]"
    r"+\)\s*)?(?:(?:stitches|sts?|sc|dc|doubles|k|loops)\b)?\s*(?:on needles?)?\s*"
    r"(?:rem(?:ain)?s?|are left|left)?",
    re.IGNORECASE,
)
IN_ALL = re.compile(
    rf"{_UNTIL}.{{0,200}}?\b(\d+)\s*(?:sts?\b|stitches|loops)?\s*(?:in all|altogether)",
    re.IGNORECASE,
)
LEFT = re.compile(
    rf"{_UNTIL}[^.;]{{0,160}}?\b(\d+)\s*(?:sts?\b|stitches"
    r"|loops)?\s*(?:only\s+)?(?:rem(?:ain(?:ing)?)?s?\b"
    r"|are left|left|on (?:the )?(?:needles?|pins?))(?! (?:up)?on (?:each|every))",
    re.IGNORECASE,
)
"""A number that is left behind other words: "until all are worked in and 16 remain"."""
_AT = (
    r"(?:^\W*|(?<=[.,;:)\]]\s)|(?<=\band\s)|(?<=\bthen\s)"
    r"|(?:(?<=\d\ssts\s)|(?<=\d\sst\s))(?=(?:work|knit|purl)\b))"
)
"""Where a sentence may begin."""
_FABRIC = (
    r"(?:garter|stockinette|stockinet|stocking|st st|s\.? ?s\b|stst|seed|moss"
    r"|rev(?:erse)?\b[^.;,]{0,20}"
    r"|(?:back and forth|plain|even|straight)?,? ?(?:without|no) (?:any )?(?:widen\w*|narrow\w*"
    r"|increas\w*|decreas\w*|shaping)"
    r"|sts? as they appear"
    r"|(?:(?!\d)\w+ ){0,3}rib\w*|k ?1,? ?p ?1|k ?2,? ?p ?2|(?:the )?(?:established )?patt(?:ern)?)"
)
BY_KIND = re.compile(
    r"(?:k|knit|p|purl|pearl|sl|slip|work)(?: all)?(?: the)?(?: (?!first|last|next|rem)[a-z]+){0,3}"
    r" (?:sts?|stitches|ones|others|loops)(?: (?:wyi[bf]|purlwise|knitwise|pwise|kwise|as they \w+"
    r"|of the last row|as before|again|plain))*",
    re.IGNORECASE,
)
"""A part of a row that says what is done to all stitches of a kind: "knit the cream sts"."""
NOT_STITCHES = re.compile(
    r"\s*(?:in\b(?! (?:each|every|all|(?:(?:the|this|your) )?(?:rnd|round|row|whole))\b)|inch|cm"
    r"|\"|mm|(?:\w+ )?(?:rows|rounds|rnds|ridges|ribs|(?:open |rows of )?holes|eyelets|buttonholes"
    r"|repeats|patterns|scallops|motifs|blocks|times|points|stripes|bands|tiers|layers|colou?rs"
    r"|yards?|yds?|met(?:er|re)s?|skeins?|balls?|grams?|ounces?|oz|squares|rings|petals|shells|fans|spokes|sections|pieces|inc\w*|dec\w*)\b"
    r"|(?:are |lie )?between (?:the |each |every |your |both |these )?(?:two |2 )?"
    r"(?:m\b|markers?|inc\w*|dec\w*|widen\w*|narrow\w*"
    r"|overs?\b|points?\b)|(?:in|for) (?:the )?(?:thumb|gusset)"
    r"|(?:thumb|gusset) (?:gusset )?(?:sts|stitches)"
    r"|(?:on|at|in) (?:each|either|every|one|the (?!needle)\w+|both) (?:\w+ ){0,2}"
    r"(?:needles?|pins?)\b)",
    re.IGNORECASE,
)
"""What a number behind "until" may count instead of stitches."""
UNTIL_LABEL = re.compile(
    rf"\b(?:until|till|through|to)\b[^.;]{{0,120}}?\b(\d+)(?:st|nd|rd|th|d)\s+{_ROWS}",
    re.IGNORECASE,
)
"""A numbered row that work goes on to."""
UNTIL_ROW = re.compile(
    rf"{_UNTIL}[^.]*?\b(\d+)\s+{_ROWS}\b|\((\d+)\s+{_ROWS}\)", re.IGNORECASE
)
ALTERNATELY = re.compile(
    rf"{_AT}(?:(?:again|with|using)\b[^,.;\d]{{0,30}}?)?(?:work|knit|k|purl|p|pearl) "
    rf"(?:\d+ {_ROWS}|forward|across)\b[^.;]{{0,80}}?\b(?:alternat\w+|back),?"
    rf" for (?P<rows>\d+) {_ROWS}",
    re.IGNORECASE,
)
"""Knit and purl rows turn about, so many in all."""
ODD_AND_EVEN = re.compile(
    rf"\b(?:continue|cont|work|repeat)\b[^;]{{0,160}}?\bodd {_ROWS} (?:like|as|same as)\s+"
    r"(?:the )?(\d+)\w*"
    rf"[^;]{{0,160}}?\beven {_ROWS} (?:like|as|same as)\s+(?:the )?(\d+)",
    re.IGNORECASE,
)
_ROUND_IT = r"(?<=\bround) (?:(?:the|its|this|first|second|other|both|left|right|back|front) )*" \
    r"(?:legs?|arms?|neck|body|head|opening|edge|holes?|armholes?|chains?|thumb|cord)\b"
"""Behind "12 round": what it is worked round, and no rounds."""
EVEN = re.compile(
    rf"{_AT}(?:(?:then|again|now)\s+)*(?:(?:with|using|in)\s+(?:\w+\s+){{1,3}}?)?"
    r"(?:(?:beg\w*|start\w*)\s+with\s+(?:[^,.;]{2,20},|an?\s+\w+\s+(?:row|rnd|round)\b)\s*)?"
    r"(?:work|do(?! not)"
    r"|knit(?:ting(?= \w+ (?:plain )?rows))?|k|purl|pearl|seam|rib|p|crochet|sc|dc|hdc"
    r"|make|cont(?:inue)?|rep(?:eat)?(?= \w+ (?:more )?rows (?:of|in) (?:the )?patt)"
    r"|(?:finish(?: off)?|end|follow|start|begin) with|add)\b"
    r"(?:(?!(?<!\bwithout )(?<!\bno )(?<!\bany )\b(?:inc|dec)|[.:;\d]|\beach\b"
    rf"|\bnext\b(?! (?:\d+|{_ONES[1:-1]}) (?:more )?{_ROWS}\b))[^.;])"
    r"{0,60}?"
    r"(?:in k ?\d,? ?p ?\d [^.;\d]{0,20})?"
    rf"(?<!\bof )\b(?:(\d+)|{_ONES})\s+(?:(?:more|plain|purl|pearl|knit|even|straight|st st|garter"
    rf"|rib|further|additional|extra)\s+)*{_ROWS}\b(?!{_ROUND_IT})(?!-? ?ends?\b)(?P<rest>[^.;]*)",
    re.IGNORECASE,
)
RIDGES = re.compile(
    rf"{_AT}(?:(?:then|again|now)\s+)*(?:knit|k|work|do|make|cont(?:inue)?)\b[^.;:\d]{{0,40}}?"
    r"\b(?P<n>\d+)\s+(?:more\s+)?(?:(?:garter|full)\s+)?(?:(?:st|stitch)\s+)?ridges?\b",
    re.IGNORECASE,
)
"""Ridges of garter stitch, each of two rows."""
ROWS_UNDERSTOOD = re.compile(
    r"\b(?:of|in|on|at) (?:each|every)(?: (?:other|alternate|alt|second|2nd|third|3rd|fourth|4th))?"
    r"(?: (?:one|1))?(?=\s*(?:[,.;)]|$|(?:at|for|on|until|till|nearest)\b))",
    re.IGNORECASE,
)
"""Behind so many rows, "at the beginning of each", "every other one": of these rows."""
IN_EVERY_STITCH = re.compile(
    r"\b(?:inc|dec)\w*\.? (?:1 st |1 |once )?in(?:to)? (?:every|each) (?:st|stitch)\b",
    re.IGNORECASE,
)
"""A row whose every stitch is changed."""
FOR_ROWS = re.compile(rf"\bfor (?:the )?(?:next )?(\d+) (?:more )?{_ROWS}\b", re.IGNORECASE)
"""How many rows a change goes on for."""
_NO_SHAPE = r"(?:inc|dec|narrow|widen|shap)\w*"
EVEN_ROUND = re.compile(
    rf"{_AT}(?:(?:and\s+)?then\s+)?(?:(\d+)|{_ONES})\s+(?:(?:more\s+)?plain\s+{_ROWS}\b"
    rf"|{_ROWS}\s+(?:even|plain|straight|(?:sc|hdc|dc|htr|tr)(?=\s*(?:[.,;(]|$))"
    rf"(?:,? (?:with )?(?:no|without) (?:any )?{_NO_SHAPE})?|of\s+(?:sc|dc|garter|st st"
    r"|stockinette)|(?:in|with|of)\s+[A-Z][\w ]{1,18}(?=[,.;]|$)))",
    re.IGNORECASE,
)
_RIB = r"(?:k(?:nit)?|p(?:url)?|pearl|seam) ?\d+"
EVEN_SAID = re.compile(
    rf"{_AT}(?:(?:then|now|next|and)\s+)*(?:(?:even|straight|plain|(?:no|without) {_NO_SHAPE})"
    rf"(?: at all)?,? for (?:the next )?(?P<rows>\d+) (?:more )?{_ROWS}"
    rf"|(?:(?:the )?next )?(?P<more>\d+) (?:more )?{_ROWS} (?:(?:are |is |of )?(?:worked )?"
    rf"(?:even|plain|straight)|(?:without|with no) (?:any )?{_NO_SHAPE}))\b",
    re.IGNORECASE,
)
"""Rows without shaping, with no verb: "no increases for 6 rounds", "next 4 rounds plain"."""
RIB_FOR = re.compile(
    rf"{_AT}(?:(?:then|now)\s+)?(?:(?:work|rib|do|knit|cont(?:inue|\.)?)\s+)?(?:even\s+)?(?:in\s+)?"
    rf"\(?{_RIB}[,/]? ?(?:and )?{_RIB}\)?"
    rf"(?:,? ?(?:in|of) )?\s*(?:rib\w*)?,? (?:for|over) (?:the |a |an )?"
    rf"(?:next |following |another |further |additional )?(?P<rows>\d+) "
    rf"(?:more |further |additional )?{_ROWS}\b"
    r"(?: without shaping| even)?",
    re.IGNORECASE,
)
"""A rib spelled out once, for so many rows."""
TO_AND_FRO_FOR = re.compile(
    rf"{_AT}(?:knit|work|purl|pearl|rib|cont(?:inue)?|go)\b[^.;]{{0,60}}?"
    r"\b(?:back(?:wards?)? and for(?:wards?|th)|to and fro)\b"
    r"(?:(?!\b(?:add|inc|dec|widen|narrow|tak|mak))[^.;\d]|1(?= row)){0,60}?"
    rf"\b(?:for|until|till) (?P<rows>\d+) {_ROWS}\b",
    re.IGNORECASE,
)
"""Rows worked to and fro, so many."""
BY_TURNS_FOR = re.compile(
    rf"{_AT}(?:then )?(?:knit|k|purl|p|pearl|seam|rib)\b"
    r"(?: |,|\d|plain\b|purl\b|pearl\b|seam\b|and\b|knit\b|k\b|p\b"
    r"|stitch(?:es)?\b|sts?\b|alternate(?:ly)?\b|other\b|rows?\b|a\b|next\b|the\b|back\b)*"
    r"\b(?:for|(?:until|till)(?: there are| you have)?(?: in all)?) "
    rf"(?P<rows>\d+) {_ROWS}\b(?: (?:are|have been) (?:done|knit|knitted|worked|made|completed))?",
    re.IGNORECASE,
)
"""Plain and purl stitches by turns, for so many rows."""
KEEP_ON = re.compile(
    rf"\b(?:keep (?:doing that|doing this|going|on)|carry on|do that|do the same|go on)\b[^.;]*?"
    rf"{_UNTIL}(?:(?!\blast\b)[^.;(])*?\b(?P<row>\d+)\s+{_ROWS}\b[^.;]*",
    re.IGNORECASE,
)
"""Said in place of "repeat the last row until there are 18"."""
DID_SO_MANY = re.compile(
    rf"(?:^|(?<=[.,;:] ))[^.;]*?\bplain {_ROWS}\b[^.]*\.?\s+(?:i|we|you) (?:did|do|made|make|work"
    rf"|worked)"
    r" (?P<rows>\d+) of (?:them|those|these)\b",
    re.IGNORECASE,
)
"""Plain rows, and then how many."""
PLAIN_ROWS = re.compile(rf"\bplain {_ROWS}\b", re.IGNORECASE)
"""What these words need to be looked for: they may begin at every comma of a long row."""
LIKE_FIRST = re.compile(
    rf"\b(?:work|make|do)?\s*(?:the )?(?:(?:first|1st) )?(?P<n>\d+) {_ROWS} (?:like|as|same as"
    rf"|the same as)"
    rf" (?:for )?(?:the )?(?:first|1st) (?:\d+ )?{_ROWS}(?: of (?:the )?(?P<part>[a-z ]{{3,24}}))?",
    re.IGNORECASE,
)
"""The first rows of another part, again."""
LIKE_LAST = re.compile(
    r"\s*,?\s*(?:(?:worked\s+)?(?:the\s+)?same\b|(?:in (?:the )?same (?:way|manner))|like the"
    r"|as the (?:last|previous)|as before)",
    re.IGNORECASE,
)
"""Behind a number of rows, these say that they are the last row again."""
CHART = re.compile(
    rf"{_AT}?[^.;]*?\b(?:work|knit|follow|purl)\w*\s+(?:the\s+)?(?:from\s+)?chart\b[^.;]*?{_ROWS}"
    rf"\s*(\d+)\s*(?:-|to|through)\s*(\d+)",
    re.IGNORECASE,
)
"""Rows that only a chart shows: their count is taken to stay."""
FABRIC = re.compile(
    rf"^[^\w*]*(?:(?:beg\w*|start\w*)\s+with\s+(?:an?\s+)?\w+(?: \w+)?\s+row,?\s*)?(?:work"
    rf"(?:ing)?\s+|cont(?:inue)?\s+)?(?:even\s+|straight\s+)?(?:in\s+)?{_FABRIC}"
    r"(?:\s+(?:st|stitch|ribbing))?\b[^.\d*]*(?:\([^)*]*\))?[^.\d*]*\.?\s*$",
    re.IGNORECASE,
)
"""A whole row in a fabric that is named and not spelled out."""
WORK_EVEN = re.compile(
    r"^\W*(?:(?:and|now|then)\s+)*(?:work(?:ing)?|cont(?:inue)?|crochet)\.?\s+(?:even|straight|plain)\b"
    r"(?! (?:around|across|to)\b)(?:\s+(?:in|with)\s+(?:[a-z]+\s?){1,3}?)?"
    r"(?:\s+(?:on|over|across)\s+(?:the |these |those |all |remaining |rem )*(?P<goal>\d+)\s*"
    r"(?:[a-z]+\s?){0,2})?(?=\s*(?:[.;(]|,\s*(?:join|turn|ch \d|cut|break|fasten)|$))",
    re.IGNORECASE,
)
"""A whole row as the one before it, on so many stitches where they are told."""
SPELLED_OUT = re.compile(
    r"\b(?:(?:in|into) (?:the )?(?:next|first|same|last|each|every)"
    r"|(?:cast|bind|bound)(?:ing)? (?:off|on)|bo|co|b/o|(?:to|until|till) (?:the )?last"
    r"|kfb|pfb|kf&b|ssk|skp|m1|yo)\b",
    re.IGNORECASE,
)
_K_PLAIN = (
    r"[kp](?= (?:plain|each row|every row|across and|even|straight|in (?:rib|patt)"
    r"|on (?:the )?(?:right|wrong|rs|ws))\b)"
)
MEASURE = re.compile(
    rf"{_AT}(?:(?:change|switch|with|using)\b(?:(?!\bpick|\bcast|\bbind|\d sts?\b)[^.;])*[.,;]\s*"
    r"|(?:with|using|on)\s+(?:[a-z\d.#]+\s+){1,4}needles?\s+)?(?:then\s+|now\s+)?(?:work"
    rf"|cont(?:inue|inuing|\.)?|knit|purl|crochet|keep|rib|{_K_PLAIN}|k ?\d+,? ?p "
    rf"?\d+|(?:carry|go) on|proceed)\b(?P<how>[^.;]*?)\b(?:until|till|to|for)\b[^.;]*?"
    rf"(?:\bmeasures?\b|{_IN_INCHES}"
    rf"|\blong\b(?! (?:s ?c|d ?c|h ?d ?c|tr|sts?|stitch|singles?|doubles?|trebles?)\b)"
    r"|\bdeep\b|\bdesired\b|\brequired\b|\bas long as\b)(?P<rest>[^.;]*)",
    re.IGNORECASE,
)
"""Work that goes on until a measure is reached: as many rows as it takes, the count unchanged."""
SHAPED = re.compile(
    r"\b(?:(?<!without )(?<!no )(?:inc(?!h)|dec|shap|widen|narrow)|adding \d|rnds? \d|rows? \d"
    r"|pick up|cast o|bind off|bo \d|\d ?tog)", re.IGNORECASE
)
AS_IT_GREW = re.compile(
    r"\b(?:continue|continuing|cont|proceed|repeat|go on)\b\.? (?:to work |working )?"
    r"(?:in (?:this|the same|same) (?:manner|way)|thus|so)\b",
    re.IGNORECASE,
)
"""Rows that change as those before them did, though only a measure says how many."""
OPEN_END = re.compile(
    rf"{_UNTIL}|\bfor\b[^.;]*?(?:{_IN_INCHES})",
    re.IGNORECASE,
)
"""How often a change is worked is told by something else than a number of rows or stitches."""
GOES_ON = re.compile(
    r"\b(?:continue|continuing|cont|keep|proceed|(?:go(?:ing)?|carry(?:ing)?) on"
    r"(?= like| in (?:this|the same)| thus| so\b| as\b| dec| inc)"
    r"|(?:work|knit|do)(?:ing)?(?= (?:on )?(?:in (?:this|the same|same|like) (?:manner|way)|thus"
    r"|so)\b[^.;*]{0,40} (?:until|till)\b)"
    r"|(?:dec|inc)\w*\.?"
    r"(?= (?:in (?:this|the same|same) (?:manner|way)|thus|so|as before) (?:until|till)))"
    r"\b[^.]*?\b"
    r"(?:inc|dec|having|adding|with|working(?! (?:even|straight|plain|around|across|without)\b)"
    r"|skipping|in this (?:manner|way)|in (?:the )?same (?:manner|way)|until|till)"
    r"|^\W*(?:and |then )*rep(?:eat)?\.?(?= (?:until|till)\b)[^.]*?\b(?:until|till)"
    r"|^\W*(?:and )?so (?:on|forth)\b[^.]*?\b(?:until|till)",
    re.IGNORECASE,
)
"""Rows go on as they went before, or as the words say."""
PICKS_UP = re.compile(r"\w+\.? to (?:pick|take|cast|bind|slip)\b", re.IGNORECASE)
"""What is done next, not rows that go on."""
THEN = re.compile(
    r",?\s+(?=(?:and )?(?:then|after that)\b[^.;]{0,120}\b(?:every|each|next|foll\w*)\b)"
    r"|(?<=rows),?\s+(?=(?:and )?(?:(?:on|of|in) )?(?:the )?foll\w* (?:\d|alt|other|every))"
    r"|(?:(?<=times)|(?<=twice)|(?<=once)),?\s+(?=(?:and )?(?:every\b|(?:inc|dec)\w* \d+ st"
    r"[^.;]{0,60}\b(?:every|each|next|foll\w*)\b))"
    r"|(?<=[a-z]{3})[.;]\s+(?=(?:(?:then|now|next),? )?(?:(?:work|cont|keep|proceed)\w*\.?"
    r"[^.;,\d]{0,40},? )?(?:and )?(?:inc|dec)\w*\.? \d+ st[^.;]{0,60}"
    r"\b(?:every|each|next|foll\w*)\b)",
    re.IGNORECASE,
)
"""Where a change goes on at another pace, or another begins."""
MORE = re.compile(
    r"\b(?:(?:more|further|additional|extra) times|(?:times|twice|once|\d ?x) more)\b", re.I
)
NEXT_ROW = re.compile(r"\bnext (?:\w+ )?(?:row|rnd|round)", re.IGNORECASE)
VARIED = re.compile(
    r"\b(?:\d+|one) (?:\w+ ){0,2}?(?:fewer|less|more)\b[^.]*\b(?:before|between)\b", re.IGNORECASE
)
FEWER_LOOPS = re.compile(
    r"\b(?:having|with|working) (?:always )?(?:one|1) (?:less |fewer )?(?:ch[- ]?\d+ |\d+[- ]?ch )?"
    r"(?:loop|lp|sp|space|arch)(?:s|es)?"
    r" (?:less |fewer )?(?:on|in|over|across|at|for) (?:top of )?(?:each|every|the|all)\b",
    re.IGNORECASE,
)
"""Pineapples: each time one loop less in each."""
PER_SECTION = re.compile(
    r"\b\d+\s+(?:\w+ ){0,3}?(?:in|for|to|on|of|at|between) (?:each|every|the|all)\b[^.;]{0,40}?\b"
    r"(?:sections?|segments?|gores?|divisions?|wedges?|parts?|points?|sides?|inc\w*|widen\w*"
    r"|groups?|petals?|lea(?:f|ves)|scallops?|spokes?|fans?|blades?)\b",
    re.IGNORECASE,
)
"""A number of stitches that each part of the round is to have."""
BETWEEN_INCS = re.compile(
    r"\b\d+\s+(?:\w+ ){0,3}?(?:between|before)\s+(?:the |each |every )?(?:inc|dec|widen|narrow)",
    re.IGNORECASE,
)
"""The row that is quoted with its increases farther apart."""
CHANGES_COUNT = re.compile(
    r"\d|\b(?:inc|dec|tog|over|make|m1|yo|miss|skip|sk\b|omit|leav|more|less|fewer|times|between"
    r"|end"
    r"|in place|in each|one|two|three|ch\b|chain)",
    re.IGNORECASE,
)
"""A difference with none of these words in it changes no count: "but knit instead of purl"."""
PLAIN_DIFFERENCE = re.compile(
    r"\b(?:but|except|only|omit\w*|instead)\b(?! (?:(?:with|making|having|of) )?(?:ch(?:ain)? \d"
    r"|\d+ ch)"
    r"| (?:work(?:ing)? |taking )?(?:up )?(?:through|in(?:to)?|under) (?:the )?(?:both|back|front)"
    r"| (?:with|in|using) [a-z]+(?: [a-z])?\s*[.,;])",
    re.IGNORECASE,
)
"""A difference that changes the stitches; other chains, loops or colours don't."""
