"""German as the translators wrote it, read from their files: no test of words waits for the `.qm` to be made."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from xml.etree import ElementTree as ET

from studiowatch.speech.words import NO_NUMBER, speak_by

FOLDER = Path(__file__).resolve().parents[2] / "resources" / "languages" / "de"


@cache
def _written() -> dict[tuple[str, str], tuple[str, ...]]:
    written: dict[tuple[str, str], tuple[str, ...]] = {}
    for path in sorted(FOLDER.glob("*.ts")):
        for message in ET.parse(path).iter("message"):  # noqa: S314 - our own file
            translation = message.find("translation")
            if translation is not None and translation.get("type") != "unfinished":
                forms = [form.text or "" for form in translation.iter("numerusform")] or [translation.text or ""]
                written[message.findtext("source", ""), message.findtext("comment", "")] = tuple(forms)
    return written


def translated(text: str, about: str, number: int) -> str:
    forms = _written().get((text, about), ("",))
    return forms[0] if number in {NO_NUMBER, 1} else forms[-1]  # German: one form for one, one for all others


def speak_german() -> None:
    speak_by(translated)
