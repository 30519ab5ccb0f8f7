"""A seeded maker who works, asks, errs, interrupts, goes away and comes back.

The maker knows the paper (the spots) and the yarn in hand (`at`), and of the program only what it
says. Where an answer does not fit, the maker asks where the program is and brings it back by word.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable

from tests.benchmarks.evening_oracle import (
    GRAINS,
    Spot,
    backward,
    holds,
    in_words,
    onward,
)
from tests.benchmarks.evening_room import Room

SECONDS_A_STITCH = (1.4, 2.6)
"""Slowest and fastest hands of a seed; a reported range for single crochet is 12 to 25 a minute
(from memory, not checked), so this is brisk: more commands an hour."""
TRIES = 14
NOT_HEARD_AGAIN_S = 3.5
"""How long the maker waits before saying it again. Our own choice."""


class Maker:
    """One maker's evening in a room."""

    def __init__(self, room: Room, chance: random.Random) -> None:
        self.room, self.chance = room, chance
        self.at = 0
        self.grain = GRAINS[0]
        self.pace_s = chance.uniform(*SECONDS_A_STITCH)
        self.asked = 0
        room.hear_out()

    @property
    def spot(self) -> Spot:
        """The spot in hand."""
        return self.room.spots[self.at]

    def turn(self) -> None:
        """A step worked, then one thing asked or done."""
        if self.chance.random() < 0.7:
            self.room.hear_out()
        self.work()
        deeds: tuple[tuple[float, Callable[[], None]], ...] = (
            (0.30, self.forward),
            (0.13, self.ask_how_many),
            (0.13, lambda: self.question("where am i", self.where_fits)),
            (0.10, lambda: self.question("again", self.still_here)),
            (0.06, lambda: self.question("what's after this", comes_after)),
            (0.05, lambda: self.question("whole row", self.still_here)),
            (0.05, self.whole_row_worked),
            (0.03, self.one_back),
            (0.06, self.hasty),
            (0.02, self.rip),
            (0.02, self.checked),
            (0.02, self.counted),
            (0.02, self.more),
            (0.015, self.rest),
            (0.015, self.leave),
            (0.01, self.steps_changed),
            (0.005, self.spoken_film),
        )
        lot = self.chance.random() * sum(share for share, _ in deeds)
        for share, deed in deeds:
            lot -= share
            if lot < 0:
                return deed()
        return None

    def work(self) -> None:
        """The hands are busy with part of a step."""
        self.room.wait(self.pace_s * self.chance.uniform(1.0, 3.0))

    def request(self, words: str, fits: Callable[[str], bool]) -> str:
        """Says it until an answer comes; an answer that does not fit is looked into.

        Gives the answer that fitted, "" where the program had to be brought back.
        """
        began = self.room.clock.now_s()
        for _ in range(4):
            answer = self.room.say(words)
            self.silence(began)
            self.grain_told(answer)
            if "stopped listening" in answer:
                self.room.press("c")
            if answer not in ("", "~"):
                if fits(answer):
                    return answer
                break
            if not answer:
                self.room.wait(NOT_HEARD_AGAIN_S)
        return ""

    def grain_told(self, answer: str) -> None:
        """Whether steps are bigger now, asked for or misheard; the maker hears that too."""
        told = re.search(r"now by ([a-z ]+)\.", answer.lower())
        if told and told[1] in GRAINS:
            self.grain = told[1]

    def silence(self, began: float) -> None:
        """The longest time from a first word to any sound."""
        waited = self.room.clock.now_s() - began
        self.room.tallies.longest_silence_s = max(self.room.tallies.longest_silence_s, waited)

    def arrived(self, answer: str, at: int) -> bool:
        """Whether an answer reads the spot: its row where one begins, else its pass."""
        spot, here = self.room.spots[at], self.spot
        new_row = (spot.part, spot.row) != (here.part, here.row)
        told = answer.lower()
        if told.startswith("after this") or re.search(r"taken back|\bsay |yes or no", told):
            return False
        if (
            at > self.at
            and here.total
            and new_row != bool(re.search("w complete|d complete", told))
        ):
            return False
        if not spot.begins and new_row:
            return holds(answer, spot.clues[1])
        if spot.begins and f"{spot.begins} done" in told:
            return False
        return not spot.begins or holds(answer, spot.begins) or holds(answer, spot.clues[-1])

    def still_here(self, answer: str) -> bool:
        """Whether an answer speaks of the row in hand, and of no move."""
        moved = re.search(r"(?:row|round) complete|taken back|after this| done\. ", answer.lower())
        label = self.spot.clues[2 if self.spot.clues[1].startswith("the ") else 1]
        return not moved and (self.spot.step > 0 or holds(answer, label))

    def forward(self) -> None:
        """The step is done: next."""
        to = onward(self.room.spots, self.at, self.grain)
        if to == self.at:
            return self.piece_done()
        before = self.spot
        answer = self.request("next", lambda said: self.arrived(said, to))
        self.at = to
        if not answer:
            return self.bring_back()
        if (before.part, before.row) != (self.spot.part, self.spot.row):
            self.row_ended(before, answer)
        return None

    def row_ended(self, before: Spot, answer: str) -> None:
        """The total that was said beside the printed one; the place beside the yarn."""
        self.room.tallies.totals_compared += before.total is not None
        told = re.search(r"complete\. you should have ([a-z-]+) ", answer.lower())
        if before.total is not None and (not told or told[1] != in_words(before.total)):
            self.room.tallies.wrong_totals += 1
            self.room.tallies.faults.append(f"{answer!r}, printed {before.total}")
        if self.spot.clues[-1].endswith("in this part"):
            # One "next row" sounds like another, so the maker makes sure.
            return self.bring_back()
        return self.room.believed(self.at)

    def piece_done(self) -> None:
        """The last step is done; another one is begun."""
        self.room.tallies.pieces += 1
        self.dialogue("more words", "start over again", "yes")
        self.at = 0
        self.bring_back()

    def whole_row_worked(self) -> None:
        """The rest of the row without a word, then: row done."""
        to = onward(self.room.spots, self.at, GRAINS[2])
        if to == self.at:
            return
        before = self.spot
        self.room.wait(self.pace_s * 8)
        answer = self.request("row done", lambda said: self.arrived(said, to))
        self.at = to
        if answer:
            self.row_ended(before, answer)
        else:
            self.bring_back()

    def one_back(self) -> None:
        """A step was wrong and is undone in the yarn: go back."""
        to = backward(self.room.spots, self.at, self.grain)
        if to == self.at:
            return
        self.at = to
        if not self.request("go back", lambda said: self.arrived(said, to)):
            self.bring_back()

    def hasty(self) -> None:
        """Next, said too early, and taken back at once."""
        to = onward(self.room.spots, self.at, self.grain)
        if to == self.at:
            return
        answer = self.room.say("next")
        if answer in ("", "~"):
            return
        if not self.request("undo that", lambda said: "taken back" in said.lower()):
            self.bring_back()

    def rip(self) -> None:
        """Rips back to an earlier row of this part."""
        earlier = [
            one for one in self.room.spots
            if one.part == self.spot.part and one.number is not None
            and one.number < (self.spot.number or 0) and one.number > (self.spot.number or 0) - 3
        ]  # fmt: skip
        if not earlier:
            return
        number = self.chance.choice(earlier).number
        assert number is not None
        noun, said = self.spot.clues[1].split()[0], in_words(number, " ")
        if noun in ("row", "round") and self.chance.random() < 0.5:
            self.dialogue(f"rip back to {noun} {said}", "yes")
        else:
            self.dialogue("more words", "rip back", said, "yes")
        self.at = self.room.ledger.first_of_row(self.spot.part, number)
        self.bring_back()

    def dialogue(self, *phrases: str) -> None:
        """Phrases one after the other, each said again when nothing is heard; it may go astray."""
        for words in phrases:
            if not self.request(words, lambda answer: True):
                return

    def question(self, words: str, fits: Callable[[str], bool]) -> None:
        """A question; what does not fit is looked into."""
        if not self.request(words, fits):
            self.bring_back()

    def ask_how_many(self) -> None:
        """The running total, beside the one worked out from the paper."""
        spot = self.spot
        answer = self.request("how many", counts_told)
        if not answer:
            return self.bring_back()
        told = re.search(r"([a-z-]+) done, ([a-z-]+) left, of ([a-z-]+) ", answer.lower())
        if spot.done is None or spot.total is None or self.at != self.room.ledger.at:
            return None
        wanted = (spot.done, spot.total - spot.done, spot.total)
        self.room.tallies.totals_compared += 1
        if not told or tuple(map(in_words, wanted)) != told.groups():
            self.room.tallies.wrong_totals += 1
            self.room.tallies.faults.append(f"{answer!r}, the paper says {wanted}")
        return None

    def checked(self) -> None:
        """Counts the stitches; now and then there is one too few."""
        if self.spot.total is None:
            return
        have = self.spot.total - self.chance.choice((0, 0, 0, 1))
        if self.chance.random() < 0.5:
            self.dialogue(f"i have {in_words(have, ' ')}")
        else:
            self.dialogue("check my count", in_words(have, " "))
        self.question("again", lambda answer: True)

    def counted(self) -> None:
        """Counts a few stitches aloud and breaks off."""
        if self.spot.total is None or self.spot.done is None:
            return
        self.dialogue("more words", "count along")
        for number in range(1, self.chance.randint(3, 6)):
            self.room.say(in_words(self.spot.done + number, " "))
            self.room.wait(self.pace_s)
        self.bring_back()

    def more(self) -> None:
        """One of the other words."""
        words = ("as written", "spell that", "explain that", "how long", "what did we do last",
                 "read my notes", "how much yarn", "opening notes", "keep time")  # fmt: skip
        asked = (("mark this place", "heel"), ("mark this place", "no"), ("lifeline here", "no"),
                 ("note this", "changed the hook"), ("note this", "no"), ("my gauge", "eighteen"),
                 ("materials", "yes", "no", "carry on"), ("back to the mark", "no"))  # fmt: skip
        if self.chance.random() < 0.5:
            self.dialogue("more words", self.chance.choice(words))
        else:
            self.dialogue("more words", *self.chance.choice(asked))
            return self.bring_back()
        self.question("where am i", self.where_fits)
        return None

    def steps_changed(self) -> None:
        """Bigger or smaller steps, slower or faster; the place must stay."""
        words = self.chance.choice(("bigger steps", "smaller steps", "slower", "faster"))
        if words.endswith("steps"):
            self.dialogue("more words")
        self.request(words, lambda said: True)
        self.bring_back()

    def rest(self) -> None:
        """A pause for tea."""
        self.dialogue("pause")
        self.room.wait(self.chance.uniform(60, 400))
        self.dialogue("carry on")
        self.bring_back()

    def leave(self) -> None:
        """Leaves for the day or is cut off, and comes back to the same spot."""
        self.bring_back()
        if self.chance.random() < 0.5:
            self.request("finish for today", lambda said: "finish" in said.lower())
            if not self.request("yes", lambda said: "everything is kept" in said.lower()):
                self.bring_back()
        days = self.chance.choice((0, 1, 33))
        hello = self.room.power_cut(self.chance.uniform(20, 120), days)
        self.grain = self.room.tastes.grain.value
        if not self.where_fits(hello):
            self.room.lost(f"after coming back it said {hello!r}, the yarn is at {self.spot}")
        self.room.believed(self.at)

    def spoken_film(self) -> None:
        """A voice in the room is taken for a command; the maker hears the answer."""
        if self.room.film():
            self.bring_back()

    def clues(self, spot: Spot) -> tuple[str, ...]:
        """What an answer must hold; of bigger steps only part and row are told."""
        if self.grain == GRAINS[0]:
            return spot.clues
        named = 3 if spot.clues[1].startswith("the ") else 2
        return tuple(
            clue
            for at, clue in enumerate(spot.clues)
            if at < named or clue.endswith("in this part")
        )

    def where_fits(self, answer: str) -> bool:
        """Whether an answer is true of the spot in hand."""
        return all(holds(answer, clue) for clue in self.clues(self.spot))

    def bring_back(self) -> None:
        """Asks where the program is and moves it to the yarn, by voice, in the end by keys."""
        self.room.tallies.repairs += 1
        for turn in range(3 * TRIES):
            by_key = turn >= TRIES
            told = self.room.press("w") if by_key else self.room.say("where am i")
            if "stopped listening" in told:
                told = self.room.press("c")
            if "paused" in told.lower():
                self.room.say("carry on")
                continue
            found = self.places_told(told)
            if not found:
                self.free(by_key, turn)
            elif self.at in found:
                if len(found) > 1:
                    self.begin_row_again()
                return self.room.believed(self.at)
            else:
                self.step_nearer(min(found, key=lambda at: abs(at - self.at)), by_key)
        self.room.lost(f"the maker could not bring the program back to {self.spot}")
        return None

    def places_told(self, answer: str) -> list[int]:
        """The spots an answer may mean, those with the most of its words."""
        spots = self.room.spots
        found = [at for at, one in enumerate(spots)
                 if answer and all(holds(answer, clue) for clue in self.clues(one))]  # fmt: skip
        most = max((len(self.clues(spots[at])) for at in found), default=0)
        return [at for at in found if len(self.clues(spots[at])) == most]

    def begin_row_again(self) -> None:
        """The answer tells the row and no more, so the row is begun again."""
        self.room.press("home")
        self.at -= self.spot.step

    def free(self, by_key: bool, turn: int) -> None:
        """Out of whatever question is open."""
        if by_key or turn % 4 == 3:
            self.room.press("c")
        elif turn % 2:
            self.room.say("no")
        self.room.wait(11.0)

    def step_nearer(self, seems: int, by_key: bool) -> None:
        """One request that brings the program nearer to the yarn."""
        here, there = self.room.spots[seems], self.spot
        if here.part != there.part:
            self.dialogue("go to part", self.room.ledger.names[there.part])
        elif here.row != there.row and there.number is not None:
            self.dialogue("go to row", in_words(there.number, " "))
        elif by_key:
            self.room.press("space" if seems < self.at else "b")
        else:
            self.room.say("next" if seems < self.at else "go back")


def counts_told(answer: str) -> bool:
    """Whether an answer tells counts: done and left, or that nothing is counted."""
    return bool(re.search(r"\bleft, of | done[.;]|nothing is counted", answer.lower()))


def comes_after(answer: str) -> bool:
    """Whether an answer tells what comes after, and does not move there."""
    return answer.startswith(("After this", "Nothing comes"))
