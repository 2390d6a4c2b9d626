"""In which format a port speaks, told from some of its bytes."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from studiowatch.board.baud import is_wrong_rate
from studiowatch.board.loose_bytes import LooseLines
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.loose_lines import Row, Style, Words, read_loose_line
from studiowatch.board.mapping import ColumnMapping
from studiowatch.speech.words import say


@dataclass(frozen=True, slots=True, kw_only=True)
class Format:
    """How a port speaks.

    Attributes
    ----------
    words : str
        For her: "checked lines", "JSON", "wrong baud rate"; "" if nothing came.
    style : Style or None
        How an unchecked sketch writes its numbers.
    mapping : ColumnMapping or None
        What its columns mean, as far as so few lines tell.
    """

    words: str
    style: Style | None = None
    mapping: ColumnMapping | None = None


def describe(lines: bytes) -> Format:
    """Return the format of `lines`, bytes as they came from a port; the first and last line may be torn."""
    intake = LooseIntake()
    intake.feed(lines, 0)
    if intake.is_checked:
        return Format(words=say("checked lines"))
    if is_wrong_rate(lines):
        return Format(words=say("wrong baud rate"))
    style = _style(lines)
    if style:
        return Format(words=say(style.value), style=style, mapping=intake.mapping)
    if intake.counts.good:
        return Format(words=say("text without numbers"))
    return Format(words=say("unknown lines") if lines.strip() else "")


def _style(lines: bytes) -> Style | None:
    """Return the style of most lines that hold numbers."""
    header: tuple[str, ...] = ()
    styles: Counter[Style] = Counter()
    for line in LooseLines(mid_line=True).feed(lines):
        found = read_loose_line(line.rstrip(b"\r\n"), header)
        if isinstance(found, Row):
            styles[found.style] += 1
        elif isinstance(found, Words) and found.header:
            header = found.header
    return styles.most_common(1)[0][0] if styles else None
