"""The words by which a line shows what it is: materials, finishing, stitches worked, the start of a
piece.
"""

from __future__ import annotations

import re

MATERIALS = re.compile(
    r"^\W*(materials?(?: (?:required|needed|used))?|supplies|you(?: will|'ll)? need|yarn|hook"
    r"|needles?|notions|gauge|tension"
    r"|sizes?|finished|measurements?"
    r"|(?:(?:crochet|knitting|stitch|list of) )?(?:abbreviations?|abbrevs?)|glossary"
    r"|stitch(?:es)?(?: used| guide| count| multiple| key)?"
    r"|special stitch(?:es)?|(?:pattern )?notes?|key|terms|skill level|difficulty|summary"
    r"|overview)\b"
    r"\s*(?:[:.—-]|$)",
    re.IGNORECASE,
)
_MAKE = (
    r"(?:plastic|steel|alumin\w+|metal|wooden|bone|afghan|tunisian|tapestry|cable|double[- ]pointed"
    r"|circular|straight|knitting|crochet)"
)
TOOLS = re.compile(
    rf"^\W*(?:(?:\d+|one|a)\s)?(?:(?:pr|pair|set)\b\.?\s(?:of\s)?)?(?:{_MAKE}\s){{1,3}}"
    r"(?:hooks?|needles?|pins?)\b(?=\W*$|\s(?:sizes?|nos?|numbers?|us|uk|or|each|[A-P\d])\b)"
    r"(?!.*\b(?:cast|work|rows?|rounds?|ch \d|k ?\d|p ?\d|knit \d|join|pick)\b)",
    re.IGNORECASE | re.DOTALL,
)
"""A hook, needles: what a list of materials has, though it may stand apart from the list."""
FOUNDED = re.compile(
    r"(?<=[.;])\s+(?=(?:(?:with|using)\s[^.;,:]{1,30},?\s)?"
    r"(?:(?:now\s)?(?:make|work|commence|begin|start)\b(?:\s(?:with|by|making|on|from|a|an|the"
    r"|foundation|starting|loose|chaining))*\s)?"
    r"(?:(?:ch|chain|cast\son)(?:\sof)?\s\d{1,3}\b(?!\s(?:stitches?\s|sts?\s)?(?:=|to\b|per\b))"
    r"|\d{1,3}\s(?:ch|chains?|chain\sst(?:itche)?s)\b\W*(?:$|\n\n|join\b|turn\b)))",
    re.IGNORECASE,
)
"""Where the work begins behind the materials, in their own paragraph."""
NOTES_FIRST = re.compile(
    r"^\W*(?:pattern|special|crochet) (?:notes?|stitch(?:es)?)\b", re.IGNORECASE
)
"""Before the first row, what the whole pattern is told by."""
FINISHING = re.compile(
    r"^\W*(finishing|assembly|to finish|making up|to make up|sew |weave in|block|steam|stuff"
    r"|fringe|tassel|trim |embroider|to assemble"
    r"|joining(?! (?:motif|square|flower|rosette|medallion|block|unit|diamond|circle)\b))\b",
    re.IGNORECASE,
)
_N = r"(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve)"
_MOTIFS = r"(?:motifs|squares|blocks|flowers|medallions|wheels|units|rosettes)"
_CLOTH = r"(?:linen|fabric|organdy|material|cloth|lining|piece|squares?|strips?|circles?)"
MADE_UP = re.compile(
    r"^\W*(?:pin (?:the |crocheted )?(?:edging|lace|piece|motif|corner|doily|\w+ (?:in place|to))\b"
    rf"|cut (?:\d|(?:the |a |your |out |away )*{_CLOTH}\b)"
    r"|if (?:napkins?|place mats?|mats|runners?) (?:\w+ ){0,3}(?:desired|wanted|wished)\b"
    rf"|(?:make|work) {_N} (?:more )?(?:rows|strips) of {_N} (?:more )?{_MOTIFS}\b"
    rf"|(?:make|work) {_N} ?(?:x|×|by) ?{_N} {_MOTIFS}\b"
    r"|(?:make|work) (?:the |a )?(?:necessary|required|desired) number of\b)[^*]*$",
    re.IGNORECASE,
)
"""What is cut, pinned or laid out when the pieces are there, with no list of stitches in it."""
BY_HAND = re.compile(
    r"^\W*(?:place|insert|attach|add|put(?: in)?|fix|glue|position|affix|secure)\s+(?:the |your "
    r"|both "
    r"|two |2 |safety |plastic |in )*(?:eyes?|nose|mouth|whiskers|button|beads?|wire|squeaker|bell"
    r"|face|ears?|arms?|legs?|tail|wings?)\b"
    r"|^\W*(?:the |your |both |safety )*(?:eyes?|nose|mouth|snout|ears?|arms?|legs?|tail|wings?)"
    r" (?:go|goes|sit|sits|belong|are (?:placed|sewn|set|fixed)|is (?:placed|sewn|set|fixed)"
    r"|should (?:be|go|sit)) (?:in |at |on )?(?:between|over|above|below|about|in|on|at)\b",
    re.IGNORECASE,
)
"""Something done by hand between rows: no stitches."""
MAKE = re.compile(
    r"[\(\[-]?\s*(?:(?:make|work|(?<=[(\[])(?:knit|crochet))\s+(\d+|one|two|three|four|five|six"
    r"|seven|eight|nine|ten"
    r"|twelve)\b|x\s*(\d+)|(\d+)\s*x)\s*(?:alike)?[\)\]]?",
    re.IGNORECASE,
)
RUN_IN = re.compile(
    r"^(?P<head>(?:[A-Z][A-Za-z0-9'&/ -]{1,38}"
    r"|(?!Row|Round|Rnd|ROW|ROUND|RND)[A-Z][A-Za-z'& -]{2,24} ?— ?[A-Z][A-Za-z0-9'& -]{2,24}"
    r"|\d(?:st|nd|rd|th|ST|ND|RD|TH) [A-Z][A-Z ]+)(?:\s*\([^)]{1,24}\))?)\s*:\s+(?=\S)"
    r"|^(?P<caps>(?!(?:ROW|ROUND|RND|NEXT|NOTE|WITH|JOIN|TURN|KNIT|PURL|CAST|BIND|SSK|REPEAT"
    r"|REP|GAUGE|TENSION|SIZES?|MATERIALS?)\b)"
    r"[A-Z]{3,}(?:[ &/'-]+[A-Z]{2,}){0,4})(?:\.\s+|\.?\s?(?:—|--)\s?)(?=[A-Z*(\d])"
    r"|^(?P<dash>(?!(?:Note|Then|Next|Now|Row|Round)\b)[A-Z][A-Za-z]{2,}(?: [A-Za-z]+){0,3})\s?\.?"
    r"\s?(?:—|--)\s*(?=(?:(?:With|Using|From)\b[^.;]{0,60}\b(?:cast on|(?:pick|k|knit) up)\b"
    r"|(?:(?:Work|Make|Knit|Follow)\s)?(?:(?:exactly|just|the)\s)*(?:[Ss]ame|[Aa]s|[Ll]ike|instruct\w+"
    r"|direct\w+)\s|Cast on|Set up|CO \d|Ch \d|Chain \d|Pick up|Take up)\b)"
)
"""A heading run in with its text, "BODY: With red, ch 4"; in capitals a full stop or a dash will
do, elsewhere a dash where the work begins behind it, "Front—Cast on 56".
"""
STITCHY = re.compile(
    r"\b(?:ch\d*|chains?|sc|dc|hdc|tr|s c|d c|sl st|ss|inc|dec|k\d*|p\d*|knit|purl|k2tog|yo|sts?"
    r"|stitch(?:es)?|cast(?:ing)? o(?:ff|n)|co ?\d+|bind(?:ing)? off|bo ?\d*|bo"
    r"|singles?|doubles?|trebles?|rnds?|rounds?|rows?"
    r"|increase\w*|decrease\w*|narrow|widen|pearl|purled|seam(?:ed)?|make one|take in|pick up"
    r"|work (?:straight|even|without)|long st|cont\w*\.? (?:to work )?(?:straight|even|without|in)"
    r"|work(?:ing)? (?:even |straight )?in (?:\w+ ){0,2}(?:rib\w*|pattern|garter|moss|stock\w+)"
    r"|every (?:second|other|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|\d)"
    r"|rep|repeat|sc\d\w*|htr|t[skpf]s\d?\w*|mr|mc(?= ?[(\[]?\d)|magic (?:ring|circle|loop)"
    r"|single crochets?"
    r"|double crochets?|loops?|picots?|\dsc"
    r"|\dinc|\ddec|(?:sc|hdc|dc|htr|tr)(?:inc|dec)s?)\b",
    re.IGNORECASE,
)
ACTION = re.compile(
    r"\b(?:cont(?:inue)?\b[^.]{0,90}\b(?:until|till)\b"
    r"|(?:proceed|go on|keep on|carry on)\b[^.]{0,80}\b(?:until|till)\b"
    r"|so on\b[^.]{0,20}\b(?:until|till)\b"
    r"|ch(?:ain)?\s+\w+|ch\d+|\d+ ?ch(?:ain)?s?\b"
    r"|(?:\d+|(?<=[a-z] )\d+\s?[(\[][\d ,:;/-]+[)\]]|each|next|in)\s+\w*\s*"
    r"(?:sc|dc|hdc|tr|st|sts|ch|s c|d c)\b"
    r"|(?:sc|dc|hdc|tr|htr|t[skpf]s)\b[^.]{0,12}\b(?:in|around|across|next|each)|k\s*\d+|p\s*\d+"
    r"|knit|purl|[kp]\d ?tog|sl ?\d|ss[kp]|cdd"
    r"|[kp] (?:plain|each row|every row|even|straight|on (?:the )?(?:right|wrong|rs|ws))\b"
    r"|rib\b(?=,? (?:with|until|for|to|as|in|on|all|each)\b)"
    r"|(?:garter|moss|seed|stocking|stockinette?|g st|st st|stitch)\b[^.;\d]{0,24}"
    r"\d+ (?:rows|rnds|rounds)"
    r"|\d+ (?:rows|rnds|rounds) (?:of |in )?(?:garter|moss|seed|stocking|stockinette?|st st|g st"
    r"|rib)"
    r"|rib \d+[^.;a-z]{0,6}(?:cm\b|ins?\b|inch)|(?:rib|patt(?:ern)?) \d+(?=,)"
    r"|rib (?:\d+|\w+) (?:rows|rounds)|do \w+ rows|do (?:(?:rows?|rounds?|rnds?) |r)\d"
    r"|(?:sc|dc|hdc|tr|htr|crochet) (?:for )?(?:\d+|two|three|four|five|six)"
    r" (?:rows?|rnds?|rounds?)"
    r"|alternat(?:e|ing) (?:between )?(?:rows?|rnds?|rounds?)"
    r"|cont(?:inue|inuing)?\b\.?(?= (?:straight|even|in|without|until|to work|as|on)\b)"
    r"|cast(?:ing)? o(?:n|ff)|cast \d+ stitches|co *\d|bind(?:ing)? off|bo\b|pick(?:ed|ing)? up"
    r"|rep(?:eat)?\b"
    r"|add \d+ (?:sts|stitches)|(?:set|put) (?:up|on) [\w-]+ (?:loops|stitches|sts)"
    r"|work(?:ing)?\b|inc\b"
    r"|tak(?:e|ing) in\b|make (?:one|1|a st)\b|widen\b"
    r"|dec\b|increase\b|decrease\b|narrow\b|pearl\b|seam (?:\d|two|one|a |three|four|to\b|all)"
    r"|(?:i|we|you) (?:did|do|made|make|worked|work) [\w-]+ of (?:them|those|these)"
    r"|m[cr] ?[(\[]\d+[)\]]$|m[cr] \d+\b|\d+ sc (?:in )?m[cr]\b"
    r"|sl st|make a chain|doubles?\b|trebles?\b|magic ring|single crochet|double crochet|fsc)",
    re.IGNORECASE,
)


NO_HEADING = re.compile(
    r"(?:rep|repeat|next|note|optional|alternat(?:e|ive|ively)|tip|hint|row|rnd|round|with|c\d|t\d"
    r"|foundation|inc|dec|set|base|last"
    r"|cast|bind|pick|(?:begin|start) (?:as|like|same))\b"
    r"|(?:work|knit|purl|do|make) (?:\w+ ){0,4}(?:rows?|rnds?|rounds?)\b",
    re.IGNORECASE,
)
"""Words with a colon behind them that head no part."""
MEANING = re.compile(r"[A-Za-z][\w&/]{0,10}(?: [\w&]{1,6})? - [A-Z][a-z]")
"""A word of the list of abbreviations: "Rd - Round"."""
BEGINS = re.compile(
    r"(?:(?:with|using) [\w' -]{2,40}?,? )?(?:co|cast on|ch|chain|fsc|make a (?:magic"
    r"|chain))\b(?: \d|.*ring)",
    re.IGNORECASE,
)
"""A line that starts a piece of work."""
