"""Sayings that are always the same words."""

from __future__ import annotations

FIXED: dict[str, str] = {
    "paused": "Paused. Say carry on when you are ready.",
    "still paused": "Still paused; say carry on to go on.",
    "deaf": "I have stopped listening. Keys work; press c and I listen again.",
    "carry on": "Carrying on.",
    "at start": "This is the very first step.",
    "nothing to undo": "There is no move to take back from the last ten seconds.",
    "undone": "Taken back.",
    "no mark": "There is no mark yet. Say more words, then mark this place.",
    "no note": "There is no note yet. Say more words, then note this.",
    "no question": "There is nothing to say yes to just now.",
    "no pattern note": "The pattern says nothing before its rows.",
    "last step": "Nothing comes after this; it is the last step.",
    "no numbers": "The rows of this part have no numbers. Say next or go back.",
    "one part": "This pattern has only one part.",
    "more words": "The other words. Say what you want, or no.",
    "not known": "I don't know that. Say what can I say, or press the question mark.",
    "left alone": "All right, as it was.",
    "all gathered": "You have everything on the list.",
    "no gauge": "The pattern tells no gauge.",
    "nothing to gather": "The pattern names no materials.",
    "nothing counted": "Nothing is counted here.",
    "note typed": "Type your note.",
    "note asked": "Say your note; it is kept as sound. Or type it.",
    "find offered": "Shall I help to find where? Yes or no.",
    "count unknown": "I can't tell how many there should be here, so there is nothing to compare.",
    "confirm finish": "Finish for today? Yes or no.",
    "confirm start over": "Start again from the very first step? Yes or no.",
    "how many have you": "How many stitches have you?",
    "pace on": "I keep time, and say when the row should be about done.",
    "pace off": "I no longer keep time.",
    "missed often": (
        "I did not catch that three times. Every command is also on a key; the help is on F 1. "
        "I keep quiet now until I understand you."
    ),
    "rest": (
        "You have been at it a good while. Hands and eyes like a short rest. "
        "If something hurts and does not pass, see somebody qualified."
    ),
}
