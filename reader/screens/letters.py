"""Large letters: a line of text in, rows of block characters out, four or five terminal rows high.

The letters are our own, drawn below: seven dots from the foot of a letter to the head of a capital,
two more under the line. A dot is one column wide and half a row high, which is square in most
terminals; two dots share a cell.
"""

from __future__ import annotations

import unicodedata
from functools import cache

HEIGHT = 5
"""Terminal rows of a line of large letters, the space under it included (nine dots and one empty).
"""

DOTS = 2 * HEIGHT

_SMALL = """
a    b    c    d    e    f   g    h    i j   k    l  m     n    o    p    q    r   s    t   u
.... #... .... ...# .... .## .... #... # .## #... #. ..... .... .... .... .... ... .... ... ....
.... #... .... ...# .... #.. .... #... . ... #... #. ..... .... .... .... .... ... .... #.. ....
.##. ###. .### .### .##. ### .### ###. # .## #..# #. ####. ###. .##. ###. .### #.# .### ### #..#
...# #..# #... #..# #..# #.. #..# #..# # ..# #.#. #. #.#.# #..# #..# #..# #..# ##. #... #.. #..#
.### #..# #... #..# #### #.. #..# #..# # ..# ##.. #. #.#.# #..# #..# #..# #..# #.. .##. #.. #..#
#..# #..# #... #..# #... #.. #..# #..# # ..# #.#. #. #.#.# #..# #..# #..# #..# #.. ...# #.. #..#
.### ###. .### .### .### #.. .### #..# # ..# #..# .# #.#.# #..# .##. ###. .### #.. ###. .## .###
.... .... .... .... .... ... ...# .... . ..# .... .. ..... .... .... #... ...# ... .... ... ....
.... .... .... .... .... ... ###. .... . ##. .... .. ..... .... .... #... ...# ... .... ... ....

v     w     x     y    z    A    B    C    D    E    F    G    H    I   J    K    L    M     N
..... ..... ..... .... .... .##. ###. .### ###. #### #### .### #..# ### ...# #..# #... #...# #...#
..... ..... ..... .... .... #..# #..# #... #..# #... #... #... #..# .#. ...# #..# #... ##.## ##..#
#...# #...# #...# #..# #### #..# #..# #... #..# #... #... #... #..# .#. ...# #.#. #... #.#.# #.#.#
#...# #...# .#.#. #..# ...# #### ###. #... #..# ###. ###. #.## #### .#. ...# ##.. #... #.#.# #.#.#
.#.#. #.#.# ..#.. #..# .##. #..# #..# #... #..# #... #... #..# #..# .#. ...# #.#. #... #...# #..##
.#.#. #.#.# .#.#. #..# #... #..# #..# #... #..# #... #... #..# #..# .#. #..# #..# #... #...# #...#
..#.. .#.#. #...# .### #### #..# ###. .### ###. #### #... .### #..# ### .##. #..# #### #...# #...#
..... ..... ..... ...# .... .... .... .... .... .... .... .... .... ... .... .... .... ..... .....
..... ..... ..... ###. .... .... .... .... .... .... .... .... .... ... .... .... .... ..... .....
"""

_REST = """
O     P    Q    R    S    T     U    V     W     X     Y     Z     0    1   2    3    4    5    6
.###. ###. .##. ###. .### ##### #..# #...# #...# #...# #...# ##### .##. .#. .##. ###. #..# #### .##.
#...# #..# #..# #..# #... ..#.. #..# #...# #...# #...# #...# ....# #..# ##. #..# ...# #..# #... #...
#...# #..# #..# #..# #... ..#.. #..# #...# #...# .#.#. .#.#. ...#. #..# .#. ...# ...# #..# ###. #...
#...# ###. #..# ###. .##. ..#.. #..# #...# #.#.# ..#.. ..#.. ..#.. #..# .#. ..#. .##. #### ...# ###.
#...# #... #..# #.#. ...# ..#.. #..# .#.#. #.#.# .#.#. ..#.. .#... #..# .#. .#.. ...# ...# ...# #..#
#...# #... #.#. #..# ...# ..#.. #..# .#.#. ##.## #...# ..#.. #.... #..# .#. #... ...# ...# #..# #..#
.###. #... .#.# #..# ###. ..#.. .##. ..#.. #...# #...# ..#.. ##### .##. ### #### ###. ...# .##. .##.
..... .... .... .... .... ..... .... ..... ..... ..... ..... ..... .... ... .... .... .... .... ....
..... .... .... .... .... ..... .... ..... ..... ..... ..... ..... .... ... .... .... .... .... ....

7    8    9    . ,  : ;  ! ?    ' "   -   (  )  [  ]  /    *     +   =    ×   &     %    #     $
#### .##. .##. . .. . .. # .##. # #.# ... .# #. ## ## ...# ..... ... .... ... .##.. #..# ..... ...
...# #..# #..# . .. . .. # #..# # #.# ... #. .# #. .# ...# ..#.. ... .... ... #..#. ...# .#.#. .#.
...# #..# #..# . .. # .# # ...# . ... ... #. .# #. .# ..#. #.#.# .#. .... #.# #..#. ..#. ##### ###
..#. .##. .### . .. # .# # ..#. . ... ### #. .# #. .# ..#. .###. ### #### .#. .##.. ..#. .#.#. #..
..#. #..# ...# . .. . .. # ..#. . ... ... #. .# #. .# .#.. #.#.# .#. .... #.# #.#.# .#.. ##### .##
.#.. #..# ...# . .. . .. . .... . ... ... #. .# #. .# .#.. ..#.. ... #### ... #..#. .#.. .#.#. ###
.#.. .##. .##. # .# # .# # ..#. . ... ... .# #. ## ## #... ..... ... .... ... .##.# #..# ..... .#.
.... .... .... . .# . .# . .... . ... ... .. .. .. .. .... ..... ... .... ... ..... .... ..... ...
.... .... .... . #. . #. . .... . ... ... .. .. .. .. .... ..... ... .... ... ..... .... ..... ...
"""

_SAME = str.maketrans(
    {"’": "'", "‘": "'", "“": '"', "”": '"', "–": "-", "—": "-", "−": "-", "′": "'"}
)
_SPACE = 2
_CELL = {(False, False): " ", (True, False): "▀", (False, True): "▄", (True, True): "█"}


@cache
def _glyphs() -> dict[str, tuple[str, ...]]:
    """Each letter's nine rows of dots, read from the drawings above."""
    found: dict[str, tuple[str, ...]] = {}
    for block in (_SMALL + _REST).strip().split("\n\n"):
        heads, *rows = (line.split() for line in block.splitlines())
        for column, letter in enumerate(heads):
            found[letter] = tuple(row[column] for row in rows)
    return found


def spelt_large(text: str) -> str | None:
    """The text in letters that are drawn (typographic quotes and accents made plain), None where
    one is missing.
    """
    plain = unicodedata.normalize("NFKD", text.translate(_SAME)).replace("⁄", "/")
    plain = "".join(letter for letter in plain if not unicodedata.combining(letter))
    return plain if all(letter == " " or letter in _glyphs() for letter in plain) else None


def width(text: str, scale: int = 1) -> int:
    """Columns a text takes in large letters; letters not drawn count as a space."""
    if not text:
        return 0
    letters = [_glyphs().get(letter) for letter in text]
    return scale * (sum(len(dots[0]) if dots else _SPACE - 1 for dots in letters) + len(text) - 1)


def draw(text: str, scale: int = 1) -> tuple[str, ...]:
    """HEIGHT x scale terminal rows, all of width(text, scale) columns; letters not drawn become a
    space.

    scale: 1 for two dots a cell, 2 and more for whole cells, that many columns and half as many
    rows a dot.
    """
    dots = _dots(text)
    wide = ["".join(dot * scale for dot in row) for row in dots]
    tall = [row for row in wide for _ in range(scale)]
    return tuple(
        "".join(_CELL[(up == "#", down == "#")] for up, down in zip(*pair, strict=True))
        for pair in zip(tall[::2], tall[1::2], strict=True)
    )


def _dots(text: str) -> list[str]:
    """The ten rows of dots of a line of text."""
    blank = ("." * (_SPACE - 1),) * (DOTS - 1)
    letters = [_glyphs().get(letter, blank) for letter in text]
    rows = [".".join(letter[row] for letter in letters) for row in range(DOTS - 1)]
    return [*rows, "." * len(rows[0])]


def wrap(text: str, columns: int, scale: int = 1) -> list[str] | None:
    """The text broken at spaces into lines that fit; None where a single word doesn't, or a letter
    isn't drawn.
    """
    plain = spelt_large(text)
    if plain is None:
        return None
    lines: list[str] = []
    for word in plain.split():
        if width(word, scale) > columns:
            return None
        if lines and width(f"{lines[-1]} {word}", scale) <= columns:
            lines[-1] = f"{lines[-1]} {word}"
        else:
            lines.append(word)
    return lines
