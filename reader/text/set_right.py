"""Raw text -> the text clean, and the same plain: what copies and authors set in their own way
set as usual, each pass in its turn; length kept.
"""

from __future__ import annotations

from reader.text.all_capitals import as_sentences
from reader.text.all_round import all_round
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
from reader.text.half_short import wholly_short
from reader.text.label_numbers import rows_in_figures
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
from reader.text.shorthand import with_times
from reader.text.size_lists import with_usual_brackets
from reader.text.size_marks import sizes_as_usual
from reader.text.spoken import punctuated
from reader.text.tables import untabled
from reader.text.tick_boxes import without_boxes
from reader.text.time_marks import without_times
from reader.text.to_the_last import to_the_last
from reader.text.told_in_front import without_told_in_front
from reader.text.told_to_repeat import lists_told
from reader.text.total_remarks import plain_totals
from reader.text.totals_alike import totals_alike
from reader.text.totals_alone import parted_totals
from reader.text.totals_below import totals_above
from reader.text.totals_first import with_cast_on
from reader.text.totals_in_column import totals_told
from reader.text.translated import in_english
from reader.text.tunisian import as_rows
from reader.text.two_together import two_together
from reader.text.undotted import undotted


def set_right(text: str) -> tuple[CleanText, str]:
    """The text clean, and plain: what copies and authors set in their own way set as usual."""
    told = without_links(without_tags(without_front_matter(text)))
    told = without_blank_lines(without_page_lines(told))
    source = spelled(clean(joined_ligatures(with_ones(told))))
    plain = changes_alone(sentences_ended(without_boxes(source.text)))
    plain = lines_of_labels(without_figures(without_marks(plain)))
    plain = totals_in_brackets(plain_as_double(plain))
    plain = totals_set_off(as_sentences(unbraced(without_times(plain))))
    plain = labels_first(rows_called_lines(unmarked(unbulleted(plain))))
    plain = totals_told(with_cast_on(with_times_told(sizes_as_usual(plain))))
    plain = rounds_told(rows_that_are(totals_alike(plain)))
    plain = rows_in_figures(labels_counted(with_known_words(plain)))
    plain = without_emphasis(with_usual_brackets(plain))
    plain = untabled(without_columns(without_ticks(plain)))
    plain = totals_above(parted_totals(plain_totals(plain)))
    plain = without_told_in_front(without_row_notes(plain))
    plain = in_plain_words(plain)
    plain = two_together(wholly_short(as_rows(in_english(plain))))
    plain = with_colons(rows_of_lists(with_brackets(labelled_others(one_stitch(plain)))))
    plain = with_as(plain)
    plain = with_times(without_multiples(without_any_number(without_other_ways(plain))))
    plain = starred(with_chain(numbered(punctuated(with_labels(without_row_adjectives(plain))))))
    plain = labelled_alike(with_one_verb(rows_repeated(plain)))
    plain = all_round(to_the_last(lists_told(spread_apart(plain))))
    plain = without_levelling(without_advice(stopped(sides_first(motifs_apart(plain)))))
    plain = led_to_other_side(chains_first(unnamed_loops(plain)))
    plain = needles_in_rounds(needles_as_rows(cast_ons(last_first(undotted(plain)))))
    return source, plain
