"""The order of a stack. The rules are common practice, no source, but for what the product's own sheet says."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.service.sheet_shelf import built_in_sheets
from studiowatch.studio.plan_checks import (
    COMMON_PRACTICE,
    ON_THE_SHEET,
    Remark,
    Rule,
    StackCoat,
    check_laying,
    check_stack,
    joined,
    laying_sentence,
    needs_dry_through,
)
from studiowatch.studio.recipes import BUILT_IN
from studiowatch.studio.words import Level, Sentence

SHEETS = built_in_sheets()
SHORT = {
    "P": "paint-brushed",
    "I": "isolation-waterborne",
    "G": "gloss-waterborne",
    "S": "satin-waterborne",
    "M": "matt-waterborne",
    "g": "gloss-solventborne",
    "s": "satin-solventborne",
}


def stack(letters: str, *, laid: int = 0, sheets: dict[str, DataSheet] = SHEETS) -> list[StackCoat]:
    names = [SHORT.get(letter, letter) for letter in letters]
    return [StackCoat(key=f"c{at}", name=name, sheet=sheets.get(name), laid=at < laid) for at, name in enumerate(names)]


def rules(found: tuple[Remark, ...]) -> list[tuple[str, Rule]]:
    return [(remark.coat_key, remark.rule) for remark in found]


@pytest.mark.parametrize("letters", ["PIGGS", "PIGM", "PIG", "PI", "P", "", "IGS"])
def test_that_a_finish_in_the_trades_order_has_nothing_against_it(letters: str) -> None:
    assert check_stack(stack(letters)) == ()


@pytest.mark.parametrize("recipe", BUILT_IN, ids=lambda recipe: recipe.name)
def test_that_no_built_in_recipe_breaks_a_rule_but_waits_where_it_must(recipe: object) -> None:
    coats = [StackCoat(key=name + str(at), name=name, sheet=SHEETS[name]) for at, name in enumerate(recipe.sheets)]  # type: ignore[attr-defined]
    assert {remark.rule for remark in check_stack(coats)} <= {Rule.SOLVENT_OVER_WATER}


@pytest.mark.parametrize(
    ("letters", "rule"),
    [
        ("PISG", ("c3", Rule.GLOSS_FIRST)),
        ("PIMG", ("c3", Rule.GLOSS_FIRST)),
        ("PIGSSS", ("c5", Rule.MATTING)),
        ("PIGSM", ("c4", Rule.MATTING)),  # the generic matt sheet names one coat
        ("PG", ("c1", Rule.ISOLATION_MISSING)),
        ("PIGI", ("c3", Rule.ISOLATION_ABOVE)),
        ("PIg", ("c2", Rule.SOLVENT_OVER_WATER)),
        ("PIGx", ("c3", Rule.UNKNOWN_SHEET)),
    ],
)
def test_that_one_fault_is_told_once_at_its_coat(letters: str, rule: tuple[str, Rule]) -> None:
    assert rules(check_stack(stack(letters))) == [rule]


def test_that_satin_straight_on_paint_is_told_beside_the_isolation_that_is_missing() -> None:
    found = check_stack(stack("PS"))
    assert rules(found) == [("c1", Rule.MATTING_ON_PAINT), ("c1", Rule.ISOLATION_MISSING)]
    assert found[0].sentence == (
        "Satin straight on the paint dulls its darks unevenly: lay isolation, then gloss, below it."
    )


def test_that_an_isolation_that_is_missing_is_told_once_for_a_piece() -> None:
    assert rules(check_stack(stack("PGGG"))) == [("c1", Rule.ISOLATION_MISSING)]


def test_that_water_over_solvent_is_not_advised_and_solvent_over_water_only_waits() -> None:
    found = check_stack(stack("PIgG"))
    assert rules(found) == [("c2", Rule.SOLVENT_OVER_WATER), ("c3", Rule.WATER_OVER_SOLVENT)]
    assert [remark.level for remark in found] == [Level.CALM, Level.CAUTION]


def test_that_the_sheets_own_number_of_matting_coats_comes_before_common_practice() -> None:
    # two at most where the sheet says nothing: common practice, no source
    silent = SHEETS | {"satin-waterborne": replace(SHEETS["satin-waterborne"], max_matting_coats=None)}
    assert check_stack(stack("PIGSS", sheets=silent)) == ()
    (told,) = check_stack(stack("PIGSSS", sheets=silent))
    assert told.basis == COMMON_PRACTICE
    strict = SHEETS | {"satin-waterborne": replace(SHEETS["satin-waterborne"], max_matting_coats=1)}
    (told,) = check_stack(stack("PIGSS", sheets=strict))
    assert told.basis == ON_THE_SHEET
    assert "coat 2 with matting agent, and 1 are the most" in told.sentence


def test_that_what_is_laid_is_not_told_any_more() -> None:
    assert check_stack(stack("PS", laid=2)) == ()
    assert rules(check_stack(stack("PSG", laid=2))) == [("c2", Rule.GLOSS_FIRST), ("c2", Rule.ISOLATION_MISSING)]


def test_that_laying_a_coat_is_checked_as_planning_it_is() -> None:
    for letters in ("PISG", "PIGSSS", "PS", "PIGI", "PIgG", "PIGx"):
        coats = stack(letters, laid=len(letters) - 1)
        assert check_laying(coats[:-1], coats[-1]) == check_stack(coats)


def test_that_a_solvent_borne_coat_asks_for_dry_through_below_unless_that_is_solvent_borne_too() -> None:
    isolation, gloss, satin = (coat.sheet for coat in stack("Igs"))
    assert needs_dry_through(isolation, gloss)
    assert not needs_dry_through(gloss, satin)
    assert not needs_dry_through(gloss, isolation)
    assert not needs_dry_through(None, gloss)


def test_that_an_unknown_sheet_asks_to_act() -> None:
    (told,) = check_stack(stack("PIx"))
    assert (told.level, "no data sheet 'x'" in told.sentence) == (Level.ACT, True)


def test_that_a_coat_about_to_be_laid_is_warned_of_in_one_sentence_with_all_that_it_breaks() -> None:
    (paint, satin) = stack("PS")
    told = laying_sentence([replace(paint, laid=True)], satin, is_through=True)
    assert told is not None
    assert told.headline == "Not in this order: satin or matt wants gloss below"
    assert "no isolation coat lies below it" in told.detail
    (isolation, gloss) = stack("IG")
    assert laying_sentence([isolation], gloss, is_through=False) is None


def test_that_a_solvent_borne_coat_is_warned_of_only_while_the_one_below_is_not_dry_through() -> None:
    isolation, gloss = stack("Ig")
    assert laying_sentence([isolation], gloss, is_through=True) is None
    told = laying_sentence([isolation], gloss, is_through=False)
    assert told is not None
    assert (told.level, told.headline) == (Level.CAUTION, "Only once the coat below is dry through")


def test_that_two_things_against_a_coat_are_told_as_one_the_worse_first() -> None:
    wet = Sentence(level=Level.ACT, headline="Not yet: gloss is still wet", detail="Ready from 14:00.", advice="Wait.")
    order = Sentence(level=Level.CAUTION, headline="No isolation coat lies below", detail="It may touch the paint.")
    told = joined(order, wet)
    assert told is not None
    assert (told.level, told.headline) == (Level.ACT, wet.headline)
    assert told.detail == "Ready from 14:00. No isolation coat lies below. It may touch the paint."
    assert (joined(None, wet), joined(order, None), joined(None, None)) == (wet, order, None)
