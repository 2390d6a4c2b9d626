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
from studiowatch.service.calibration_commands import CalibrateHumidity
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.words import Level
from studiowatch.ui.models.guide import GuideStep, Steps
from studiowatch.ui.models.times import HOUR_MS, ago_words

FAR_OFF_PCT = 10.0  # %RH between sensor and salt that a box that leaks is likelier to explain: assumption
BOX_C = (20.0, 25.0)  # °C, where the box stands while it is waited for; the salts are known from 0 to 50 °C: assumption
EXAMPLES_PCT = (30.0, 50.0, 70.0)  # %RH, at which the correction is shown

SALTS = (
    mark(
        "Keep both salts away from food, mouth and eyes; wash your hands afterwards. The salts' own sheets come first."
    ),
    mark("No salt and no drop of slurry on the board or the sensor: it ruins them and conducts."),
)
NO_SPILL = mark("Board, plugs and salt never touch: stand the slurry low and level, and lift the box by its bottom.")
HOT_BEAD = mark("The bead is hot enough to hurt: keep fingers, salt and cable off it.")
NO_VAPOUR = mark("Not in solvent vapour: the board is not explosion-protected, and vapour shifts the sensor.")


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
_INTO_THE_BOX = mark(
    "Put the cup and the humidity chip into the box, the chip above the slurry and not touching it. The bead stays "
    "outside, since its heat would dry the air at the chip. Shut and seal the box."
)


def _wait_words() -> tuple[str, ...]:
    units = chosen()
    return (
        say(
            "The air in the box takes its time. It counts as flat when the sensor has read the same for {minutes} "
            "minutes on end; one hour in all is usual.",
            minutes=FLAT_MINUTES,
        ),
        say(
            "Leave the box shut, at an even {low} to {high}, out of the sun, with the board plugged in. You may leave "
            "this page meanwhile and come back.",
            low=units.plain(round(units.degrees.from_celsius(BOX_C[0]), 1)),
            high=units.limit(BOX_C[1]),
        ),
    )


def _said_steps() -> tuple[GuideStep, ...]:
    return (
        GuideStep(
            name=say("What is needed"),
            title=say("What is needed"),
            words=(
                say(
                    "Magnesium chloride and table salt without additives, two shallow cups, distilled water, a box "
                    "that shuts tight and has a hole for the cable (sealed with putty or tape), and about three hours, "
                    "most of it waiting."
                ),
                say(
                    "Over a wet slurry of each salt the air has a humidity that is known: 33 % and 75 %. What the "
                    "sensor says there puts it right in between."
                ),
                say(
                    "Both boxes within {hours} hours. The steps done so far are kept while studiowatch is "
                    "open, also when you leave this page; they are lost when it is closed.",
                    hours=OLDEST_MS // HOUR_MS,
                ),
            ),
            cautions=(*map(say, SALTS), say(NO_VAPOUR)),
            onward=say("I have it all"),
        ),
        GuideStep(
            name=say("Magnesium chloride"),
            title=say("First box: magnesium chloride"),
            words=(
                say(
                    "Stir a few drops of water at a time into two spoons of magnesium chloride until it is like wet "
                    "sand: a slurry with undissolved salt in it, not a clear solution."
                ),
                say(_INTO_THE_BOX),
            ),
            cautions=(say(NO_SPILL), say(HOT_BEAD), say(SALTS[0])),
            onward=say("The box is shut"),
        ),
        GuideStep(
            name=say("Wait until flat"),
            title=say("Wait until it reads flat over magnesium chloride"),
            words=_wait_words(),
            onward=say("Take this reading"),
        ),
        GuideStep(
            name=say("Table salt"),
            title=say("Second box: sodium chloride (table salt)"),
            words=(
                say(
                    "Take the first cup out and wipe the box dry. Stir water into two spoons of table salt in the same "
                    "way: wet sand, with undissolved salt in it."
                ),
                say(_INTO_THE_BOX),
            ),
            cautions=(say(NO_SPILL), say(HOT_BEAD), say(SALTS[0])),
            onward=say("The box is shut"),
        ),
        GuideStep(
            name=say("Wait until flat"),
            title=say("Wait until it reads flat over table salt"),
            words=_wait_words(),
            onward=say("Take this reading"),
        ),
        GuideStep(
            name=say("Result"),
            title=say("The result"),
            words=(
                say(
                    "Nothing holds yet. Accept it, and humidity is put right from now on; it can be withdrawn at any "
                    "time."
                ),
            ),
            onward=say("Accept"),
        ),
    )


STEPS = Steps(_said_steps)


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
        words = say(
            "Shut {ago}, read for {minutes} of the {needed} minutes on end that are needed: leave the box shut and the "
            "board plugged in.",
            ago=ago_words(shut_ms, now_ms),
            minutes=minutes,
            needed=FLAT_MINUTES,
        )
        return BoxNow(words=words, level=Level.CALM, may_take=False, minutes=minutes)
    if not plateau.is_flat:
        return BoxNow(words=plateau.sentence, level=Level.CALM, may_take=False, minutes=minutes)
    return _flat_box(salt, plateau)


def _flat_box(salt: Salt, plateau: Plateau) -> BoxNow:
    read_pct, read_C = plateau.humidity_pct or 0.0, plateau.temperature_C or 0.0
    units = chosen()
    read = {"read": units.number(read_pct, 1), "temperature": units.temperature(read_C)}
    try:
        true_pct = salt_humidity_pct(salt, read_C)
    except CalibrationRefused as refusal:
        return BoxNow(words=str(refusal), level=Level.CAUTION, may_take=False)
    if abs(read_pct - true_pct) > FAR_OFF_PCT:
        words = say(
            "Flat: {read} %RH at {temperature}, but over {salt} the air has {true} %RH: check that the box is tight, "
            "the slurry wet, and that it is this salt.",
            **read,
            salt=say(salt.word),
            true=units.number(true_pct, 1),
        )
        return BoxNow(words=words, level=Level.CAUTION, may_take=True)
    words = say("Flat: {read} %RH at {temperature}; the salt gives {true} %RH.", **read, true=units.number(true_pct, 1))
    return BoxNow(words=words, level=Level.CALM, may_take=True)


def result_rows(calibration: HumidityCalibration) -> tuple[tuple[str, ...], ...]:
    """Return the table of the result, its head first: salt, what the sensor read, what the air had."""
    units = chosen()
    rows = [(say("Over"), say("Sensor read"), say("Air had"), say("At"))]
    for salt, point in (
        (Salt.MAGNESIUM_CHLORIDE, calibration.magnesium),
        (Salt.SODIUM_CHLORIDE, calibration.sodium),
    ):
        true_pct = salt_humidity_pct(salt, point.temperature_C)
        read, true = (f"{units.number(pct, 1)} %" for pct in (point.raw_pct, true_pct))
        rows.append((say(salt.word), read, true, units.temperature(point.temperature_C)))
    return tuple(rows)


def result_sentences(calibration: HumidityCalibration) -> tuple[str, ...]:
    """Return what the calibration does, in words."""
    units = chosen()
    examples = ", ".join(
        say("{read} % to {true} %", read=f"{raw:.0f}", true=units.number(calibration.corrected_pct(raw), 1))
        for raw in EXAMPLES_PCT
    )
    gain, least, most = units.number(calibration.gain, 3), units.plain(LEAST_GAIN), units.plain(MOST_GAIN)
    return (
        say("Gain {gain}; {least} to {most} is allowed.", gain=gain, least=least, most=most),
        say("Readings are put right: {examples}.", examples=examples),
    )
