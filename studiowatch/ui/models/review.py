"""A review in the words of its page."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.pieces import Outcome
from studiowatch.studio.review_causes import Cause
from studiowatch.studio.review_views import LIKELY, UNLIKELY, Change, Figures, FoundCause, Review, verdict
from studiowatch.studio.review_words import amount, lasted
from studiowatch.ui.models.seen_words import OUTCOME_WORDS
from studiowatch.ui.models.times import clock_words
from studiowatch.ui.models.tones import Tone

STRONG, SOME = 0.4, 0.1  # shares from which a cause is drawn in the colours of act and of caution; judgement
NOTHING_SEALED = 0.05  # g/m², which is shown as 0; the weight of a breath on a mirror: assumption


@dataclass(frozen=True, slots=True, kw_only=True)
class CauseRow:
    """One cause: its title and share in words, the share 0-1 for its bar, and sentences; `basis` is its tool tip.

    `is_known` is False where nothing in the records explains it.
    """

    title: str
    percent: str
    share: float
    tone: Tone
    sentences: tuple[str, ...]
    often: str
    basis: str
    cause: Cause

    @property
    def is_known(self) -> bool:
        """Whether the records explain it."""
        return self.cause is not Cause.UNKNOWN

    @property
    def spoken(self) -> str:
        """The whole row, for a reader of the screen."""
        return f"{self.title}, {self.percent}. {' '.join(self.sentences)} {self.often}".strip()


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangeRow:
    """One row of the table: what is changed, what the coat meets then, and what the model says."""

    cells: tuple[str, ...]
    verdict: str
    tone: Tone


CHANGE_HEADS = ("", mark("coat below was"), mark("room while wet"), mark("sealed in"), mark("model says"))


@dataclass(frozen=True, slots=True, kw_only=True)
class ReviewWords:
    """All that the page says.

    Attributes
    ----------
    steps, cautions : tuple of str
        What to do now, numbered by the page, and the cautions that belong to it.
    blind : tuple of str
        What the records do not show.
    """

    title: str
    subtitle: str
    headline: str
    causes: tuple[CauseRow, ...]
    changes: tuple[ChangeRow, ...]
    steps: tuple[str, ...]
    cautions: tuple[str, ...]
    blind: tuple[str, ...]
    learnt: str


def review_words(review: Review, now_ms: int, zone: tzinfo | None = None) -> ReviewWords:
    """Return a review in words, times seen from `now_ms`, UTC ms."""
    return ReviewWords(
        title=title_of(review),
        subtitle=_subtitle(review, now_ms, zone),
        headline=review.headline,
        causes=tuple(_cause_row(cause) for cause in review.causes),
        changes=(_row(say("As it was"), review.chance, review.as_it_was), *map(_change_row, review.changes)),
        steps=_steps(review),
        cautions=tuple(dict.fromkeys(caution for one in (review.remedy, *review.further) for caution in one.cautions)),
        blind=review.blind_spots,
        learnt=_learnt(review.learnt_from),
    )


def title_of(review: Review) -> str:
    """Return the page's title: a coat that came out clear, or was not looked at, is not asked why it clouded."""
    if review.outcome is None:
        return say("Would it cloud?")
    return say("Why did it come out clear?") if review.outcome is Outcome.CLEAR else say("Why did it cloud?")


def _subtitle(review: Review, now_ms: int, zone: tzinfo | None) -> str:
    laid = clock_words(review.laid_ms, now_ms, zone)
    parts = [review.piece_title, review.coat_label, say("laid {time}", time=laid)]
    if review.outcome is None:
        parts.append(say("how it came out is not recorded"))
    elif review.seen_ms is None:
        parts.append(say("recorded {outcome}", outcome=say(OUTCOME_WORDS[review.outcome])))
    else:
        seen = clock_words(review.seen_ms, now_ms, zone)
        parts.append(say("recorded {outcome} {time}", outcome=say(OUTCOME_WORDS[review.outcome]), time=seen))
    return " · ".join(parts)


def _cause_row(cause: FoundCause) -> CauseRow:
    tone = Tone.ACT if cause.share >= STRONG else Tone.CAUTION if cause.share >= SOME else Tone.MUTED
    return CauseRow(
        title=cause.title,
        percent=f"{100.0 * cause.share:.0f}\N{NO-BREAK SPACE}%",
        share=cause.share,
        tone=tone,
        sentences=cause.evidence,
        often=cause.often,
        basis=cause.basis,
        cause=cause.cause,
    )


def _change_row(change: Change) -> ChangeRow:
    return _row(change.change, change.chance, change.figures)


def _row(words: str, chance: float, met: Figures) -> ChangeRow:
    room = say("not known")
    if met.temperature_C is not None and met.humidity_pct is not None:
        room = f"{chosen().temperature(met.temperature_C)}, {met.humidity_pct:.0f} %"
    below = say("none", about="coat") if met.below_age_ms is None else lasted(met.below_age_ms)
    sealed = "0 g/m²" if met.sealed_in_g_m2 < NOTHING_SEALED else f"{amount(met.sealed_in_g_m2)} g/m²"
    return ChangeRow(
        cells=(words, below, room, sealed),
        verdict=f"{verdict(chance)}, {100.0 * chance:.0f}\N{NO-BREAK SPACE}%",
        tone=_likely_tone(chance),
    )


def _likely_tone(chance: float) -> Tone:
    """Return the tone of what `verdict` says."""
    if chance >= LIKELY:
        return Tone.ACT
    return Tone.INK if chance < UNLIKELY else Tone.CAUTION


def _steps(review: Review) -> tuple[str, ...]:
    """Return the steps of the first cause, and those of the others that are not the same."""
    return tuple(dict.fromkeys(step for one in (review.remedy, *review.further) for step in one.steps))


def _learnt(coats: int) -> str:
    if not coats:
        return say(
            "Weighed by common judgement alone: no coat here has a recorded outcome yet. Likely is not proven. "
            "Record how each came out (Ctrl+O): it learns from that."
        )
    return say_counted(
        coats,
        "Weighed by what 1 coat here taught. Likely is not proven.",
        "Weighed by what {n} coats here taught. Likely is not proven.",
    )
