"""What the service says in German and in US units, as the translators' files have it."""

from __future__ import annotations

import importlib.util
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from types import ModuleType

import pytest

from studiowatch.board.events import BoardTrouble, LineCounts
from studiowatch.coats.stages import Stage
from studiowatch.service.bench import check_amount
from studiowatch.service.board_now import trouble_sentence
from studiowatch.service.commands import Refused
from studiowatch.service.happenings import StageHappened
from studiowatch.service.local_time import clock_text, dated_text, when_text
from studiowatch.service.record_page import page
from studiowatch.service.sheet_shelf import SheetShelf
from studiowatch.speech.units import METRIC, US, Numbers, choose
from studiowatch.speech.words import speak_by
from studiowatch.store.studio_faults import StudioFileError
from studiowatch.store.studio_file import read_studio
from studiowatch.studio.finishing_record import RoomWhileWet, Spread, finishing_record
from studiowatch.studio.modelled import Modelled, TimeRange
from studiowatch.studio.pieces import Coat, Finding, Look, Outcome, Piece

LANGUAGES = Path(__file__).resolve().parents[2] / "resources" / "languages"
HOUR_MS = 3_600_000


def at_ms(hour: int, minute: int, day: int = 2) -> int:
    """Return a time of March 2026 by the clock of the computer that tests, UTC ms."""
    return round(datetime(2026, 3, day, hour, minute).astimezone(UTC).timestamp() * 1000)


@pytest.fixture(scope="module")
def gather() -> ModuleType:
    spec = importlib.util.spec_from_file_location("gather", LANGUAGES / "gather.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules.setdefault("gather", module)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def _in_german(gather: ModuleType) -> Iterator[None]:
    known = {(one.text, one.about): forms for one, forms in gather.translated(LANGUAGES / "de").items() if forms}

    def translate(text: str, about: str, number: int) -> str:
        forms = known.get((text, about), ("",))
        return str(forms[0] if number == 1 else forms[-1])

    speak_by(translate)
    yield
    speak_by(None)


@pytest.fixture
def _in_us_units() -> Iterator[None]:
    choose(US)
    yield
    choose(METRIC)


@pytest.fixture
def record_html(tmp_path: Path) -> Callable[[], str]:
    """Return what makes the page of a piece with a paint, and a gloss laid in a room of 20 to 22 °C."""
    gloss = Coat(
        key="gloss",
        sheet="gloss-waterborne",
        laid_ms=at_ms(14, 5),
        volume_mL=24.0,
        thinned_pct=2.5,
        looks=(Look(key="look", time_ms=at_ms(16, 0), finding=Finding.MILKY),),
        outcome=Outcome.MILKY_IN_PATCHES,
        seen_ms=at_ms(8, 0, day=4),
    )
    paint = Coat(key="paint", sheet="paint-brushed", laid_ms=at_ms(0, 30, day=1))
    kiln = Piece(
        key="kiln", title="Kiln", width_cm=40.0, height_cm=60.0, support="paper on panel", coats=(paint, gloss)
    )
    room = RoomWhileWet(
        temperature_C=Spread(least=20.0, mean=21.0, greatest=22.0),
        humidity_pct=Spread(least=48.0, mean=50.0, greatest=52.0),
        moving_min=5,
        read_min=20,
        whole_min=30,
        trace=((at_ms(14, 6), 20.0, 48.0), (at_ms(14, 16), 22.0, 52.0)),
    )
    modelled = Modelled(
        set_ms=at_ms(14, 50),
        read_ms=at_ms(1, 0, day=4),
        clear=TimeRange(earliest_ms=at_ms(15, 40), middle_ms=at_ms(16, 10), latest_ms=at_ms(16, 45)),
        recoat=TimeRange(earliest_ms=at_ms(21, 0), middle_ms=at_ms(23, 0), latest_ms=at_ms(1, 0, day=3)),
        ready_ms=at_ms(1, 0, day=3),
    )
    sheets = SheetShelf.open(tmp_path).sheets

    def made() -> str:
        record = finishing_record(
            kiln,
            sheets,
            lambda laid_ms, _: room if laid_ms == gloss.laid_ms else None,
            now_ms=at_ms(9, 0, day=5),
            modelled=lambda number: modelled if number == 2 else None,
        )
        return page(record)

    return made


@pytest.mark.usefixtures("_in_german", "_in_us_units")
def test_that_the_finishing_record_is_german_and_in_us_units(record_html: Callable[[], str]) -> None:
    html = record_html()
    assert '<html lang="de">' in html
    assert "<title>Kiln: Abschlussprotokoll</title>" in html
    assert "Was darauf liegt" in html
    assert "auf Papier auf Holztafel" in html
    # 20, 21 and 22 °C are 68, 69.8 and 71.6 °F; 0.15 m/s is 29.5 ft/min
    assert "solange sie nass war, 69.8 °F (68.0 bis 71.6), 50 % r. F. (48 bis 52), 5 min bewegte Luft" in html
    assert "; gemessen in 20 von 30 min." in html
    assert "als bewegt gilt Luft ab 30 ft/min" in html
    assert "bei 73.4 °F und 50 % r. F." in html
    # 24 mL on 0.24 m² are 100 µm, which are 3.9 mil
    assert "3.9 / " in html
    assert " mil trocken</text>" in html
    assert ">°F</text>" in html
    assert ", 2.5 % verdünnt" in html
    assert "Geprüft 2. März 2026, 4:00 pm: noch milchig." in html
    assert "Ergebnis: fleckig milchig, gesehen 4. März 2026, 8:00 am." in html
    assert "klar 2. März 2026, 4:10 pm (3:40 pm bis 4:45 pm)" in html
    assert "bereit für die nächste Schicht ab 3. März 2026, 1:00 am" in html


def test_that_the_record_says_the_modelled_times_in_english(record_html: Callable[[], str]) -> None:
    html = record_html()
    assert "By the model: clear 2 Mar 2026, 16:10 (15:40 to 16:45); " in html
    assert "dry to recoat 2 Mar 2026, 23:00 (21:00 to Tue 3 Mar 01:00); " in html
    assert "ready for the next coat from 3 Mar 2026, 01:00." in html
    assert "in brackets the range in which eight in ten lie" in html
    assert '<html lang="en">' in html


@pytest.mark.usefixtures("_in_german")
def test_that_the_sheets_are_listed_by_their_german_titles(tmp_path: Path) -> None:
    shelf = SheetShelf.open(tmp_path)
    gloss = shelf.get("gloss-waterborne")
    for number, title in enumerate(("Zaponlack", "Überzug", "uralter Firnis")):
        shelf.put(replace(gloss, name=f"own-{number}", title=title))
    assert [entry.sheet.title.removesuffix(" (allgemein)") for entry in shelf.entries()] == [
        "Acrylfarbe, gegossen",
        "Acrylfarbe, gestrichen",
        "Glanzfirnis, lösemittelhaltig",
        "Glanzfirnis, wasserbasiert",
        "Glanzfirnis, wasserbasiert, dicke Schicht",
        "Glanzfirnis, wasserbasiert, dünne Schicht",
        "Mattfirnis, wasserbasiert",
        "Seidenmattfirnis, lösemittelhaltig",
        "Seidenmattfirnis, wasserbasiert",
        "Trennschicht, wasserbasiert",
        "Überzug",
        "uralter Firnis",
        "Zaponlack",
    ]


@pytest.mark.usefixtures("_in_german", "_in_us_units")
def test_that_a_refusal_is_german_and_in_her_units() -> None:
    # 10 000, 5 and 5000 µm by 25.4 µm in a mil: NIST SP 811 (2008), B.8
    choose(replace(US, numbers=Numbers.COMMA))
    with pytest.raises(Refused) as refused:
        check_amount(volume_mL=None, grams=None, wet_um=10_000.0)
    assert str(refused.value) == (
        "Die aufgetragene Menge ist 393,701 mil; erlaubt sind 0,19685 bis 196,85 mil. Berichtigen Sie sie."
    )


@pytest.mark.usefixtures("_in_german")
def test_that_the_board_and_a_stage_speak_german() -> None:
    trouble = BoardTrouble(time_ms=0, code="nak", message="", counts=LineCounts())
    assert trouble_sentence(trouble) == (
        "Die Messplatine meldet: der Sensor antwortet nicht; prüfen Sie die Leitungen des Sensors (nak)."
    )
    stage = StageHappened(
        time_ms=0, piece_title="Kiln", coat_number=2, coat_label="glänzend", stage=Stage.DRY_TO_RECOAT
    )
    assert stage.line() == "Kiln: glänzend ist überarbeitbar"
    assert stage.document()["stage"] == "dry_to_recoat"


@pytest.mark.usefixtures("_in_german")
def test_that_a_fault_of_a_studio_file_is_german_although_its_fields_were_made_before() -> None:
    with pytest.raises(StudioFileError) as faults:
        read_studio('[[piece]]\ntitle = "Kiln"\nwidth_cm = -4\nheight_cm = 40\n', "studio.toml")
    assert str(faults.value) == (
        'studio.toml, Zeile 3: Bild 1 "Kiln": width_cm ist -4; erlaubt: eine Zahl über 0, bis 1000 (cm).'
    )


@pytest.mark.usefixtures("_in_us_units")
def test_that_times_follow_her_clock() -> None:
    assert clock_text(at_ms(14, 7)) == "2:07 pm"
    assert dated_text(at_ms(0, 30)) == "2 Mar 2026, 12:30 am"
    assert when_text(at_ms(14, 7), at_ms(9, 0, day=3)) == "Mon 2 Mar 2:07 pm"
