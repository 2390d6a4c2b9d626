"""The rack: what each piece's card says."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import tzinfo

from studiowatch.coats.stages import Stage, Surface
from studiowatch.service.piece_view import CoatView, PieceView, StageTime
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import Hours, chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.plan_words import slack_text
from studiowatch.studio.pouring import VERY_THICK
from studiowatch.studio.unready import Unready
from studiowatch.ui.models.film import Section, full_scale_um, section_of
from studiowatch.ui.models.learning import learnt_line, learnt_sentence
from studiowatch.ui.models.sealing import blush_words, sealed_words
from studiowatch.ui.models.seen_words import STAGE_WORDS, SURFACE_WORDS, capital
from studiowatch.ui.models.times import (
    DAY_MS,
    clock_words,
    day_words,
    from_day_words,
    lasting_words,
    near_words,
    near_words_beside,
)
from studiowatch.ui.models.tones import Tone

WRAP_STEP = mark("fit to wrap")  # as the watch names the step after the last coat
_NO_BREAK = "\u00a0"
_SHOWN_AHEAD = (Stage.SET_TO_TOUCH, Stage.DUST_FREE, Stage.CLEAR, Stage.DRY_TO_TOUCH)


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceCard:
    """All the words of one card, and the section it draws.

    Attributes
    ----------
    state, state_tone
        The top coat in words.
    cautions : tuple of str
        Of the top coat: why it is not watched, that it may have blushed, that a test does not fit it.
    sealed : str
        What the top coat sealed in, or "".
    learnt, learnt_whole : str
        What was learnt of its product here, in a few words and in a sentence, or "".
    ahead : str
        The next stage on the way, or "".
    step, ready, ready_tone, likely
        What comes next, from when, and from when perhaps; or why not.
    due, slack, slack_tone
        The day it is due and what is left until then, or "".
    full_um : float
        Thickness that fills the section's height: one figure for the whole rack.
    """

    key: str
    title: str
    size: str
    state: str
    state_tone: Tone
    cautions: tuple[str, ...]
    sealed: str
    learnt: str
    learnt_whole: str
    ahead: str
    step: str
    ready: str
    ready_tone: Tone
    likely: str
    due: str
    slack: str
    slack_tone: Tone
    section: Section
    full_um: float

    @property
    def spoken(self) -> str:
        """Return the card as one phrase for a screen reader."""
        said = (
            self.title,
            self.size,
            self.state,
            *self.cautions,
            self.sealed,
            f"{self.step} {self.ready}".strip(),
            self.likely,
            self.due,
            self.slack,
            self.learnt_whole,
        )
        return ". ".join(part for part in said if part)


def rack_cards(
    snapshot: Snapshot, zone: tzinfo | None = None, *, sheet_um: Mapping[str, float] | None = None
) -> tuple[PieceCard, ...]:
    """Return one card per piece, in the order of the rack; `sheet_um` holds each sheet's wet thickness, µm."""
    sections = [section_of(piece) for piece in snapshot.pieces]
    full_um = full_scale_um(sections)
    now_ms = snapshot.time_ms
    ready = [_Ready.of(piece, now_ms, zone, sheet_um or {}) for piece in snapshot.pieces]
    return tuple(
        _card(piece, section, when, full_um=full_um, snapshot=snapshot, zone=zone)
        for piece, section, when in zip(snapshot.pieces, sections, ready, strict=True)
    )


def _card(
    piece: PieceView, section: Section, ready: _Ready, *, full_um: float, snapshot: Snapshot, zone: tzinfo | None
) -> PieceCard:
    now_ms = snapshot.time_ms
    state, state_tone = state_words(piece.top, now_ms, zone)
    slack, slack_tone = _slack(piece)
    return PieceCard(
        key=piece.key,
        title=piece.title,
        size=chosen().size(piece.width_cm, piece.height_cm),
        state=state,
        state_tone=state_tone,
        cautions=_cautions(piece.top, now_ms, zone),
        sealed=sealed_words(piece.top) if piece.top else "",
        learnt=learnt_line(piece, snapshot.learnt),
        learnt_whole=learnt_sentence(piece, snapshot.learnt),
        ahead=_ahead(piece, now_ms, zone),
        step=_step_words(piece),
        ready=ready.words,
        ready_tone=ready.tone,
        likely=ready.likely,
        due=say("due {day}", day=day_words(piece.due)) if piece.due else "",
        slack=slack,
        slack_tone=slack_tone,
        section=section,
        full_um=full_um,
    )


def _step_words(piece: PieceView) -> str:
    if piece.next_step == say(WRAP_STEP):
        return ""
    unit = chosen().volume.value
    return capital(piece.next_step).replace(f" {unit}", f"{_NO_BREAK}{unit.replace(' ', _NO_BREAK)}")


def _cautions(top: CoatView | None, now_ms: int, zone: tzinfo | None) -> tuple[str, ...]:
    if top is None:
        return ()
    return tuple(filter(None, (top.unwatched, capital(blush_words(top, now_ms, zone)), top.doubt)))


def state_words(coat: CoatView | None, now_ms: int, zone: tzinfo | None = None) -> tuple[str, Tone]:
    """Return what the top coat is, in words, and the tone to say it in."""
    if coat is None or coat.laid_ms is None:
        return say("No coat laid yet"), Tone.MUTED
    name = capital(coat.label)
    if coat.surface is None:
        return say("{coat} · not watched", coat=name), Tone.CAUTION
    age = lasting_words(now_ms - coat.laid_ms)
    cover = f" · {say('covered')}" if coat.covered else ""
    if coat.surface is not Surface.DRY:
        fresh = mark("{coat} · {surface} and milky, {age}") if coat.milky else mark("{coat} · {surface}, {age}")
        return say(fresh, coat=name, surface=say(SURFACE_WORDS[coat.surface]), age=age) + cover, Tone.LINK
    words, tone = _dry_words(coat, name, now_ms, zone)
    return words + cover, tone


def _dry_words(coat: CoatView, name: str, now_ms: int, zone: tzinfo | None) -> tuple[str, Tone]:
    """Return what a coat whose film is dry to touch is: as she found it last, where that stands, else as modelled."""
    if coat.unready is not None and not _is_ready_again(coat):
        found = {"finding": coat.unready.finding.word, "time": clock_words(coat.unready.found_ms, now_ms, zone)}
        return say("{coat} · found {finding}, {time}", coat=name, **found), Tone.CAUTION
    if coat.milky:
        return say("{coat} · dry, still milky", coat=name), Tone.LINK
    reached = [time for time in _told_stages(coat) if time.reached and time.time_ms is not None]
    last = max(reached, key=lambda time: (time.time_ms or 0, list(Stage).index(time.stage)), default=None)
    if last is None or last.time_ms is None:
        return f"{name} · {_drying(coat, now_ms)}", Tone.INK
    since = clock_words(last.time_ms, now_ms, zone)
    return say("{coat} · {stage} since {time}", coat=name, stage=say(STAGE_WORDS[last.stage]), time=since), Tone.INK


def _is_ready_again(coat: CoatView) -> bool:
    """Return whether the next coat may go on although the last test said that it may not: long enough after that."""
    recoat = coat.stage(Stage.DRY_TO_RECOAT)
    return recoat is not None and recoat.reached


def _told_stages(coat: CoatView) -> list[StageTime]:
    """Return the stages to speak of: a solvent-borne coat does not clear, it is clear from the brush on."""
    return [time for time in coat.stages if not (coat.solvent and time.stage is Stage.CLEAR)]


def _drying(coat: CoatView, now_ms: int) -> str:
    age_ms = now_ms - (coat.laid_ms or now_ms)
    if not coat.clear_film:
        return say("drying through, day {number}", number=age_ms // DAY_MS + 1)
    return say("drying, {age}", age=lasting_words(age_ms))


def _ahead(piece: PieceView, now_ms: int, zone: tzinfo | None) -> str:
    top = piece.top
    if top is None:
        return ""
    coming = [
        (time.time_ms, say(STAGE_WORDS[time.stage]))
        for time in _told_stages(top)
        if time.stage in _SHOWN_AHEAD and not time.reached and time.time_ms is not None
    ]
    if not coming:
        return ""
    time_ms, words = min(coming)
    return say("{stage} {time}", stage=words, time=clock_words(time_ms, now_ms, zone))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Ready:
    """From when the next step may be taken, or why not."""

    words: str = ""
    tone: Tone = Tone.INK
    likely: str = ""

    @classmethod
    def of(cls, piece: PieceView, now_ms: int, zone: tzinfo | None, sheet_um: Mapping[str, float]) -> _Ready:
        wrapping = piece.next_step == say(WRAP_STEP)
        if piece.next_ms is None and piece.top is not None and piece.top.unready is not None:
            return _test_again(piece.top.unready, now_ms, zone)
        if piece.next_ms is None:
            return _never(piece, Stage.CURED if wrapping else Stage.DRY_TO_RECOAT, sheet_um)
        if wrapping:
            return _wrap(piece.next_ms, now_ms, zone)
        if piece.next_ms <= now_ms:
            since = clock_words(piece.next_ms, now_ms, zone)
            return cls(words=say("ready since {time}", time=since), tone=Tone.GOOD)
        ready = say("from {time}", time=_unbroken(near_words(piece.next_ms, now_ms, zone)))
        return cls(words=ready, likely=_perhaps(piece, now_ms, zone))


def _unbroken(words: str) -> str:
    """Return a time whose "am" or "pm" stays on the line of its clock."""
    return _NO_BREAK.join(words.rsplit(" ", 1)) if chosen().hours is Hours.TWELVE else words


def _wrap(next_ms: int, now_ms: int, zone: tzinfo | None) -> _Ready:
    day = from_day_words(next_ms, now_ms, zone)
    if next_ms <= now_ms:
        return _Ready(words=capital(say(WRAP_STEP)), tone=Tone.GOOD, likely=say("since {time}", time=day))
    return _Ready(words=say("wrap from {time}", time=day))


def _test_again(unready: Unready, now_ms: int, zone: tzinfo | None) -> _Ready:
    if unready.again_ms <= now_ms:
        return _Ready(words=say("test again now"), tone=Tone.CAUTION)
    again = _unbroken(near_words(unready.again_ms, now_ms, zone))
    return _Ready(words=say("test again from {time}", time=again), tone=Tone.CAUTION)


def _never(piece: PieceView, stage: Stage, sheet_um: Mapping[str, float]) -> _Ready:
    top = piece.top
    goal = top.stage(stage) if top else None
    if top is None or goal is None or goal.reached or goal.time_ms is not None:
        return _Ready()
    times = top.wet_um / sheet_um.get(top.sheet, top.wet_um)
    if times > VERY_THICK:
        thick = say("laid {times} × as thick as the sheet says", times=f"{times:.0f}")
        return _Ready(words=say("no time in sight"), tone=Tone.CAUTION, likely=thick)
    return _Ready(words=say("not in this room as it is"), tone=Tone.CAUTION)


def _perhaps(piece: PieceView, now_ms: int, zone: tzinfo | None) -> str:
    """Return from when it may be ready; what is told is the late end of that range, on the safe side."""
    if piece.next_p10_ms is None or piece.next_ms is None or piece.next_p10_ms >= piece.next_ms:
        return ""
    if piece.next_p10_ms <= now_ms:
        return say("perhaps ready already")
    words = near_words_beside(piece.next_p10_ms, piece.next_ms, now_ms, zone)
    return say("perhaps from {time}", time=words.replace(" ", _NO_BREAK))


def _slack(piece: PieceView) -> tuple[str, Tone]:
    if piece.due is None or piece.slack_days is None:
        return "", Tone.MUTED
    tone = Tone.ACT if piece.slack_days < 0 else Tone.CAUTION if piece.slack_days == 0 else Tone.GOOD
    return slack_text(piece.slack_days), tone
