"""A computer with ports that boards are plugged into and pulled out of, on a clock that only its own reads move on."""

from __future__ import annotations

import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from studiowatch.board.events import BoardEvent
from studiowatch.board.port import PortGone, PortRefused, PortSeen
from studiowatch.board.reader import Reader
from studiowatch.board.simulated import SteppedClock
from studiowatch.board.wire import Kind, encode

START_MS = 1_772_442_000_000  # 2026-03-02T09:00:00Z
WITHIN_S = 20.0  # a wait that is not met by then is a failure; nothing here waits for it to pass
STEP_MS = 100

Talk = Callable[[int], bytes]
"""What a device sends in the step that begins so many ms after it was opened."""


def silent(_: int) -> bytes:
    return b""


def board(boot_ms: int = 2000, junk: bytes = b"\xff\x00boot\n") -> Talk:
    """Return a board that opening restarts: junk of its boot loader, hello, then a line a second."""

    def talk(opened_ms: int) -> bytes:
        if opened_ms < boot_ms:
            return junk if opened_ms == boot_ms // 2 else b""
        up_ms = opened_ms - boot_ms
        hello = encode(Kind.HELLO, {"v": "1", "id": "A1", "b": "1", "th": "sht4x", "sn": "1"}) if not up_ms else b""
        due = up_ms % 1000 == 200
        number = {"n": str(up_ms // 1000), "u": str(up_ms), "t": "21.4", "h": "48.0"}
        return hello + (encode(Kind.DATA, number) if due else b"")

    return talk


def noise(_: int) -> bytes:
    return b"$GPRMC,,V*7\r\n\x80\xf1"


@dataclass
class Device:
    """Something that is plugged in; `refusal` is why it may not be opened."""

    port: PortSeen
    talk: Talk = silent
    refusal: str = ""
    baud: int = 9600
    vanishes_silently: bool = False


@dataclass
class Computer:
    """Holds devices by the names of their ports, and what is to happen at which second."""

    devices: list[Device] = field(default_factory=list)
    clock: SteppedClock = field(default_factory=lambda: SteppedClock(START_MS))
    events: list[BoardEvent] = field(default_factory=list)
    opened: list[tuple[float, str, int]] = field(default_factory=list)
    listed_s: list[float] = field(default_factory=list)
    reader: Reader = field(init=False)
    _plans: list[tuple[float, Callable[[], object]]] = field(default_factory=list)
    _is_over: threading.Event = field(default_factory=threading.Event)
    _may_end: threading.Event = field(default_factory=threading.Event)
    _end_s: float = 0.0

    def at(self, second: float, action: Callable[[], object]) -> None:
        self._plans.append((second, action))

    def plug_in(self, device: Device) -> None:
        self.devices.append(device)

    def pull_out(self, device: Device) -> None:
        self.devices.remove(device)

    def list_ports(self) -> Sequence[PortSeen]:
        self.listed_s.append(self.now_s)
        return [device.port for device in self.devices]

    def open_port(self, name: str, baud: int) -> FakePort:
        self.opened.append((self.now_s, name, baud))
        device = next((device for device in self.devices if device.port.name == name), None)
        if device is None:
            raise PortGone(f"There is no port {name}.")
        if device.refusal:
            raise PortRefused(device.refusal)
        return FakePort(self, device, baud)

    @property
    def now_s(self) -> float:
        return self.clock.monotonic_s()

    def pass_ms(self, step_ms: int) -> None:
        if self.now_s >= self._end_s:
            self._is_over.set()
            self._may_end.wait(WITHIN_S)
        self.clock.advance(step_ms)
        due = [plan for plan in self._plans if plan[0] <= self.now_s]
        self._plans = [plan for plan in self._plans if plan not in due]
        for _, action in due:
            action()

    def wait(self, seconds: float) -> None:
        self.pass_ms(round(seconds * 1000))

    def watch(self, seconds: float, **how: object) -> list[BoardEvent]:
        """Let a reader run for so many seconds of this clock and return what it told."""
        self._end_s = seconds
        self.reader = Reader(
            clock=self.clock, open_port=self.open_port, list_ports=self.list_ports, wait=self.wait, **how
        )
        self.reader.start(self.events.append)
        assert self._is_over.wait(WITHIN_S)
        told = list(self.events)
        self._may_end.set()
        self.reader.stop()
        return told

    def told_s(self, event: BoardEvent) -> float:
        """Return when an event was told, s."""
        return (event.time_ms - START_MS) / 1000


class FakePort:
    """The open port of a device."""

    def __init__(self, computer: Computer, device: Device, baud: int) -> None:
        self._computer = computer
        self._device = device
        self._baud = baud
        self._opened_ms = 0

    def read_some(self, timeout_s: float) -> bytes:
        for _ in range(round(timeout_s * 1000 / STEP_MS)):
            if self._device not in self._computer.devices and not self._device.vanishes_silently:
                raise PortGone("The board vanished.")
            data = self._device.talk(self._opened_ms) if self._device in self._computer.devices else b""
            self._computer.pass_ms(STEP_MS)
            self._opened_ms += STEP_MS
            if data:
                return data if self._baud == self._device.baud else bytes(byte | 0x80 for byte in data)
        return b""

    def write(self, data: bytes) -> None:
        assert data == b"?"

    def cancel(self) -> None: ...

    def close(self) -> None: ...
