"""The one sentence: the most urgent thing, or whether the room is good to lay a coat, or why not yet."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from studiowatch.coats.data_sheet import DataSheet, Kind
from studiowatch.room.air_movement import Movement
from studiowatch.room.limits import DEW_MARGIN, FILM_MARGIN, HUMIDITY
from studiowatch.speech.units import METRIC, Units
from studiowatch.speech.words import mark, say, say_counted
from studiowatch.studio.concern import AirNow
from studiowatch.studio.counting import listed, number_word
from studiowatch.studio.rereading import FRESH_S, READ_IT, TRY_TISSUE, typed_words
from studiowatch.studio.waiting import FILM_COOLING_K
from studiowatch.studio.warnings import StudioWarning, WarningState
from studiowatch.studio.watch import SILENT_AFTER_IDLE_S
from studiowatch.studio.words import Level, Sentence

NO_BOARD = Sentence(
    level=Level.CAUTION,
    headline=mark("No board: the room is not watched"),
    detail=mark("Temperature, humidity and air speed are not known."),
    advice=mark("Plug the board in, or type what a hygrometer says."),
)
OPENING = Sentence(
    level=Level.CAUTION,
    headline=mark("Reading the log"),
    detail=mark("The coats are not up to date yet; warnings begin when they are."),
)
QUIET_BOARD = Sentence(
    level=Level.CAUTION,
    headline=mark("The board sends nothing"),
    detail=mark("Its port is open, but no reading has come."),
    advice=mark("It may still be starting; if not, check its cable."),
)
CLOCK_BEHIND = Sentence(
    level=Level.CAUTION,
    headline=mark("The computer's clock is behind the records"),
    detail=mark("Something was recorded at a time that is still to come by it, so no drying time can be trusted."),
    advice=mark("Set the computer's date and time."),
)


def most_urgent(
    warnings: Sequence[StudioWarning],
    air: AirNow | None,
    *,
    now_ms: int,
    clock_text: Callable[[int], str],
    units: Units = METRIC,
    sheets: Sequence[DataSheet] = (),
    wet_titles: Sequence[str] = (),
    connected: bool = False,
    unreadable: int = 0,
    trouble: str = "",
    silent_after_s: float = SILENT_AFTER_IDLE_S,
) -> Sentence:
    """Return what to say above all else.

    Parameters
    ----------
    warnings : sequence of StudioWarning
        Warnings of any state; only open ones are spoken of, unheard before heard.
    air : AirNow or None
        The room as last read; None if nothing was ever read.
    now_ms : int
        UTC ms.
    clock_text : callable
        Turns UTC ms into the time of day as she reads it.
    units : Units
        What she reads temperatures and air speeds in.
    sheets : sequence of DataSheet
        Sheets of the coats to be laid next; none means the general limits.
    wet_titles : sequence of str
        Pieces with a coat that is still drying: what she wants to know of the room then is whether they are well.
    connected, unreadable : bool, int
        Whether a port is open, and how many lines came that cannot be read while none could.
    trouble : str
        Why no port is open, and what to do about it, in one or more sentences; "" if that is not known.
    silent_after_s : float
        Seconds without a reading after which the room counts as not watched.
    """
    standing = [warning for warning in warnings if warning.is_open]
    if standing:
        return max(standing, key=lambda warning: (warning.level, warning.state is WarningState.RAISED)).sentence
    if air is None or (air.typed is None and now_ms - air.blind_since_ms(now_ms) > silent_after_s * 1000):
        return _no_reading(unreadable) if connected else _no_board(trouble)
    checks = [
        room_check(air, sheet, clock_text=clock_text, units=units, to_lay=not wet_titles) for sheet in sheets or (None,)
    ]
    worst = next((check for check in checks if check.level > Level.CALM), checks[0])
    if worst.level is Level.CALM and wet_titles:
        headline = say_counted(
            len(wet_titles),
            "All is well: a coat drying",
            "All is well: {n} coats drying",
            n=number_word(len(wet_titles)),
        )
        return replace(worst, headline=headline, detail=f"{worst.detail} {listed(wet_titles)}.")
    return worst


def _no_board(trouble: str) -> Sentence:
    no_board = NO_BOARD.said
    return replace(no_board, detail=trouble, advice=say("Or type what a hygrometer says.")) if trouble else no_board


def _no_reading(unreadable: int) -> Sentence:
    if not unreadable:
        return QUIET_BOARD.said
    return Sentence(
        level=Level.CAUTION,
        headline=say("The board cannot be understood"),
        detail=say("{lines} lines came that cannot be read, and none that can.", lines=unreadable),
        advice=say("Check that its sketch sends checked lines at 9600 baud."),
    )


def room_check(
    air: AirNow,
    sheet: DataSheet | None,
    *,
    clock_text: Callable[[int], str],
    units: Units = METRIC,
    to_lay: bool = True,
) -> Sentence:
    """Return whether the room is good to lay a coat of `sheet` now, or why not yet; None takes general limits.

    A room that is known by a typed reading says so in every verdict; `to_lay` asks for a fresh one.
    """
    check = _checked(air, sheet, clock_text, units, to_lay=to_lay)
    return check if air.typed is None else replace(check, detail=f"{check.detail} {typed_words(air.typed)}")


def _checked(
    air: AirNow, sheet: DataSheet | None, clock_text: Callable[[int], str], units: Units, *, to_lay: bool
) -> Sentence:
    if air.implausible:
        advice = say("Check the sensor before you lay a coat.")
        return _wait(say("A reading cannot be right"), air.implausible, advice)
    if air.temperature_C is None or air.humidity_pct is None:
        is_warmth = air.temperature_C is None
        missing = say("The temperature is not measured") if is_warmth else say("The humidity is not measured")
        return _wait(missing, say("Nobody can say whether the room is fit."), say("Check the sensor."))
    reasons = [
        reason
        for reason in (
            _old(air) if to_lay else None,
            _moving(air, sheet, clock_text, units),
            _temperature(air.temperature_C, sheet, units),
            _film(air.temperature_C, sheet, units),
            _humidity(air.humidity_pct, sheet, units),
            _dew_point(air.temperature_C, air.dew_point_C, units),
            _unknown_movement(air),
        )
        if reason is not None
    ]
    if not reasons:
        return Sentence(
            level=Level.CALM,
            headline=say("Good to lay a coat"),
            detail=_still_room(air, units.temperature(air.temperature_C), units.number(air.humidity_pct)),
        )
    first, *others = reasons
    return _wait(first.headline, " ".join([first.detail, *(f"{other.headline}." for other in others)]), first.advice)


def _still_room(air: AirNow, temperature: str, humidity: str) -> str:
    if air.typed is None:
        return say("{temperature}, {humidity} %, no moving air noticed.", temperature=temperature, humidity=humidity)
    return say("{temperature}, {humidity} %, no moving air felt.", temperature=temperature, humidity=humidity)


def _old(air: AirNow) -> Sentence | None:
    if air.typed is None or air.typed.age_s <= FRESH_S:
        return None
    return _wait(say("Read the room again before you lay a coat"), say("It may have changed."), say(READ_IT))


def _moving(air: AirNow, sheet: DataSheet | None, clock_text: Callable[[int], str], units: Units) -> Sentence | None:
    if not air.is_moving:
        return None
    if air.typed is not None and air.typed.felt is not None:
        felt = say("Felt at {time}.", time=clock_text(air.typed.time_ms))
        return _wait(say("Not yet: the air is moving"), felt, _still_it(sheet))
    speed = None if air.air_speed_m_s is None else units.air_speed(air.air_speed_m_s)
    time = None if air.moving_since_ms is None else clock_text(air.moving_since_ms)
    return _wait(say("Not yet: the air is moving"), _moving_text(time, speed), _still_it(sheet))


def _moving_text(time: str | None, speed: str | None) -> str:
    """Return since when the air moves, and how fast, as far as that is known."""
    if time is None:
        return say("Moving.") if speed is None else say("Moving, {speed}.", speed=speed)
    if speed is None:
        return say("Moving since {time}.", time=time)
    return say("Moving since {time}, {speed}.", time=time, speed=speed)


def _still_it(sheet: DataSheet | None) -> str:
    if sheet is not None and sheet.kind is Kind.SOLVENTBORNE:
        return say("Turn what moves the air away from the piece, and keep fresh air coming in.")
    return say("Turn off what moves the air, or turn it away.")


def _unknown_movement(air: AirNow) -> Sentence | None:
    if air.movement is not Movement.UNKNOWN:
        return None
    if air.typed is not None:
        nobody = say("Nobody said what it does at the pieces.")
        return _wait(say("Not known whether the air moves"), nobody, say(TRY_TISSUE))
    return _wait(
        say("Not known whether the air moves"),
        say("The air is not measured, or its sensor takes its first ten readings."),
        say("Check the air sensor."),
    )


def _temperature(temperature_C: float, sheet: DataSheet | None, units: Units) -> Sentence | None:
    if sheet is None or sheet.apply_C is None:
        return None
    least_C, greatest_C = sheet.apply_C
    if temperature_C < least_C:
        now, least = _told(units.temperature, temperature_C, least_C), units.limit(least_C)
        headline = say("Too cold to lay a coat: {now}, wait for {limit} or more", now=now, limit=least)
        return _wait(headline, say("The sheet of {product} says so.", product=sheet.title), _warm(sheet))
    if temperature_C > greatest_C:
        now, greatest = _told(units.temperature, temperature_C, greatest_C), units.limit(greatest_C)
        headline = say("Too warm to lay a coat: {now}, wait for {limit} or less", now=now, limit=greatest)
        so = say("The sheet of {product} says so.", product=sheet.title)
        return _wait(headline, so, say("Lay it in a cooler hour."))
    return None


def _film(temperature_C: float, sheet: DataSheet | None, units: Units) -> Sentence | None:
    if sheet is None or sheet.mfft_C is None:
        return None
    if temperature_C - FILM_COOLING_K - sheet.mfft_C >= FILM_MARGIN.act:
        return None
    needed_C = sheet.mfft_C + FILM_MARGIN.act + FILM_COOLING_K
    now, needed = _told(units.temperature, temperature_C, needed_C), units.limit(needed_C)
    return _wait(
        say("Too cold for the film to form: {now}, wait for {limit} or more", now=now, limit=needed),
        say(
            "A drying film is up to {cooling} colder than the air; this one needs {least}.",
            cooling=units.difference_limit(FILM_COOLING_K),
            least=units.limit(sheet.mfft_C),
        ),
        _warm(sheet),
    )


def _humidity(humidity_pct: float, sheet: DataSheet | None, units: Units) -> Sentence | None:
    own_pct = None if sheet is None else sheet.max_humidity_pct
    if own_pct is None and sheet is not None and sheet.kind is Kind.SOLVENTBORNE:
        return None
    limit_pct = HUMIDITY.caution if own_pct is None else own_pct
    if humidity_pct <= limit_pct:
        return None
    now, most = units.beside(humidity_pct, limit_pct), units.plain(limit_pct)
    headline = say("Too damp to lay a coat: {now} %, wait for {limit} % or less", now=now, limit=most)
    basis = say("General limit.") if own_pct is None else say("The product's sheet says so.")
    return _wait(headline, basis, _warm(sheet))


def _told(words: Callable[[float, int], str], value: float, limit: float) -> str:
    """Return `value` with a tenth, and with a hundredth where it would else read as the limit itself."""
    return words(value, 2 if words(value, 1) == words(limit, 1) else 1)


def _dew_point(temperature_C: float, dew_point_C: float | None, units: Units) -> Sentence | None:
    if dew_point_C is None or temperature_C - dew_point_C >= DEW_MARGIN.act:
        return None
    margin = _told(units.difference, max(0.0, temperature_C - dew_point_C), DEW_MARGIN.act)
    return _wait(
        say(
            "Too near the dew point to lay a coat: {margin}, wait for {limit} or more",
            margin=margin,
            limit=units.difference_limit(DEW_MARGIN.act),
        ),
        say("The dew point is {dew}: water may settle on the piece.", dew=units.temperature(dew_point_C)),
        say("Warm the room gently."),
    )


def _warm(sheet: DataSheet | None) -> str:
    if sheet is not None and sheet.kind is Kind.SOLVENTBORNE:
        return say("Warm the room gently, and put the heater out before the solvent is opened.")
    return say("Warm the room gently; keep the heater's air off the pieces.")


def _wait(headline: str, detail: str, advice: str) -> Sentence:
    return Sentence(level=Level.CAUTION, headline=headline, detail=detail, advice=advice)
