"""What happened, as it is printed: one frozen value each, with the form that other programs read."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime

from studiowatch.coats.stages import Stage
from studiowatch.speech.words import in_turn, mark, say
from studiowatch.studio.warnings import StudioWarning, WarningState

_REACHED = {
    Stage.SET_TO_TOUCH: mark("{title}: {coat} is set to touch"),
    Stage.DUST_FREE: mark("{title}: {coat} is dust free"),
    Stage.TACK_FREE: mark("{title}: {coat} is tack free"),
    Stage.DRY_TO_TOUCH: mark("{title}: {coat} is dry to touch"),
    Stage.CLEAR: mark("{title}: {coat} is clear"),
    Stage.DRY_TO_RECOAT: mark("{title}: {coat} is dry to recoat"),
    Stage.DRY_HARD: mark("{title}: {coat} is dry hard"),
    Stage.DRY_THROUGH: mark("{title}: {coat} is dry through"),
    Stage.CURED: mark("{title}: {coat} is cured"),
}
LEVEL_NAMES = ("calm", "caution", "act")


def iso(time_ms: int) -> str:
    """Return UTC ms as ISO 8601 to the second."""
    return datetime.fromtimestamp(time_ms / 1000, UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


@dataclass(frozen=True, slots=True, kw_only=True)
class WarningHappened:
    """A warning was raised, heard, put off or cleared at `time_ms`; `is_new` asks to say it aloud."""

    time_ms: int
    warning: StudioWarning
    is_new: bool

    def document(self) -> dict[str, object]:
        """Return the object that is printed for other programs."""
        document: dict[str, object] = {
            "time": iso(self.time_ms),
            "event": "warning",
            "kind": self.warning.kind.value,
            "state": self.warning.state.value,
            "pieces": list(self.warning.piece_titles),
            "level": LEVEL_NAMES[self.warning.level],
            "began": iso(self.warning.began_ms),
        }
        if self.warning.expected_ms is not None:
            document["expected"] = iso(self.warning.expected_ms)
        return document

    def line(self) -> str:
        """Return the line that people read."""
        sentence = self.warning.sentence
        if self.warning.state is WarningState.CLEARED:
            return say("over: {headline}", headline=sentence.headline)
        return in_turn(f"{sentence.headline}.", sentence.detail, sentence.advice)


@dataclass(frozen=True, slots=True, kw_only=True)
class StageHappened:
    """A coat reached a stage."""

    time_ms: int
    piece_title: str
    coat_number: int
    coat_label: str
    stage: Stage

    def document(self) -> dict[str, object]:
        """Return the object that is printed for other programs."""
        return {
            "time": iso(self.time_ms),
            "event": "stage",
            "stage": self.stage.value,
            "pieces": [self.piece_title],
            "coat": self.coat_number,
        }

    def line(self) -> str:
        """Return the line that people read."""
        return say(_REACHED[self.stage], title=self.piece_title, coat=self.coat_label)


@dataclass(frozen=True, slots=True, kw_only=True)
class PromptHappened:
    """A prompt fell due; one that is about no piece, but a sensor, has no title.

    `is_missed` where its time had passed by so much that other words hold: the computer slept, or nobody watched.
    """

    time_ms: int
    piece_title: str
    text: str
    is_missed: bool = False

    def document(self) -> dict[str, object]:
        """Return the object that is printed for other programs."""
        pieces = [self.piece_title] if self.piece_title else []
        told: dict[str, object] = {"time": iso(self.time_ms), "event": "prompt", "text": self.text, "pieces": pieces}
        return {**told, "missed": True} if self.is_missed else told

    def line(self) -> str:
        """Return the line that people read."""
        return f"{self.piece_title}: {self.text}" if self.piece_title else self.text


Happening = WarningHappened | StageHappened | PromptHappened
