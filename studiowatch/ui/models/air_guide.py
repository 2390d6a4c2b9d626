"""Air speed calibration in steps: under the cup, the walks, and the fit."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import IntEnum

from studiowatch.room.air_points import FASTEST_M_S, LEAST_WALKS, SLOWEST_M_S
from studiowatch.room.air_speed_calibration import AirSpeedCalibration
from studiowatch.room.king_law import BEAD_C, COOLEST_BEAD_C, HOTTEST_BEAD_C
from studiowatch.room.walk import LONGEST_M, SHORTEST_M
from studiowatch.service.calibration_commands import CalibrateAirSpeed, Spell, Walk
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import chosen
from studiowatch.speech.words import mark, say
from studiowatch.ui.models.forms import number
from studiowatch.ui.models.guide import GuideStep, Steps
from studiowatch.ui.models.times import SECOND_MS

STILL_MS = 30_000  # ms under the cup: half a minute, of which the first seconds are left out
AIM_M_S = (0.3, 0.6, 1.2)  # m/s, walks that lie well apart: heel to toe, strolling, walking on
PACES = (mark("heel to toe"), mark("strolling"), mark("walking on"))
USUAL_DISTANCE_M = 4.0

HOT_BEAD = mark("The bead is hot enough to hurt: hold the sensor by its board, and let nothing touch the bead.")
NO_VAPOUR = mark("Not in solvent vapour: the bead is hot and contacts spark. The parts' own sheets come first.")
CABLE = mark("Clear the way, and carry the cable in your hand so that you do not step on it or pull the plug.")


class AirStep(IntEnum):
    """Where she is."""

    NEEDED = 0
    STILL = 1
    WALKS = 2
    RESULT = 3


def _said_steps() -> tuple[GuideStep, ...]:
    return (
        GuideStep(
            name=say("What is needed"),
            title=say("What is needed"),
            words=(
                say(
                    "A cup that fits over the bead without touching it, a tape measure, and a straight way of 3 to 6 m "
                    "through still air: doors and windows shut, heaters and fans off for ten minutes. Ten minutes in "
                    "all."
                ),
                say(
                    "You carry the sensor along the way, three times at another speed: moving it through still air is "
                    "the same to it as air that moves. A long USB cable helps, or carry a portable computer along."
                ),
                say(
                    "The steps done so far are kept while studiowatch is open, also when you leave this page; they are "
                    "lost when it is closed."
                ),
            ),
            cautions=(say(HOT_BEAD), say(NO_VAPOUR)),
            onward=say("I have it all"),
        ),
        GuideStep(
            name=say("Under the cup"),
            title=say("Still air, under the cup"),
            words=(
                say(
                    "Stand the cup over the bead, wait a minute for the air in it to come to rest, then start. It ends "
                    "by itself after half a minute."
                ),
            ),
            cautions=(say(HOT_BEAD),),
            onward=say("Go on to the walks"),
        ),
        GuideStep(
            name=say("Three walks"),
            title=say("Three walks, each at another speed"),
            words=(
                say(
                    "Hold the sensor out before you at arm's length, with the bead turned as it will be at the rack. "
                    "Walk evenly; start when you pass the first mark, stop when you pass the second. The space bar "
                    "presses the button."
                ),
            ),
            cautions=(say(CABLE), say(HOT_BEAD)),
            onward=say("Show the fit"),
        ),
        GuideStep(
            name=say("The fit"),
            title=say("The fit"),
            words=(
                say(
                    "Nothing holds yet. Accept it, and air speed is shown from now on; it can be withdrawn at any time."
                ),
            ),
            onward=say("Accept"),
        ),
    )


STEPS = Steps(_said_steps)


@dataclass(frozen=True, slots=True, kw_only=True)
class AirGuide:
    """How far she is.

    Attributes
    ----------
    bead_C : float
        What the bead is held at, °C.
    still : Spell or None
        The time under the cup.
    started_ms : int or None
        UTC ms at which what runs now was started.
    """

    step: AirStep = AirStep.NEEDED
    bead_C: float = BEAD_C
    still: Spell | None = None
    walks: tuple[Walk, ...] = ()
    started_ms: int | None = None

    @property
    def may_go_on(self) -> bool:
        """Whether the present step is done."""
        if self.started_ms is not None:
            return False
        match self.step:
            case AirStep.STILL:
                return self.still is not None
            case AirStep.WALKS:
                return len(self.walks) >= LEAST_WALKS
        return True

    @property
    def is_begun(self) -> bool:
        """Whether something would be lost."""
        return self.still is not None or bool(self.walks)

    @property
    def command(self) -> CalibrateAirSpeed | None:
        """What to send, once there is all that it takes."""
        if self.still is None or len(self.walks) < LEAST_WALKS:
            return None
        return CalibrateAirSpeed(still=self.still, walks=self.walks, bead_C=self.bead_C)


def bead_C_of(text: str) -> float:
    """Return what the bead is held at, °C. Raises `FormError`."""
    return number(
        text,
        field="bead",
        name=say("The bead's temperature"),
        unit="°C",
        low=COOLEST_BEAD_C,
        high=HOTTEST_BEAD_C,
        example=f"{BEAD_C:g}",
    )


def distance_m_of(text: str) -> float:
    """Return how far she walks, m. Raises `FormError`."""
    return number(
        text,
        field="distance",
        name=say("The distance"),
        unit="m",
        low=SHORTEST_M,
        high=LONGEST_M,
        example=f"{USUAL_DISTANCE_M:g}",
    )


def onward(guide: AirGuide) -> AirGuide:
    """Return the guide at the next step; after the last it begins anew."""
    return AirGuide() if guide.step is AirStep.RESULT else replace(guide, step=AirStep(guide.step + 1))


def back(guide: AirGuide) -> AirGuide:
    """Return the guide one step earlier; what runs is dropped, what was measured stays."""
    return replace(guide, step=AirStep(max(guide.step - 1, 0)), started_ms=None)


def with_bead(guide: AirGuide, bead_C: float) -> AirGuide:
    """Return the guide for a bead that is held at `bead_C`, °C."""
    return replace(guide, bead_C=bead_C)


def started(guide: AirGuide, now_ms: int) -> AirGuide:
    """Return the guide with the time under the cup, or a walk, running from UTC `now_ms`."""
    return replace(guide, started_ms=now_ms)


def stopped(guide: AirGuide, now_ms: int, distance_m: float) -> AirGuide:
    """Return the guide after what ran was stopped at UTC `now_ms`; `distance_m` is that of a walk."""
    start_ms = guide.started_ms
    if start_ms is None:
        return guide
    guide = replace(guide, started_ms=None)
    if guide.step is AirStep.STILL:
        return replace(guide, still=Spell(start_ms=start_ms, end_ms=now_ms))
    return replace(guide, walks=(*guide.walks, Walk(start_ms=start_ms, end_ms=now_ms, distance_m=distance_m)))


def without_walk(guide: AirGuide, index: int) -> AirGuide:
    """Return the guide without one of its walks."""
    return replace(guide, walks=guide.walks[:index] + guide.walks[index + 1 :])


def is_still_over(guide: AirGuide, now_ms: int) -> bool:
    """Return whether the time under the cup has lasted long enough."""
    return guide.step is AirStep.STILL and guide.started_ms is not None and now_ms - guide.started_ms >= STILL_MS


def running_words(guide: AirGuide, now_ms: int) -> str:
    """Return how long what runs has run, or ""."""
    if guide.started_ms is None:
        return ""
    seconds = max(0, now_ms - guide.started_ms) / SECOND_MS
    if guide.step is AirStep.STILL:
        return say("{seconds} s to go", seconds=round(max(0.0, STILL_MS / SECOND_MS - seconds)))
    return f"{seconds:.0f} s"


def still_words(guide: AirGuide) -> str:
    """Return that still air was measured, and for how long, or ""."""
    if guide.still is None:
        return ""
    seconds = round((guide.still.end_ms - guide.still.start_ms) / SECOND_MS)
    return say("Measured for {seconds} s. Start again to replace it.", seconds=seconds)


def walk_words(walk: Walk) -> str:
    """Return one walk."""
    seconds = (walk.end_ms - walk.start_ms) / SECOND_MS
    speed_m_s = walk.distance_m / seconds if seconds else 0.0
    units = chosen()
    words = say(
        "{speed}: {distance} m in {seconds} s",
        speed=units.air_speed(speed_m_s),
        distance=units.plain(walk.distance_m),
        seconds=units.number(seconds, 1),
    )
    if SLOWEST_M_S <= speed_m_s <= FASTEST_M_S:
        return words
    low = units.plain(round(units.speed.from_si(SLOWEST_M_S), units.speed.places))
    allowed = say("{low} to {high} is allowed: remove it", low=low, high=units.air_speed_limit(FASTEST_M_S))
    return f"{words}; {allowed}"


def next_walk_words(guide: AirGuide, distance_m: float) -> str:
    """Return how fast to walk next."""
    index = len(guide.walks)
    if index >= len(AIM_M_S):
        return say("That is enough; more walks narrow the error, slow ones above all.")
    return say(
        "Walk {number}, {pace}: {distance} m in about {seconds} s.",
        number=index + 1,
        pace=say(PACES[index]),
        distance=chosen().plain(distance_m),
        seconds=round(distance_m / AIM_M_S[index]),
    )


def air_trouble(snapshot: Snapshot) -> str:
    """Return why there is nothing to calibrate, one sentence, or ""."""
    if not snapshot.board.connected or snapshot.board.silent:
        return say("No board is read: plug it in first.")
    if snapshot.room.air_signal_mV is None and snapshot.room.air_speed_m_s is not None:
        return say("This board's sensor gives air speed itself: there is nothing to calibrate.")
    if snapshot.room.air_signal_mV is None:
        return say("This board sends no bead's voltage: there is nothing to calibrate. See its wire to A0.")
    return ""


def fit_sentences(calibration: AirSpeedCalibration) -> tuple[str, ...]:
    """Return how good the fit is, and each walk beside it."""
    law = calibration.law
    walks = [point.speed_m_s for point in calibration.points if point.speed_m_s > 0.0]
    units = chosen()
    off = ", ".join(
        f"{units.air_speed(speed)} {_percent_words(misfit)}"
        for speed, misfit in zip(walks, calibration.misfits(), strict=True)
    )
    return (
        calibration.sentence,
        say("Walks beside the law: {walks}.", walks=off),
        say(
            "V² = A + B vⁿ with n = {exponent}, at {temperature} of air.",
            exponent=units.number(law.exponent, 2),
            temperature=units.temperature(law.reference_C),
        ),
    )


def _percent_words(share: float) -> str:
    percent = round(100 * share)
    return f"{percent:+d} %".replace("-", "−") if percent else "0 %"
