"""What she means to do with the room, as a form asks for it, and the words around it. Without Qt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from studiowatch.room.intentions import TARGETS, Doing
from studiowatch.service.intention_commands import AddIntention
from studiowatch.service.intention_view import IntentionView
from studiowatch.service.snapshot import Snapshot
from studiowatch.speech.units import FOOT_M, MINUTE_S, Degrees, Speed, chosen
from studiowatch.speech.words import mark, say
from studiowatch.studio.meant import FAN_M_S, OFF_M_S, Meant
from studiowatch.studio.meant_words import cautions, words
from studiowatch.studio.working_hours import DAY_MIN
from studiowatch.ui.models.forms import FormError, number
from studiowatch.ui.models.measures import Unit, measured
from studiowatch.ui.models.reading_form import written_degrees

TITLE = mark("What you mean to do with the room")
ADD_TITLE = mark("Something you mean to do")
NONE_YET = mark(
    "Nothing is meant so far. Say what you will have on and when: a heater in the evening, a dehumidifier by night, a "
    "fan at noon or none at all. Ready times, the plan, the best hours and warnings ahead then count on it."
)
SWITCHES_NOTHING = mark(
    "studiowatch switches nothing on or off: you do. Take away here what you will not do after all."
)
OVERNIGHT = mark("An end that is not later than the beginning is on the next day.")
HOW_OFTEN: dict[str, int | None] = {
    mark("once"): 1,
    mark("2 days in a row"): 2,
    mark("3 days in a row"): 3,
    mark("7 days in a row"): 7,
    mark("every day from then on"): None,
}
_LEAST_FAN_M_S = 0.05  # m/s, below which a fan is none
_HEATER_C, _DRYER_PCT = 21.0, 50.0  # what a form begins with; assumption
_SPEEDS_M_S = {Speed.METRES_PER_SECOND.value: 1.0, Speed.FEET_PER_MINUTE.value: FOOT_M / MINUTE_S}


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One thing that may be meant: its words, the name of what it is set to, "" for nothing, and how a form begins."""

    doing: Doing
    is_on: bool
    words: str
    asks: str
    from_min: int = 18 * 60
    to_min: int = 23 * 60
    days: int | None = 1

    @property
    def cautions(self) -> tuple[str, ...]:
        """What bites at the step of doing it."""
        return cautions(self.doing, is_on=self.is_on)


CHOICES = (
    Choice(doing=Doing.HEATER, is_on=True, words=mark("Heater on"), asks=mark("Set to, {unit}")),
    Choice(doing=Doing.DEHUMIDIFIER, is_on=True, words=mark("Dehumidifier on"), asks=mark("Set to, % humidity")),
    Choice(
        doing=Doing.FAN,
        is_on=True,
        words=mark("Fan on"),
        asks=mark("Air at the pieces, {unit}"),
        from_min=10 * 60,
        to_min=12 * 60,
    ),
    Choice(doing=Doing.FAN, is_on=False, words=mark("Fan stays off"), asks="", from_min=0, to_min=DAY_MIN, days=None),
)


def asked_for(choice: Choice) -> str:
    """Return the name of the field for what it is set to, with her unit; "" where it is set to nothing."""
    unit = chosen().degrees.value if choice.doing is Doing.HEATER else chosen().speed.value
    return say(choice.asks, unit=unit) if choice.asks else ""


def first_target(choice: Choice) -> str:
    """Return what that field begins with, in her unit."""
    units = chosen()
    if choice.doing is Doing.HEATER:
        return units.plain(round(units.degrees.from_celsius(_HEATER_C)))
    if choice.doing is Doing.DEHUMIDIFIER:
        return units.plain(_DRYER_PCT)
    return units.plain(round(units.speed.from_si(FAN_M_S), units.speed.places)) if choice.is_on else ""


def read_intention(
    choice: Choice, *, target: str, from_min: int, to_min: int, first_day: date, days: int | None
) -> AddIntention:
    """Return the command to mean it; hours that end as they begin are none.

    Raises
    ------
    FormError
        If a field cannot be taken.
    """
    if from_min == to_min:
        raise FormError("until", say("It begins and ends at the same time: choose another end."))
    return AddIntention(
        doing=choice.doing,
        from_min=from_min,
        to_min=to_min,
        target=_target(choice, target),
        first_day=first_day,
        days=days,
    )


def _target(choice: Choice, text: str) -> float:
    """Return what it is set to, °C, % or m/s."""
    if not choice.is_on:
        return OFF_M_S
    low, high, sign = TARGETS[choice.doing]
    if choice.doing is Doing.HEATER:
        typed, degrees = written_degrees(text, chosen().degrees)
        value = number(
            typed,
            field="target",
            name=say("The temperature"),
            unit=degrees.value,
            low=degrees.from_celsius(low),
            high=degrees.from_celsius(high),
            example="21" if degrees is Degrees.CELSIUS else "70",
        )
        return degrees.to_celsius(value)
    if choice.doing is Doing.DEHUMIDIFIER:
        text = text.strip().removesuffix("%")
        return number(text, field="target", name=say("The humidity"), unit=sign, low=low, high=high, example="50")
    unit = chosen().speed.value
    return measured(
        text,
        field="target",
        name=say("The air speed"),
        known=_SPEEDS_M_S,
        ours=Unit(sign=unit, size=_SPEEDS_M_S[unit]),
        low=_LEAST_FAN_M_S,
        high=high,
        example=FAN_M_S,
    )


def meant_by(command: AddIntention) -> str:
    """Return in words what a command means."""
    meant = Meant(
        key="",
        doing=command.doing,
        from_min=command.from_min,
        to_min=command.to_min,
        target=command.target,
        first_day=command.first_day,
        days=command.days,
    )
    return words(meant)


def counted_in(snapshot: Snapshot) -> str:
    """Return what of that the room to come counts on, in one line, or ""."""
    counted = [one.words for one in snapshot.intentions if not one.withheld]
    return say("Counted in: {intentions}", intentions="; ".join(counted)) if counted else ""


def withheld(snapshot: Snapshot) -> tuple[str, ...]:
    """Return why some of it is not counted on, each reason once."""
    return tuple(dict.fromkeys(one.withheld for one in snapshot.intentions if one.withheld))


def cautions_of(views: tuple[IntentionView, ...]) -> tuple[str, ...]:
    """Return all that bites, each once; what is said of everything last."""
    told = dict.fromkeys(caution for one in views for caution in one.cautions[:-1])
    last = dict.fromkeys(one.cautions[-1] for one in views if one.cautions)
    return (*told, *last)
