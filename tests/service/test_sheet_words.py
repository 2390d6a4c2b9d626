"""What the built-in sheets say can all be said in another language."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.resources import files

from studiowatch.coats.data_sheet import DataSheet
from studiowatch.coats.sheet_file import read_sheet
from studiowatch.service.sheet_words import GENERIC, TEXTS, in_her_language
from studiowatch.speech.words import speak_by


def as_filed() -> Iterator[DataSheet]:
    """Yield each built-in sheet as its file has it."""
    for entry in (files("studiowatch.resources") / "sheets").iterdir():
        if entry.name.endswith(".toml"):
            yield read_sheet(entry.read_text("utf-8"), entry.name)


def test_the_translators_get_exactly_what_the_built_in_sheets_say() -> None:
    """No text of a file is missing from the table, and none stands there that no file has any more."""
    texts = {text for sheet in as_filed() for text in (sheet.title, sheet.removable_with, *sheet.cautions) if text}

    assert texts == TEXTS
    assert all(sheet.title.endswith(GENERIC) for sheet in as_filed())


def test_a_sheet_speaks_the_language_that_is_spoken() -> None:
    """The title, the cautions and what takes it off are said; its name, by which coats keep it, is not."""
    filed = next(as_filed())
    speak_by(lambda text, _about, _number: text.upper())
    try:
        said = in_her_language(filed)
    finally:
        speak_by(None)

    assert said.title == filed.title.upper()
    assert said.cautions == tuple(caution.upper() for caution in filed.cautions)
    assert said.removable_with == filed.removable_with.upper()
    assert said.name == filed.name
