"""The board page's states, made up: ports, lines, calibrations and boxes over salts."""

from __future__ import annotations

from dataclasses import replace
from math import exp

from studiowatch.board.events import LineCounts, LineRefused, MappingAsked
from studiowatch.board.loose_intake import LooseIntake
from studiowatch.board.onlooker import Onlooker
from studiowatch.board.port import PortSeen
from studiowatch.room.air_points import AirPoint
from studiowatch.room.air_speed_calibration import calibrate_air_speed
from studiowatch.room.humidity_calibration import SaltPoint, calibrate_humidity
from studiowatch.room.plateau import Plateau, settle
from studiowatch.room.readings import Reading
from studiowatch.service.board_now import COLUMNS, SAY_COLUMNS
from studiowatch.service.calibration_commands import CalibrateAirSpeed, CalibrateHumidity, Spell, Walk
from studiowatch.service.calibration_views import CalibrationsView, CalibrationView, DraftView
from studiowatch.service.columns_view import ColumnsView
from studiowatch.service.snapshot import Snapshot

from .scenes import DAY_MS, FOUR_CALM, HOUR_MS, MINUTE_MS, NOW_MS, SILENT

BOARD = PortSeen(name="/dev/ttyUSB0", description="USB serial converter", vid=0x1A86, pid=0x7523)
OTHER = PortSeen(name="/dev/ttyACM0", description="USB modem", vid=0x2341, pid=0x43, serial="7")
BUILT_IN = PortSeen(name="/dev/ttyS0", description="n/a")
LINES = (
    b"$H v=1 id=8DF9E785 fw=rack-ref/0.1 b=1 r=p th=sht4x sn=CAFE0042 per=1000 ch=t:Cel,h:%RH,a:mV,s:mV*05B8\r\n",
    b"$D n=0 u=194 t=21.40 h=48.00 a=596.9 s=5001*5962\r\n",
    b"$D n=3 u=3076 t=!crc h=!crc a=896.8 s=5001*154B\r\n",
)
SPOILT = b"$D n=4 u=4081 t=21.41 h=4x.02 a=601.2 s=5001*1AF0"
REFUSED = (
    "You may not open the port /dev/ttyUSB0: join its group dialout (sudo usermod -aG dialout $USER), then log out "
    "and in again."
)
TAKEN = "The port /dev/ttyACM0 is in use by another program: close that program."


def heard(onlooker: Onlooker) -> None:
    """Let the board be read, with lines good and spoilt."""
    onlooker.listed([BOARD, OTHER, BUILT_IN])
    onlooker.reads(BOARD, "checked lines", 9600)
    onlooker.gave_up(OTHER, TAKEN)
    for second in range(14):
        time_ms = NOW_MS - (14 - second) * 1000
        if second == 9:
            spoilt = LineRefused(
                time_ms=time_ms,
                reason="The checksum is not that of the line.",
                quoted=SPOILT.decode(),
                counts=LineCounts(),
            )
            onlooker.heard(BOARD, SPOILT + b"\r\n", [spoilt], time_ms)
        else:
            onlooker.heard(BOARD, LINES[second % 3], [], time_ms)


def refused(onlooker: Onlooker) -> None:
    """Let a port be refused, and a built-in one be silent."""
    onlooker.listed([BOARD, BUILT_IN])
    onlooker.gave_up(BOARD, REFUSED)
    onlooker.gave_up(BUILT_IN, "/dev/ttyS0 sends nothing that can be read.")


def searching(onlooker: Onlooker) -> None:
    """Let a port be tried."""
    onlooker.listed([OTHER, BUILT_IN])
    onlooker.tries(OTHER, "unchecked lines", 19200)


def box(value_pct: float, *, minutes: int, from_pct: float = 50.0) -> Plateau:
    """Return what the sensor saw in a box that comes to `value_pct`, up to now, one reading a second."""
    plateau = Plateau()
    for second in range(minutes * 60 + 61):
        time_ms = NOW_MS - (minutes * 60 + 60 - second) * 1000
        far = (from_pct - value_pct) * exp(-second / 600) if from_pct != value_pct else 0.0
        plateau = settle(plateau, Reading(time_ms=time_ms, temperature_C=22.0, humidity_pct=value_pct + far))
    return plateau


HUMIDITY = calibrate_humidity(
    SaltPoint(raw_pct=36.1, temperature_C=22.0, time_ms=NOW_MS - 3 * HOUR_MS),
    SaltPoint(raw_pct=77.2, temperature_C=22.0, time_ms=NOW_MS - HOUR_MS),
    now_ms=NOW_MS,
)
# volts as a bead of King's law would give, each a little off, as walks are
AIR = calibrate_air_speed(
    [
        AirPoint(speed_m_s=0.0, signal_mV=822.0, temperature_C=21.0),
        AirPoint(speed_m_s=0.31, signal_mV=1034.0, temperature_C=21.0),
        AirPoint(speed_m_s=0.62, signal_mV=1128.0, temperature_C=21.2),
        AirPoint(speed_m_s=1.2, signal_mV=1271.0, temperature_C=21.3),
    ]
)
HOLDING = (
    CalibrationView(
        key="h",
        sensor="CAFE0042",
        made_ms=NOW_MS - 31 * DAY_MS,
        recheck_ms=NOW_MS - DAY_MS,
        is_present=True,
        sentence="A reading of 50 % is put right to 47.4 %.",
        calibration=HUMIDITY,
    ),
    CalibrationView(
        key="a",
        sensor="CAFE0042",
        made_ms=NOW_MS - 5 * DAY_MS,
        recheck_ms=NOW_MS + 25 * DAY_MS,
        is_present=True,
        sentence=AIR.sentence,
        calibration=AIR,
    ),
)
READ = replace(
    FOUR_CALM,
    board=replace(
        FOUR_CALM.board, port="/dev/ttyUSB0", sensor="sht4x", counts=LineCounts(good=48_211, faulty=3, lost=2, resets=1)
    ),
    room=replace(FOUR_CALM.room, air_signal_mV=823.0),
    calibrations=CalibrationsView(sensor="CAFE0042", holding=HOLDING),
)
HEALTH = "The humidity has read exactly 55.13 % for 3 minutes: the sensor seems stuck."
UNWELL = replace(READ, board=replace(READ.board, health=HEALTH))
UNREAD = replace(SILENT, board=replace(SILENT.board, connected=False, trouble=REFUSED), calibrations=CalibrationsView())
SALTS = CalibrateHumidity(magnesium_ms=NOW_MS - 3 * HOUR_MS, sodium_ms=NOW_MS - HOUR_MS)


def in_box(value_pct: float, *, minutes: int, from_pct: float = 50.0) -> Snapshot:
    """Return the studio with the sensor in a box."""
    plateau = box(value_pct, minutes=minutes, from_pct=from_pct)
    return replace(READ, calibrations=replace(READ.calibrations, plateau=plateau))


def drafted(of: CalibrateHumidity | CalibrateAirSpeed) -> Snapshot:
    """Return the studio with what was tried."""
    calibration = HUMIDITY if isinstance(of, CalibrateHumidity) else AIR
    return replace(READ, calibrations=replace(READ.calibrations, draft=DraftView(of=of, calibration=calibration)))


WALKED = CalibrateAirSpeed(
    still=Spell(start_ms=NOW_MS - 10 * MINUTE_MS, end_ms=NOW_MS - 9 * MINUTE_MS),
    walks=tuple(
        Walk(start_ms=NOW_MS - at_s * 1000, end_ms=NOW_MS - at_s * 1000 + round(4000 / speed), distance_m=4.0)
        for at_s, speed in ((300, 0.31), (240, 0.62), (180, 1.2))
    ),
)


def ask_columns() -> Snapshot:
    """Return the studio with a sketch of bare numbers, of which nothing was said yet."""
    intake = LooseIntake()
    asked = None
    for second in range(8):
        for event in intake.feed(f"21.{second % 3},47.{second % 2},512\r\n".encode(), NOW_MS + second * 1000):
            asked = event if isinstance(event, MappingAsked) else asked
    if asked is None:
        raise LookupError("the intake asks nothing")
    columns = ColumnsView(
        mapping=asked.mapping,
        samples=asked.samples,
        numbers=tuple(zip(asked.mapping.keys, (21.1, 47.0, 512.0), strict=True)),
        numbers_ms=NOW_MS,
    )
    board = replace(
        READ.board, board="usb 2341:0043", checked=False, columns=columns, trouble=SAY_COLUMNS, trouble_code=COLUMNS
    )
    return replace(READ, board=board)
