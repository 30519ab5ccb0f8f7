"""Show: what is shown in, plain lines out, one fact a line; the one source for the screen and the
plain lines.
"""

from __future__ import annotations

from reader.wording.shown import Ear, Shown

_EARS = {
    Ear.LISTENING: "Listening.",
    Ear.PAUSED: "Paused.",
    Ear.MUTED: "Not listening. Keys work.",
    Ear.FINISHED: "Finished.",
}


def facts(shown: Shown) -> dict[str, str]:
    """Each fact as one line by its name, in the order it is read; facts that are not there are left
    out.

    The lines begin with the fact's own word, so that they make sense alone.
    """
    found = {
        "title": _fact("Pattern", shown.title),
        "ear": _EARS[shown.ear],
        "heard": _fact("Heard", shown.heard),
        "answer": _fact("Reader", shown.answer),
        "place": _fact("Place", shown.place),
        "notices": _facts("Soon", shown.notices),
        "trouble": _facts("Look out", shown.trouble),
        "step": _fact("Step", shown.step),
        "count": _fact("Count", shown.count),
        "question": _fact("Yes or no", shown.question),
    }
    return {name: line for name, line in found.items() if line}


def lines(shown: Shown) -> tuple[str, ...]:
    """All facts as plain lines."""
    return tuple(line for fact in facts(shown).values() for line in fact.splitlines())


def news(before: Shown | None, now: Shown) -> tuple[str, ...]:
    """The lines that are new or different since the moment before; all of them where there was
    none.
    """
    if before is None:
        return lines(now)
    known = set(lines(before))
    moved = before.step != now.step or before.place != now.place
    fresh = []
    for name, fact in facts(now).items():
        # A step worked twice in a row reads the same and is still news: the place has moved on.
        again = moved and name == "step"
        fresh += [line for line in fact.splitlines() if again or line not in known]
    return tuple(fresh)


def one_line(text: str) -> str:
    """The text with single spaces and without letters that would move a cursor or turn the line
    around.
    """
    visible = "".join(letter if letter.isprintable() else " " for letter in text)
    return " ".join(visible.split())


def help_lines(table: tuple[tuple[str, str, str], ...]) -> tuple[str, ...]:
    """One line a command: what it does, what to say, which key; from (purpose, phrase, key) with ""
    for what is missing.
    """
    return tuple(_help_line(*row) for row in table)


def _help_line(purpose: str, phrase: str, key: str) -> str:
    ways = [f'say "{phrase}"'] if phrase else []
    ways += [f"press {key}"] if key else []
    return f"{purpose}: {' or '.join(ways)}." if ways else f"{purpose}."


def _facts(name: str, texts: tuple[str, ...]) -> str:
    return "\n".join(line for line in (_fact(name, text) for text in texts) if line)


def _fact(name: str, words: str) -> str:
    """ "Step: single crochet in next 8." with a full stop where none stands; "" for no words."""
    plain = one_line(words)
    if not plain:
        return ""
    return f"{name}: {plain}" + ("" if plain[-1] in ".!?:" else ".")
