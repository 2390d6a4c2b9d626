"""What she may choose of a finishing record before it is saved: without Qt."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum

from studiowatch.speech.words import mark, say

PAPER_WORDS = {"a4": "A4", "letter": mark("US Letter")}
_LONGEST = 60  # characters of a title in a file's name


class Form(Enum):
    """A kind of file: the title of its dialog, the filter of the names, the suffix."""

    PDF = (mark("Save the finishing record as PDF"), mark("PDF (*.pdf)"), "pdf")
    HTML = (mark("Save the finishing record as a page"), mark("HTML page (*.html)"), "html")

    @property
    def title(self) -> str:
        """Title of the dialog that asks where to."""
        return say(self.value[0])

    @property
    def files(self) -> str:
        """Filter of the names."""
        return say(self.value[1])

    @property
    def suffix(self) -> str:
        """End of the name, without its dot."""
        return self.value[2]


@dataclass(frozen=True, slots=True, kw_only=True)
class FinishingChoice:
    """The paper, a key of PAPER_WORDS, and whether her notes are part of it."""

    paper: str = "a4"
    with_notes: bool = True


def file_name(title: str, form: Form) -> str:
    """Return a name that every disk takes: letters and digits of the title, with hyphens between."""
    stem = re.sub(r"[^\w]+", "-", title).strip("-_").lower()[:_LONGEST].rstrip("-_")
    return say("{title}-finishing-record", title=stem or say("piece")) + f".{form.suffix}"
