"""Humidity calibration in steps: what to do at each, how far the box is, and what the result means."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import IntEnum

from studiowatch.room.humidity_calibration import (
    LEAST_GAIN,
    MOST_GAIN,
    OLDEST_MS,
    CalibrationRefused,
    HumidityCalibration,
    Salt,
    salt_humidity_pct,
)
from studiowatch.room.plateau import FLAT_MINUTES, MINUTE_MS, Plateau
from studiowatch.service.commands import CalibrateHumidity
from studiowatch.studio.words import Level
from studiowatch.ui.models.guide import GuideStep
from studiowatch.ui.models.times import HOUR_MS, ago_words

FAR_OFF_PCT = 10.0  # %RH between sensor and salt that a box that leaks is likelier to explain: assumption
EXAMPLES_PCT = (30.0, 50.0, 70.0)  # %RH, at which the correction is shown

SALTS = (
    "Keep both salts away from food, mouth and eyes; wash your hands afterwards. The salts' own sheets come first.",
    "No salt and no drop of slurry on the board or the sensor: it ruins them and conducts.",
)
NO_SPILL = "Board, plugs and salt never touch: stand the slurry low and level, and lift the box by its bottom."
HOT_BEAD = "The bead is hot enough to hurt: keep fingers, salt and cable off it."
NO_VAPOUR = "Not in solvent vapour: the board is not explosion-protected, and vapour shifts the sensor."


class HumidityStep(IntEnum):
    """Where she is."""

    NEEDED = 0
    SHUT_MAGNESIUM = 1
    WAIT_MAGNESIUM = 2
    SHUT_SODIUM = 3
    WAIT_SODIUM = 4
    RESULT = 5


_SALT_OF = {
    HumidityStep.SHUT_MAGNESIUM: Salt.MAGNESIUM_CHLORIDE,
    HumidityStep.WAIT_MAGNESIUM: Salt.MAGNESIUM_CHLORIDE,
    HumidityStep.SHUT_SODIUM: Salt.SODIUM_CHLORIDE,
    HumidityStep.WAIT_SODIUM: Salt.SODIUM_CHLORIDE,
}
_INTO_THE_BOX = (
    "Put the cup and the humidity chip into the box, the chip above the slurry and not touching it. The bead stays "
    "outside, since its heat would dry the air at the chip. Shut and seal the box."
)
_WAIT = (
    (
        f"The air in the box takes its time. It counts as flat when the sensor has read the same for {FLAT_MINUTES} "
        "minutes on end; one hour in all is usual."
    ),
    (
        "Leave the box shut, at an even 20 to 25 °C, out of the sun, with the board plugged in. You may leave this "
        "page meanwhile and come back."
    ),
)

STEPS: tuple[GuideStep, ...] = (
    GuideStep(
        name="What is needed",
        title="What is needed",
        words=(
            (
                "Magnesium chloride and table salt without additives, two shallow cups, distilled water, a box that "
                "shuts tight and has a hole for the cable (sealed with putty or tape), and about three hours, most of "
                "it waiting."
            ),
            (
                "Over a wet slurry of each salt the air has a humidity that is known: 33 % and 75 %. What the sensor "
                "says there puts it right in between."
            ),
            (
                f"Both boxes within {OLDEST_MS // HOUR_MS} hours. The steps done so far are kept while studiowatch is "
                "open, also when you leave this page; they are lost when it is closed."
            ),
        ),
        cautions=(*SALTS, NO_VAPOUR),
        onward="I have it all",
    ),
    GuideStep(
        name="Magnesium chloride",
        title="First box: magnesium chloride",
        words=(
            (
                "Stir a few drops of water at a time into two spoons of magnesium chloride until it is like wet sand: "
                "a slurry with undissolved salt in it, not a clear solution."
            ),
            _INTO_THE_BOX,
        ),
        cautions=(NO_SPILL, HOT_BEAD, SALTS[0]),
        onward="The box is shut",
    ),
    GuideStep(
        name="Wait until flat",
        title="Wait until it reads flat over magnesium chloride",
        words=_WAIT,
        onward="Take this reading",
    ),
    GuideStep(
        name="Table salt",
        title="Second box: sodium chloride (table salt)",
        words=(
            (
                "Take the first cup out and wipe the box dry. Stir water into two spoons of table salt in the same "
                "way: wet sand, with undissolved salt in it."
            ),
            _INTO_THE_BOX,
        ),
        cautions=(NO_SPILL, HOT_BEAD, SALTS[0]),
        onward="The box is shut",
    ),
    GuideStep(
        name="Wait until flat",
        title="Wait until it reads flat over table salt",
        words=_WAIT,
        onward="Take this reading",
    ),
    GuideStep(
        name="Result",
        title="The result",
        words=(
            "Nothing holds yet. Accept it, and humidity is put right from now on; it can be withdrawn at any time.",
        ),
        onward="Accept",
    ),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class HumidityGuide:
    """How far she is.

    Attributes
    ----------
    shut_ms : int or None
        UTC ms at which the box of the present step was shut.
    magnesium_ms, sodium_ms : int or None
        UTC ms at which each reading was taken.
    """

    step: HumidityStep = HumidityStep.NEEDED
    shut_ms: int | None = None
    magnesium_ms: int | None = None
    sodium_ms: int | None = None

    @property
    def salt(self) -> Salt | None:
        """The salt of the present step."""
        return _SALT_OF.get(self.step)

    @property
    def is_waiting(self) -> bool:
        """Whether a box is waited for."""
        return self.step in {HumidityStep.WAIT_MAGNESIUM, HumidityStep.WAIT_SODIUM}

    @property
    def is_begun(self) -> bool:
        """Whether something would be lost."""
        return self.step is not HumidityStep.NEEDED

    @property
    def command(self) -> CalibrateHumidity | None:
        """What to send, once both readings were taken."""
        if self.magnesium_ms is None or self.sodium_ms is None:
            return None
        return CalibrateHumidity(magnesium_ms=self.magnesium_ms, sodium_ms=self.sodium_ms)


def onward(guide: HumidityGuide, now_ms: int) -> HumidityGuide:
    """Return the guide after she ended the present step, at UTC `now_ms`; after the last it begins anew."""
    match guide.step:
        case HumidityStep.SHUT_MAGNESIUM | HumidityStep.SHUT_SODIUM:
            guide = replace(guide, shut_ms=now_ms)
        case HumidityStep.WAIT_MAGNESIUM:
            guide = replace(guide, magnesium_ms=now_ms)
        case HumidityStep.WAIT_SODIUM:
            guide = replace(guide, sodium_ms=now_ms)
        case HumidityStep.RESULT:
            return HumidityGuide()
    return replace(guide, step=HumidityStep(guide.step + 1))


def back(guide: HumidityGuide) -> HumidityGuide:
    """Return the guide one step earlier; a reading that was taken there is to be taken again."""
    step = HumidityStep(max(guide.step - 1, 0))
    if step is HumidityStep.WAIT_SODIUM:
        guide = replace(guide, sodium_ms=None)
    elif step is HumidityStep.WAIT_MAGNESIUM:
        guide = replace(guide, magnesium_ms=None)
    return replace(guide, step=step)


@dataclass(frozen=True, slots=True, kw_only=True)
class BoxNow:
    """How the box does: one sentence, whether its reading may be taken, and the minutes on end that were read in it."""

    words: str
    level: Level
    may_take: bool
    minutes: int = FLAT_MINUTES


def box_now(guide: HumidityGuide, plateau: Plateau, now_ms: int) -> BoxNow:
    """Return how the box that is waited for does; what was flat before it was shut does not count."""
    salt, shut_ms = guide.salt, guide.shut_ms or now_ms
    minutes = min(plateau.minutes_seen, max(0, ((plateau.ended_ms or 0) - shut_ms) // MINUTE_MS))
    if salt is None or minutes < FLAT_MINUTES:
        words = (
            f"Shut {ago_words(shut_ms, now_ms)}, read for {minutes} of the {FLAT_MINUTES} minutes on end that are "
            "needed: leave the box shut and the board plugged in."
        )
        return BoxNow(words=words, level=Level.CALM, may_take=False, minutes=minutes)
    if not plateau.is_flat:
        return BoxNow(words=plateau.sentence, level=Level.CALM, may_take=False, minutes=minutes)
    return _flat_box(salt, plateau)


def _flat_box(salt: Salt, plateau: Plateau) -> BoxNow:
    read_pct, read_C = plateau.humidity_pct or 0.0, plateau.temperature_C or 0.0
    flat = f"Flat: {read_pct:.1f} %RH at {read_C:.1f} °C"
    try:
        true_pct = salt_humidity_pct(salt, read_C)
    except CalibrationRefused as refusal:
        return BoxNow(words=str(refusal), level=Level.CAUTION, may_take=False)
    if abs(read_pct - true_pct) > FAR_OFF_PCT:
        words = (
            f"{flat}, but over {salt.word} the air has {true_pct:.1f} %RH: check that the box is tight, the slurry "
            "wet, and that it is this salt."
        )
        return BoxNow(words=words, level=Level.CAUTION, may_take=True)
    return BoxNow(words=f"{flat}; the salt gives {true_pct:.1f} %RH.", level=Level.CALM, may_take=True)


def result_rows(calibration: HumidityCalibration) -> tuple[tuple[str, ...], ...]:
    """Return the table of the result, its head first: salt, what the sensor read, what the air had."""
    rows = [("Over", "Sensor read", "Air had", "At")]
    for salt, point in (
        (Salt.MAGNESIUM_CHLORIDE, calibration.magnesium),
        (Salt.SODIUM_CHLORIDE, calibration.sodium),
    ):
        true_pct = salt_humidity_pct(salt, point.temperature_C)
        rows.append((salt.word, f"{point.raw_pct:.1f} %", f"{true_pct:.1f} %", f"{point.temperature_C:.1f} °C"))
    return tuple(rows)


def result_sentences(calibration: HumidityCalibration) -> tuple[str, ...]:
    """Return what the calibration does, in words."""
    examples = ", ".join(f"{raw:.0f} % to {calibration.corrected_pct(raw):.1f} %" for raw in EXAMPLES_PCT)
    return (
        f"Gain {calibration.gain:.3f}; {LEAST_GAIN:g} to {MOST_GAIN:g} is allowed.",
        f"Readings are put right: {examples}.",
    )
