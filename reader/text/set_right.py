"""Raw text -> the text clean, and the same plain: what copies and authors set in their own way
set as usual, each pass in its turn; length kept.
"""

from __future__ import annotations

from collections.abc import Callable

from reader.text.all_capitals import as_sentences
from reader.text.all_round import all_round
from reader.text.angled import without_angles
from reader.text.as_many_markers import as_often_as_markers
from reader.text.asides_worked import led_to_other_side
from reader.text.bare_row_calls import with_as
from reader.text.bare_times import with_times_told
from reader.text.blank_lines import without_blank_lines
from reader.text.braced import unbraced
from reader.text.bullets import unbulleted
from reader.text.called_alike import with_one_verb
from reader.text.called_lines import rows_called_lines
from reader.text.cast_ons import cast_ons
from reader.text.chain_spaces import chains_first
from reader.text.change_in_last import changed_in_last
from reader.text.clean import CleanText, clean
from reader.text.columns import without_columns
from reader.text.counting_labels import labels_counted
from reader.text.crosses import starred
from reader.text.edges_told import sides_first
from reader.text.ended_with_slip import without_levelling
from reader.text.even_then import stopped
from reader.text.evenly_said import spread_apart
from reader.text.explained_changes import changes_alone
from reader.text.figure_heads import without_figures
from reader.text.footnotes import without_marks
from reader.text.foundations import with_chain
from reader.text.growth_told import without_growth_told
from reader.text.half_short import wholly_short
from reader.text.key_told import keys_told
from reader.text.label_lists import label_lists
from reader.text.label_numbers import rows_in_figures
from reader.text.label_series import labels_as_usual
from reader.text.labels_alone import with_colons
from reader.text.labels_behind import labels_first
from reader.text.last_first import last_first
from reader.text.last_loops import unnamed_loops
from reader.text.markdown import unmarked
from reader.text.misspelt import spelled
from reader.text.motifs_joined import motifs_apart
from reader.text.multiples import without_multiples
from reader.text.needle_rows import needles_as_rows, needles_in_rounds
from reader.text.not_above_shaping import without_advice
from reader.text.numbered import numbered
from reader.text.odd_totals import totals_set_off
from reader.text.old_totals import in_brackets as totals_in_brackets
from reader.text.one_stitch import one_stitch
from reader.text.ordinals_stopped import with_labels
from reader.text.other_rows import labelled_others
from reader.text.other_ways import without_other_ways
from reader.text.own_labels import with_known_words
from reader.text.page_lines import without_page_lines
from reader.text.page_tags import without_tags
from reader.text.plain_stitches import plain_as_double
from reader.text.plain_words import in_plain_words
from reader.text.quoted_lists import with_brackets
from reader.text.rounds_told import rounds_told
from reader.text.row_adjectives import without_row_adjectives
from reader.text.row_lists import rows_of_lists
from reader.text.row_notes import without_row_notes
from reader.text.rows_form import rows_repeated
from reader.text.rows_likewise import rows_likewise
from reader.text.rows_that_are import rows_that_are
from reader.text.run_in_labels import lines_of_labels
from reader.text.said_alike import labelled_alike
from reader.text.same_length import (
    joined_ligatures,
    with_ones,
    without_any_number,
    without_emphasis,
    without_front_matter,
    without_links,
    without_ticks,
)
from reader.text.sentence_ends import sentences_ended
from reader.text.shaped_to import with_total_behind
from reader.text.shorthand import with_times
from reader.text.size_lists import with_usual_brackets
from reader.text.size_marks import sizes_as_usual
from reader.text.so_many_per_stitch import so_many_per_stitch
from reader.text.so_many_rounds import so_many_rounds
from reader.text.spoken import punctuated
from reader.text.sums_told import sums_alone
from reader.text.tables import untabled
from reader.text.tick_boxes import without_boxes
from reader.text.time_marks import without_times
from reader.text.to_the_last import to_the_last
from reader.text.told_in_front import without_told_in_front
from reader.text.told_to_repeat import lists_told
from reader.text.total_of_each import totals_of_each
from reader.text.total_remarks import plain_totals
from reader.text.totals_alike import totals_alike
from reader.text.totals_alone import parted_totals
from reader.text.totals_below import totals_above
from reader.text.totals_first import with_cast_on
from reader.text.totals_in_column import totals_told
from reader.text.totals_in_words import totals_in_words
from reader.text.totals_spoken_of import spoken_totals
from reader.text.totals_talked_of import talked_of_totals
from reader.text.translated import in_english
from reader.text.tunisian import as_rows
from reader.text.two_together import two_together
from reader.text.undotted import undotted

NO_PATTERN: tuple[Callable[[str], str], ...] = (
    without_front_matter,
    without_tags,
    without_links,
    without_page_lines,
    without_blank_lines,
)
"""What a copy brings that is no pattern, dropped from the text as it came; in this order."""
AS_USUAL: tuple[Callable[[str], str], ...] = (
    without_boxes,
    keys_told,
    label_lists,
    labels_as_usual,
    sentences_ended,
    changes_alone,
    without_marks,
    without_figures,
    lines_of_labels,
    plain_as_double,
    totals_in_brackets,
    totals_of_each,
    totals_in_words,
    without_times,
    unbraced,
    without_angles,
    as_sentences,
    totals_set_off,
    unbulleted,
    unmarked,
    rows_called_lines,
    labels_first,
    sizes_as_usual,
    with_times_told,
    with_cast_on,
    totals_told,
    totals_alike,
    rows_that_are,
    rounds_told,
    with_known_words,
    labels_counted,
    rows_in_figures,
    with_usual_brackets,
    without_emphasis,
    without_ticks,
    without_columns,
    untabled,
    sums_alone,
    talked_of_totals,
    without_growth_told,
    as_often_as_markers,
    changed_in_last,
    spoken_totals,
    plain_totals,
    parted_totals,
    totals_above,
    without_row_notes,
    with_total_behind,
    without_told_in_front,
    in_plain_words,
    in_english,
    as_rows,
    wholly_short,
    two_together,
    one_stitch,
    rows_likewise,
    labelled_others,
    with_brackets,
    rows_of_lists,
    with_colons,
    with_as,
    without_other_ways,
    without_any_number,
    without_multiples,
    with_times,
    without_row_adjectives,
    with_labels,
    punctuated,
    numbered,
    with_chain,
    starred,
    so_many_rounds,
    rows_repeated,
    with_one_verb,
    labelled_alike,
    spread_apart,
    lists_told,
    to_the_last,
    so_many_per_stitch,
    all_round,
    motifs_apart,
    sides_first,
    stopped,
    without_advice,
    without_levelling,
    unnamed_loops,
    chains_first,
    led_to_other_side,
    undotted,
    last_first,
    cast_ons,
    needles_as_rows,
    needles_in_rounds,
)
"""What hands of all crafts say in their own way, in this order: a pass leans on what those before
it have set."""


def set_right(text: str) -> tuple[CleanText, str]:
    """The text clean, and plain: what copies and authors set in their own way set as usual."""
    told = in_turn(NO_PATTERN, text)
    source = spelled(clean(joined_ligatures(with_ones(told))))
    return source, in_turn(AS_USUAL, source.text)


def in_turn(passes: tuple[Callable[[str], str], ...], text: str) -> str:
    """The text after each pass, the first one first."""
    for one in passes:
        text = one(text)
    return text
