"""A pattern's text -> the text with what knitters, crocheters and their printers say in other words
put as it is read.
"""

from __future__ import annotations

from collections.abc import Callable

from reader.pattern.unwrapped import unwrapped
from reader.text.adjectives import without_adjectives
from reader.text.all_but_told import all_but_told
from reader.text.announced import unannounced
from reader.text.begun_unsaid import begun_unsaid
from reader.text.begun_with import begun_with
from reader.text.begun_with_gap import begun_with_gap
from reader.text.both_ends import both_ends
from reader.text.bound_off import bound_off
from reader.text.by_kind import by_kind
from reader.text.chain_notes import without_chain_notes
from reader.text.dashed_sentences import undashed
from reader.text.decreases_named import decreases_named
from reader.text.dropped_down import worked_down
from reader.text.each_round_evenly import each_round_evenly
from reader.text.evenly_said import evenly_said
from reader.text.everyday_words import everyday_words
from reader.text.first_chains import first_chains
from reader.text.gusset_totals import without_gusset_totals
from reader.text.halves import halves_told
from reader.text.held_told import held_told
from reader.text.into_groups import into_groups
from reader.text.keeps_at_it import keeps_at_it
from reader.text.leaflet_words import leaflet_words
from reader.text.left_waiting import sides_told
from reader.text.lines_told import lines_told
from reader.text.lots_picked_up import lots_picked_up
from reader.text.manner_first import number_first
from reader.text.more_at_ends import more_at_ends
from reader.text.named_pieces import on_lines
from reader.text.new_stitches import without_new_stitches
from reader.text.noughts import noughts
from reader.text.old_words import old_words
from reader.text.overs_everywhere import overs_everywhere
from reader.text.overs_short import overs_named
from reader.text.part_nouns import without_asides, without_part_nouns
from reader.text.picked_up import picked_up
from reader.text.pieces_amid import pieces_apart
from reader.text.plain_stretches import plain_stretches
from reader.text.ribs import ribs_named
from reader.text.row_beginnings import row_beginnings
from reader.text.row_kept import row_kept
from reader.text.row_words import row_words
from reader.text.rows_spoken_of import rows_spoken_of
from reader.text.same_manner import as_last_row
from reader.text.set_right import in_turn
from reader.text.several_in_one import several_in_one
from reader.text.shaping_rows import shaping_rows
from reader.text.short_names import without_short_names
from reader.text.short_together import together_told
from reader.text.sides_and_ends import sides_and_ends
from reader.text.slips import slips_named
from reader.text.stars_over_rows import without_side_stars
from reader.text.stops import without_stops
from reader.text.stops_for_commas import with_commas
from reader.text.times_before import with_stars
from reader.text.told_aloud import told_aloud
from reader.text.translated_knitting import in_english_knitting
from reader.text.turned_amid import turned_amid
from reader.text.turns_and_ribs import in_rows
from reader.text.untwisted import without_care

OF_KNITTING: tuple[Callable[[str], str], ...] = (
    unwrapped,
    row_kept,
    without_gusset_totals,
    number_first,
    row_beginnings,
    leaflet_words,
    lots_picked_up,
    several_in_one,
    decreases_named,
    noughts,
    shaping_rows,
    as_last_row,
    worked_down,
    with_stars,
    begun_with,
    begun_unsaid,
    overs_everywhere,
    together_told,
    without_adjectives,
    rows_spoken_of,
    held_told,
    overs_named,
    old_words,
    in_rows,
    by_kind,
    all_but_told,
    plain_stretches,
    without_stops,
    with_commas,
    undashed,
    in_english_knitting,
    told_aloud,
    lines_told,
    row_words,
    picked_up,
    bound_off,
    keeps_at_it,
    everyday_words,
    evenly_said,
    halves_told,
    without_asides,
    without_part_nouns,
    ribs_named,
    sides_told,
    on_lines,
    unannounced,
    without_new_stitches,
)
"""In this order: a pass leans on what those before it have set."""
OF_CROCHET: tuple[Callable[[str], str], ...] = (
    row_kept,
    without_chain_notes,
    without_care,
    without_side_stars,
    each_round_evenly,
    without_short_names,
    into_groups,
    first_chains,
    begun_with_gap,
    both_ends,
    pieces_apart,
    slips_named,
    turned_amid,
    more_at_ends,
    sides_and_ends,
)
"""In this order."""


def knitting_as_usual(plain: str) -> str:
    """The text with what knitters and their printers say in other words put as it is read."""
    return in_turn(OF_KNITTING, plain)


def crochet_as_usual(plain: str) -> str:
    """The text with what crocheters and their printers say in other words put as it is read."""
    return in_turn(OF_CROCHET, plain)
