"""What a stack of coats breaks of the trade's order: one sentence for each fault, where it bites."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.speech.words import mark, say
from studiowatch.studio.labels import ISOLATION, coat_word, stack_labels
from studiowatch.studio.words import Level, Sentence

MATTING_COATS = 2  # coats with matting agent, where the sheet names no number: common practice, no source
COMMON_PRACTICE = mark("common practice, no source")
ON_THE_SHEET = mark("the product's sheet")
NOT_REMOVED = "not meant to be removed"  # not said: how a sheet begins what it tells of removal


class Rule(StrEnum):
    """The rules; the value is how other programs read it."""

    UNKNOWN_SHEET = "unknown-sheet"
    GLOSS_FIRST = "gloss-first"
    MATTING = "matting-build-up"
    MATTING_ON_PAINT = "matting-on-paint"
    ISOLATION_MISSING = "isolation-missing"
    ISOLATION_ABOVE = "isolation-above-varnish"
    SOLVENT_OVER_WATER = "solvent-over-water"
    WATER_OVER_SOLVENT = "water-over-solvent"


HEADLINES = {
    Rule.UNKNOWN_SHEET: mark("Its data sheet is missing"),
    Rule.GLOSS_FIRST: mark("Not in this order: gloss goes below satin and matt"),
    Rule.MATTING: mark("Too many coats with matting agent"),
    Rule.MATTING_ON_PAINT: mark("Not in this order: satin or matt wants gloss below"),
    Rule.ISOLATION_MISSING: mark("No isolation coat lies below"),
    Rule.ISOLATION_ABOVE: mark("Not in this order: isolation goes below varnish"),
    Rule.SOLVENT_OVER_WATER: mark("Only once the coat below is dry through"),
    Rule.WATER_OVER_SOLVENT: mark("Water-borne over solvent-borne is not advised"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class StackCoat:
    """A coat of a stack: its key, the name of its sheet, and the sheet, None if that is not known."""

    key: str
    name: str
    sheet: DataSheet | None
    laid: bool = False

    @property
    def word(self) -> str:
        """What it is called, "" if nothing is known of it."""
        return "" if self.sheet is None else coat_word(self.sheet)

    @property
    def matting(self) -> bool:
        """Whether it holds matting agent."""
        return self.sheet is not None and self.sheet.matting_agent

    @property
    def paint(self) -> bool:
        """Whether it is paint."""
        return self.sheet is not None and self.sheet.kind is Kind.PAINT

    @property
    def varnish(self) -> bool:
        """Whether it is a clear coat but no isolation coat."""
        return self.sheet is not None and self.sheet.clear_film and self.word != ISOLATION

    @property
    def removable(self) -> bool:
        """Whether its sheet says with what it is taken off again."""
        told = "" if self.sheet is None else self.sheet.removable_with.strip().lower()
        return self.varnish and bool(told) and not told.startswith(NOT_REMOVED)


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark:
    """One thing that a coat to come breaks, said at that coat, with where the rule comes from."""

    rule: Rule
    coat_key: str
    level: Level
    sentence: str
    basis: str


def check_stack(coats: Sequence[StackCoat]) -> tuple[Remark, ...]:
    """Return what the coats to come of a stack break, from the lowest up; what is laid cannot be helped any more."""
    labels = _labels(coats)
    found = [
        remark for at, coat in enumerate(coats) if not coat.laid for remark in _remarks(coats[:at], coat, labels, at)
    ]
    seen: set[Rule] = set()
    kept = []
    for remark in found:
        if remark.rule is Rule.ISOLATION_MISSING and remark.rule in seen:
            continue  # once for a piece: it is the same coat that is missing
        seen.add(remark.rule)
        kept.append(remark)
    return tuple(kept)


def check_laying(laid: Sequence[StackCoat], coat: StackCoat) -> tuple[Remark, ...]:
    """Return what laying `coat` on what is laid would break; the same rules as for a plan."""
    return tuple(_remarks(laid, coat, _labels([*laid, coat]), len(laid)))


def laying_sentence(laid: Sequence[StackCoat], coat: StackCoat, *, is_through: bool) -> Sentence | None:
    """Return what laying `coat` now would break, the worst first, or None; `is_through` if what lies there is."""
    found = [
        remark for remark in check_laying(laid, coat) if not (is_through and remark.rule is Rule.SOLVENT_OVER_WATER)
    ]
    if not found:
        return None
    first = max(found, key=lambda remark: remark.level)
    return Sentence(
        level=max(first.level, Level.CAUTION),
        headline=say(HEADLINES[first.rule]),
        detail=" ".join(remark.sentence for remark in found),
        advice=say("The product's own sheet comes first."),
    )


def joined(one: Sentence | None, other: Sentence | None) -> Sentence | None:
    """Return two things that stand against a coat as one, the worse first."""
    if one is None or other is None:
        return one or other
    return one.with_other(other)


def needs_dry_through(below: DataSheet | None, above: DataSheet | None) -> bool:
    """Return whether a coat of `above` may go on one of `below` only once that is dry through; None is not known.

    Solvent-borne on what is not: common practice, no source. No field of a data sheet says otherwise.
    """
    return (
        below is not None
        and above is not None
        and above.kind is Kind.SOLVENTBORNE
        and below.kind is not Kind.SOLVENTBORNE
    )


def _labels(coats: Sequence[StackCoat]) -> list[str]:
    named = iter(stack_labels([coat.sheet for coat in coats if coat.sheet is not None]))
    return [coat.name if coat.sheet is None else next(named) for coat in coats]


def _remarks(below: Sequence[StackCoat], coat: StackCoat, labels: Sequence[str], at: int) -> Iterator[Remark]:
    if coat.sheet is None:
        yield Remark(
            rule=Rule.UNKNOWN_SHEET,
            coat_key=coat.key,
            level=Level.ACT,
            sentence=say(
                "There is no data sheet {name}: put it among your sheets, or plan another coat.", name=repr(coat.name)
            ),
            basis=say("without its sheet nothing is known of it"),
        )
        return
    yield from _on_sheen(below, coat, labels, at)
    yield from _on_matting(below, coat, labels, at)
    yield from _on_isolation(below, coat, labels, at)
    yield from _on_kinds(below, coat, labels, at)


def _on_sheen(below: Sequence[StackCoat], coat: StackCoat, labels: Sequence[str], at: int) -> Iterator[Remark]:
    top_matting = next((labels[n] for n in reversed(range(at)) if below[n].matting), None)
    if coat.varnish and not coat.matting and top_matting is not None:
        yield _remark(
            Rule.GLOSS_FIRST,
            coat,
            say(
                "{coat} over {below} undoes it: lay gloss first, satin or matt last.",
                coat=_first(labels[at]),
                below=top_matting,
            ),
        )
    if coat.matting and (at == 0 or below[-1].paint):
        first = _first(labels[at])
        on_paint = say(
            "{coat} straight on the paint dulls its darks unevenly: lay isolation, then gloss, below it.", coat=first
        )
        at_first = say(
            "{coat} as the first coat dulls its darks unevenly: lay isolation, then gloss, below it.", coat=first
        )
        yield _remark(Rule.MATTING_ON_PAINT, coat, on_paint if at else at_first)


def _on_matting(below: Sequence[StackCoat], coat: StackCoat, labels: Sequence[str], at: int) -> Iterator[Remark]:
    if not coat.matting:
        return
    matting = [one for one in (*below, coat) if one.matting]
    named = [one.sheet.max_matting_coats for one in matting if one.sheet and one.sheet.max_matting_coats is not None]
    most = min(named, default=MATTING_COATS)
    if len(matting) > most:
        yield Remark(
            rule=Rule.MATTING,
            coat_key=coat.key,
            level=Level.CAUTION,
            sentence=say(
                "{coat} is coat {number} with matting agent, and {most} are the most: more dull the colours below. "
                "Build up with gloss instead.",
                coat=_first(labels[at]),
                number=len(matting),
                most=most,
            ),
            basis=say(ON_THE_SHEET if named else COMMON_PRACTICE),
        )


def _on_isolation(below: Sequence[StackCoat], coat: StackCoat, labels: Sequence[str], at: int) -> Iterator[Remark]:
    if coat.removable and not any(one.word == ISOLATION for one in below):
        yield _remark(
            Rule.ISOLATION_MISSING,
            coat,
            say(
                "{coat} can be taken off again, but no isolation coat lies below it: taking it off may "
                "touch the paint. Lay isolation first.",
                coat=_first(labels[at]),
            ),
        )
    if coat.word == ISOLATION and any(one.varnish for one in below):
        yield _remark(
            Rule.ISOLATION_ABOVE,
            coat,
            say("Isolation over varnish locks that in: it belongs on the paint, below all varnish."),
        )


def _on_kinds(below: Sequence[StackCoat], coat: StackCoat, labels: Sequence[str], at: int) -> Iterator[Remark]:
    lower = below[-1] if below else None
    if needs_dry_through(None if lower is None else lower.sheet, coat.sheet):
        yield _remark(
            Rule.SOLVENT_OVER_WATER,
            coat,
            say(
                "{coat} is solvent-borne and {below} below is water-borne: only once that is dry through; "
                "the plan waits for it.",
                coat=_first(labels[at]),
                below=labels[at - 1],
            ),
            Level.CALM,
        )
    is_over_solvent = lower is not None and lower.sheet is not None and lower.sheet.kind is Kind.SOLVENTBORNE
    if is_over_solvent and coat.sheet is not None and coat.sheet.kind is not Kind.SOLVENTBORNE:
        yield _remark(
            Rule.WATER_OVER_SOLVENT,
            coat,
            say(
                "{coat} is water-borne and {below} below is solvent-borne: not advised, it may bead and not hold. "
                "Stay with one kind, unless the product's sheet allows it.",
                coat=_first(labels[at]),
                below=labels[at - 1],
            ),
        )


def _remark(rule: Rule, coat: StackCoat, sentence: str, level: Level = Level.CAUTION) -> Remark:
    return Remark(rule=rule, coat_key=coat.key, level=level, sentence=sentence, basis=say(COMMON_PRACTICE))


def _first(label: str) -> str:
    return label[:1].upper() + label[1:]
