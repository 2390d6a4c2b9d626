"""Prompts at the rack after a coat is laid. The times and steps are common practice, no source."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from studiowatch.speech.words import mark, say
from studiowatch.studio.labels import volume_text
from studiowatch.studio.missed import WET_LATE_MS, FilmNow, Step, missed
from studiowatch.studio.pieces import Finding
from studiowatch.studio.unready import Unready

__all__ = ["CoatToTend", "FilmNow", "Prompt", "Step", "prompt_key", "prompts_for"]

SECOND_PASS_MS = 15 * 60_000  # ms after laying: bubbles have risen and drips have gathered; common practice
COVER_MS = 20 * 60_000  # ms after laying: no more bubbles rise; common practice
IN_SECONDS_MS = 2 * 60_000  # ms before it is due from which one counts its seconds
OPEN_FILM = FilmNow()
_AT_WET_FILM = (Step.BUBBLES, Step.COVER)
NONE_BEFORE: Mapping[str, int] = MappingProxyType({})

TORCH = mark(
    "Torch only far from solvent, its vapour and the mesh cover, extinguisher at hand; the product's sheet comes first."
)
NO_FLAME = mark(
    "No torch, flame or spark: this coat gives off solvent vapour. Break bubbles with the brush; keep fresh air coming."
)
NO_TORCH_AT_COVER = mark("No torch or flame near the mesh cover.")
VAPOUR_AT_COVER = mark("No torch, flame or spark: solvent vapour gathers under the cover too. Keep fresh air coming.")
LOOK_FOR_BLUSH = mark(
    "Look too: dull or blushed does not clear by itself. If it is, see the product's sheet before the next coat."
)
SOLVENT_NEXT = mark(
    "Solvent-borne: ventilate without blowing on the piece, wear gloves, no flame or spark; "
    "dry rags flat outdoors or keep them under water in a closed metal container. The product's sheet comes first."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatToTend:
    """The topmost coat of a piece, and what comes after it.

    Attributes
    ----------
    clear_film, solvent : bool
        Whether it is a clear coat rather than paint; whether it is solvent-borne.
    clear_ms, recoat_ms, cured_ms : int or None
        Modelled UTC ms when it is clear, when it may be recoated, and when it is cured; None if it has no such stage,
        or does not reach it, or her last test speaks against it.
    is_seen_clear : bool
        True once she has seen that it is clear.
    following, following_mL, following_solvent
        Label, mL and nature of the next coat planned; None if it is the last.
    following_through : bool
        Whether that waits until this coat is dry through.
    typed_ms, read_again_ms : int or None
        Where the room is known by a typed reading: UTC ms of that, and when to read again for this coat; None if not.
    film : FilmNow
        How far its film has come.
    touch_dry_ms : int or None
        UTC ms at which its sheet has it dry to touch, where no air has dried its film yet; else None.
    untested : str
        Label of the coat below that it was laid on without a touch test or a look, or "".
    unready : Unready or None
        The last touch test or look, if that found it tacky or milky: a new one is asked for then.
    vapour_near : str
        A coat on another piece that gives off solvent vapour still, in words, or "".
    """

    coat_key: str
    laid_ms: int
    clear_film: bool
    solvent: bool = False
    is_covered: bool = False
    is_seen_clear: bool = False
    clear_ms: int | None = None
    recoat_ms: int | None = None
    cured_ms: int | None = None
    following: str | None = None
    following_mL: float | None = None
    following_solvent: bool = False
    following_through: bool = False
    typed_ms: int | None = None
    read_again_ms: int | None = None
    film: FilmNow = OPEN_FILM
    touch_dry_ms: int | None = None
    untested: str = ""
    unready: Unready | None = None
    vapour_near: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Prompt:
    """Something to do at a time, UTC ms, with the caution that belongs to it.

    `is_missed` says that its time is over by so much that other words hold, `is_useless` that it is to be left.
    """

    key: str
    coat_key: str
    step: Step
    due_ms: int
    headline: str
    caution: str = ""
    is_missed: bool = False
    is_useless: bool = False

    @property
    def text(self) -> str:
        """The whole of it, for one line."""
        return f"{self.headline}. {self.caution}" if self.caution else self.headline


def prompt_key(coat_key: str, step: Step) -> str:
    """Return the key of a prompt, the same each time it is asked for."""
    return f"{coat_key}:{step.value}"


def prompts_for(
    coat: CoatToTend, *, now_ms: int, before: Mapping[str, int] = NONE_BEFORE, given: Mapping[str, int] | None = None
) -> tuple[Prompt, ...]:
    """Return the prompts of one coat in the order of their times; done ones are the caller's to leave out.

    Parameters
    ----------
    coat : CoatToTend
        The topmost coat of a piece.
    now_ms : int
        UTC ms.
    before : mapping of str to int
        Due times given last time, UTC ms, by key. A prompt moves with the model until it is due, and then stays;
        leave out those of a coat that was corrected since.
    given : mapping of str to int, optional
        As `before`, of all coats. What is not in it, or was due later when it was given last, was asked of nobody until
        now: it is due now, however long ago it would have been. Without it, all was given as it fell due.
    """
    prompts = (*_while_wet(coat), *_when_dry(coat), *_reading(coat))
    settled = [_settled(prompt, coat, now_ms, before) for prompt in prompts]
    asked = settled if given is None else [_as_asked(prompt, now_ms, given) for prompt in settled]
    film = _film_at(coat, now_ms)
    as_they_stand = [
        _as_it_stands(prompt, film, now_ms, fell_due_ms=made.due_ms)
        for made, prompt in zip(prompts, asked, strict=True)
    ]
    still_to_do = [prompt for prompt in as_they_stand if not (prompt.is_useless and prompt.due_ms > now_ms)]
    return tuple(sorted(still_to_do, key=lambda prompt: prompt.due_ms))


def _while_wet(coat: CoatToTend) -> list[Prompt]:
    if not coat.clear_film:
        return []
    flame = say(NO_FLAME) if coat.solvent else no_torch_near(coat.vapour_near) if coat.vapour_near else say(TORCH)
    second_pass = say("Second bubble pass, scrape drips")
    prompts = [_prompt(coat, Step.BUBBLES, coat.laid_ms + SECOND_PASS_MS, second_pass, flame)]
    if not coat.is_covered:
        headline = say("Set the mesh cover when no more bubbles rise")
        caution = say(VAPOUR_AT_COVER if coat.solvent else NO_TORCH_AT_COVER)
        prompts.append(_prompt(coat, Step.COVER, coat.laid_ms + COVER_MS, headline, caution))
    look_ms = _look_ms(coat)
    if look_ms is not None:
        prompts.append(_test(coat, Step.CLARITY, look_ms, say("Has the milkiness cleared?"), _untested(coat)))
    return prompts


def _look_ms(coat: CoatToTend) -> int | None:
    """Return when to look whether a coat has cleared, UTC ms, or None if that is known, or it never was milky."""
    if coat.unready is not None and coat.unready.finding is Finding.MILKY:
        return coat.unready.likely_ms(coat.clear_ms) or coat.unready.again_ms
    return None if coat.is_seen_clear else coat.clear_ms


def no_torch_near(vapour: str) -> str:
    """Return that no torch may burn while `vapour`, a coat in words, gives off solvent in the same room."""
    return say(
        "No torch: {coat} gives off solvent vapour in this room. Break bubbles with the brush; keep fresh air.",
        coat=vapour,
    )


def _untested(coat: CoatToTend) -> str:
    """Return what to look for in a coat that was laid on one that nobody had tested."""
    if not coat.untested:
        return ""
    return say(
        "Laid on {label} without a touch test: if it stays milky, lay nothing more and keep the room dry.",
        label=coat.untested,
    )


def _when_dry(coat: CoatToTend) -> list[Prompt]:
    again_ms = _again_ms(coat)
    if coat.following is None:
        if again_ms is None or coat.cured_ms is not None:
            return []
        return [_test(coat, Step.TOUCH_TEST, again_ms, say("Touch test at an edge before it is wrapped"), "")]
    test = say("Touch test at an edge before the next coat")
    look = say(LOOK_FOR_BLUSH) if coat.solvent else ""
    if coat.recoat_ms is None:
        return [] if again_ms is None else [_test(coat, Step.TOUCH_TEST, again_ms, test, look)]
    following = coat.following
    if coat.following_mL is not None:
        following = f"{following}, {volume_text(coat.following_mL)}"
    lay = say("Recoat: {coat}", coat=following) if coat.clear_film else say("Lay {coat}", coat=following)
    caution = say(SOLVENT_NEXT) if coat.following_solvent else ""
    apart = "@through" if coat.following_through else ""  # what fell due for a coat that waits less is not due for this
    return [
        _test(coat, Step.TOUCH_TEST, coat.recoat_ms, test, look, apart=apart),
        _prompt(coat, Step.RECOAT, coat.recoat_ms, lay, caution, apart=apart),
    ]


def _again_ms(coat: CoatToTend) -> int | None:
    """Return when a coat that was found tacky last is to be tested again, UTC ms, or None if it was not."""
    if coat.unready is None or coat.unready.finding is not Finding.TACKY:
        return None
    return coat.unready.again_ms


def _reading(coat: CoatToTend) -> list[Prompt]:
    """Return the prompt to read the room, one for each reading: it is the next one that answers it."""
    if coat.typed_ms is None or coat.read_again_ms is None:
        return []
    return [
        Prompt(
            key=prompt_key(f"room@{coat.typed_ms}", Step.READ_ROOM),
            coat_key=coat.coat_key,
            step=Step.READ_ROOM,
            due_ms=coat.read_again_ms,
            headline=say("Read the hygrometer, and type it"),
        )
    ]


def _prompt(coat: CoatToTend, step: Step, due_ms: int, headline: str, caution: str = "", *, apart: str = "") -> Prompt:
    """Return a prompt of `coat`; with `apart` another one than without."""
    return Prompt(
        key=prompt_key(f"{coat.coat_key}{apart}", step),
        coat_key=coat.coat_key,
        step=step,
        due_ms=due_ms,
        headline=headline,
        caution=caution,
    )


def _test(coat: CoatToTend, step: Step, due_ms: int, headline: str, caution: str, *, apart: str = "") -> Prompt:
    """Return the prompt for a test or look, another one after each that found the coat tacky or milky."""
    found = "" if coat.unready is None else f"@{coat.unready.found_ms}"
    return _prompt(coat, step, due_ms, headline, caution, apart=f"{found}{apart}")


def _settled(prompt: Prompt, coat: CoatToTend, now_ms: int, before: Mapping[str, int]) -> Prompt:
    """Keep the time of a prompt that has come due, unless a test since found the coat not ready for the next."""
    due_ms = before.get(prompt.key)
    if due_ms is None or due_ms > now_ms:
        return prompt
    if prompt.step is Step.RECOAT and coat.unready is not None and due_ms <= coat.unready.found_ms:
        return prompt
    return replace(prompt, due_ms=due_ms)


def _as_asked(prompt: Prompt, now_ms: int, given: Mapping[str, int]) -> Prompt:
    """Return a prompt that is due no earlier than she could know of it."""
    return replace(prompt, due_ms=max(prompt.due_ms, min(given.get(prompt.key, now_ms), now_ms)))


def _film_at(coat: CoatToTend, now_ms: int) -> FilmNow:
    """Return how far a film has come: by its sheet where no air has dried it yet."""
    is_over = coat.touch_dry_ms is not None and coat.touch_dry_ms <= now_ms
    return FilmNow(is_set=True, is_tack_free=True) if is_over else coat.film


def _as_it_stands(prompt: Prompt, film: FilmNow, now_ms: int, *, fell_due_ms: int) -> Prompt:
    """Return a prompt in the words for how late it is and how far the film has come.

    A step at the wet film is late by the film, from `fell_due_ms` on, and missed by when it was asked for.
    """
    since_ms = fell_due_ms if prompt.step in _AT_WET_FILM else prompt.due_ms
    told = missed(prompt.step, film, now_ms - since_ms)
    if told is None:
        return prompt
    return replace(
        prompt,
        headline=told.headline or prompt.headline,
        caution=told.with_caution(prompt.caution),
        is_missed=now_ms - prompt.due_ms > WET_LATE_MS,
        is_useless=told.is_useless,
    )
