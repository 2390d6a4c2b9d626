"""What she means to do with the room in her words, and what it asks of her care."""

from __future__ import annotations

from datetime import datetime

from studiowatch.room.intentions import Doing
from studiowatch.speech.dates import day_of_week
from studiowatch.speech.units import Hours, chosen
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.meant import Meant, span_text
from studiowatch.studio.working_hours import DAY_MIN

_ON = {
    Doing.HEATER: mark("heater {hours} to {target}"),
    Doing.DEHUMIDIFIER: mark("dehumidifier {hours} to {target}"),
    Doing.FAN: mark("fan on {hours}, {target} at the pieces"),
}
_CAUTIONS = {
    Doing.HEATER: mark(
        "Use the heater by its own instructions: clear of fabric, paper and rags, clear of solvent and its vapour, and "
        "not left alone if they say so. Never use it to dry a coat that gives off flammable vapour."
    ),
    Doing.DEHUMIDIFIER: mark(
        "Use the dryer by its own instructions: clear of fabric, clear of solvent and its vapour. Never use it to dry "
        "a coat that gives off flammable vapour: that needs fresh air, and a dryer wants the room shut."
    ),
    Doing.FAN: mark("Use the fan by its own instructions, clear of solvent and its vapour."),
}
_MAINS = mark(
    "Mains: dry hands, a sound cable, no coiled or chained extension lead, and nothing left on alone beyond what its "
    "maker allows."
)
_STILL = mark("Still air is for the coat alone: while anything gives off solvent vapour, keep the room aired.")
_FRESH_AIR = mark("Fresh air comes before a perfect coat. Product sheets and local codes come before this program.")


def words(meant: Meant) -> str:
    """Return "heater 18:00-23:00 to 21 °C, from Mon 2 Mar on, 3 days"."""
    what, day = _what(meant), day_of_week(meant.first_day)
    if meant.days is None:
        return say("{what}, every day from {day} on", what=what, day=day)
    return say_counted(meant.days, "{what}, {day}", "{what}, from {day} on, {n} days", what=what, day=day)


def _what(meant: Meant) -> str:
    if not meant.is_on:
        return say("fan off {hours}", hours=hours_text(meant))
    return say(_ON[meant.doing], hours=hours_text(meant), target=target_text(meant))


def hours_text(meant: Meant) -> str:
    """Return the hours on her clock, "18:00-23:00", "6:00 pm-11:00 pm", "all day"."""
    if meant.is_all_day:
        return say("all day")
    if chosen().hours is Hours.TWENTY_FOUR:
        return span_text(meant)
    return "-".join(clock_text(minutes) for minutes in (meant.from_min, meant.to_min))


def clock_text(minutes: int) -> str:
    """Return a time of day, minutes into it, on her clock."""
    hour, minute = divmod(minutes % DAY_MIN, 60)
    return chosen().clock(datetime(2000, 1, 1, hour, minute))  # noqa: DTZ001 - any day's


def target_text(meant: Meant) -> str:
    """Return the target with its unit as she reads it."""
    if meant.doing is Doing.HEATER:
        return chosen().limit(meant.target)
    if meant.doing is Doing.FAN:
        return chosen().air_speed_limit(meant.target)
    return f"{chosen().number(meant.target, 0)} %"


def cautions(doing: Doing, *, is_on: bool = True) -> tuple[str, ...]:
    """Return what bites at the step of switching it on, or of leaving a fan off."""
    return (say(_CAUTIONS[doing]), say(_MAINS), say(_FRESH_AIR)) if is_on else (say(_STILL), say(_FRESH_AIR))


def vapour_sentence(coat: str, doing: Doing) -> str:
    """Return why nothing is heated, dried or blown now; `coat` gives off vapour still, in words."""
    if doing is Doing.FAN:
        return say(
            "{coat} still gives off flammable vapour: air the room, with no fan that is not made for such vapour. Say "
            "it again when that coat is ready.",
            coat=_begun(coat),
        )
    return say(
        "{coat} still gives off flammable vapour: no heater and no dryer now, air the room. Say it again when that "
        "coat is ready.",
        coat=_begun(coat),
    )


def withheld_sentence(coat: str, doing: Doing) -> str:
    """Return why what is meant is not counted on; `coat` gives off vapour still, in words."""
    if doing is Doing.FAN:
        return say(
            "{coat} still gives off flammable vapour: this is not counted on until that coat is ready. Air the room, "
            "with no fan that is not made for such vapour.",
            coat=_begun(coat),
        )
    return say(
        "{coat} still gives off flammable vapour: this is not counted on until that coat is ready. No heater and no "
        "dryer now; air the room.",
        coat=_begun(coat),
    )


def _begun(coat: str) -> str:
    """Return a coat's name as a sentence begins with it."""
    return f"{coat[:1].upper()}{coat[1:]}"
