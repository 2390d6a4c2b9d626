"""Ports: bytes in and out of one device, and which devices are there. The only file that knows the serial library."""

from __future__ import annotations

import errno
import stat
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

import serial
from serial.tools import list_ports

from studiowatch.speech.words import say

BAUD = 9600  # bits/s, 8N1: the wire format
READ_TIMEOUT_S = 1.0  # longest that a read holds the reader's thread
WRITE_TIMEOUT_S = 1.0  # a board that takes no bytes is treated as gone

_ABSENT = {errno.ENOENT, errno.ENODEV, errno.ENXIO, errno.EIO}
_GROUPS_OF_SYSTEM = {"root", "wheel"}  # joining one of these would allow far more than a port
_TAKEN = {errno.EBUSY, errno.EAGAIN, errno.EWOULDBLOCK}

if sys.platform == "win32":
    _OPENING_FAULTS: tuple[type[Exception], ...] = (OSError, ValueError)
else:
    import termios

    _OPENING_FAULTS = (OSError, ValueError, termios.error)  # the last is no OSError, and the library lets it through


class PortFault(Exception):  # noqa: N818 - named for what it is: a fault outside the program
    """A fault outside the program, as one sentence for her.

    ::

        PortFault
        ├── PortGone      the device is not there, or vanished while it was read
        └── PortRefused   the device is there, but may not be opened
    """


class PortGone(PortFault):
    """The device is not there, or vanished while it was read."""


class PortRefused(PortFault):
    """The device is there but may not be opened: no permission, in use, or not a serial port."""


class BytePort(Protocol):
    """An open port. One thread reads; `cancel` may come from another."""

    def read_some(self, timeout_s: float) -> bytes:
        """Return what is there, waiting at most `timeout_s` for a first byte; empty if none came.

        Raises
        ------
        PortGone
            If the device vanished.
        """
        ...

    def write(self, data: bytes) -> None:
        """Send `data`. Raises `PortGone` if the device vanished or takes nothing."""
        ...

    def cancel(self) -> None:
        """End a waiting `read_some` early."""
        ...

    def close(self) -> None:
        """Let go of the device."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class PortSeen:
    """A port that the computer offers. Without USB, `vid`, `pid` and `serial` are None.

    Attributes
    ----------
    name : str
        What opens it: ``/dev/ttyACM0``, ``COM3``.
    description, hardware : str
        What the system calls it, for people and for itself; may be empty or "n/a".
    vid, pid : int or None
        USB vendor and product number.
    serial : str or None
        USB serial number.
    """

    name: str
    description: str = ""
    hardware: str = ""
    vid: int | None = None
    pid: int | None = None
    serial: str | None = None

    @property
    def identity(self) -> str:
        """What a board is known by: its USB numbers whatever its port is called, or the port's name without them."""
        return self.name if self.vid is None else f"usb {self.vid:04x}:{self.pid or 0:04x} {self.serial or ''}".strip()

    def is_same_board(self, other: PortSeen) -> bool:
        """Tell whether both are one board, under whatever names: by USB numbers if both have them, else by name."""
        if self.vid is None or other.vid is None:
            return self.name == other.name
        return (self.vid, self.pid, self.serial) == (other.vid, other.pid, other.serial)


def ports() -> list[PortSeen]:
    """Return the ports that the computer offers now, by name. May take seconds on some machines."""
    seen = [
        PortSeen(
            name=port.device,
            description=port.description or "",
            hardware=port.hwid or "",
            vid=port.vid,
            pid=port.pid,
            serial=port.serial_number,
        )
        for port in list_ports.comports()
    ]
    return sorted(seen, key=lambda port: port.name)


class SerialPort:
    """A serial device, opened for this program alone, at `baud` bits/s. Meets `BytePort`.

    Raises
    ------
    PortGone
        If there is no such device.
    PortRefused
        If it may not be opened.
    """

    def __init__(self, name: str, baud: int = BAUD) -> None:
        self._name = name
        try:
            self._device = serial.Serial(
                name, baud, timeout=READ_TIMEOUT_S, write_timeout=WRITE_TIMEOUT_S, exclusive=True
            )
        except _OPENING_FAULTS as fault:
            raise _opening_fault(name, fault) from fault

    def read_some(self, timeout_s: float) -> bytes:
        """Return what is there, waiting at most `timeout_s` for a first byte. Raises `PortGone`."""
        with self._gone_if_it_fails():
            if self._device.timeout != timeout_s:
                self._device.timeout = timeout_s
            first = self._device.read(1)  # empty after a cancel too, though bytes may be there
            return first + self._device.read(self._device.in_waiting)

    def write(self, data: bytes) -> None:
        """Send `data`. Raises `PortGone`."""
        with self._gone_if_it_fails():
            self._device.write(data)

    def cancel(self) -> None:
        """End a waiting read early."""
        with suppress(OSError, TypeError):  # the device went or was closed in between: nothing waits any more
            self._device.cancel_read()

    def close(self) -> None:
        """Let go of the device."""
        self._device.close()

    @contextmanager
    def _gone_if_it_fails(self) -> Iterator[None]:
        """Turn what a vanished device raises into `PortGone`; TypeError comes from a device closed while it is read."""
        try:
            yield
        except (OSError, TypeError) as fault:
            raise PortGone(say("The board on {port} vanished: push its USB plug home.", port=self._name)) from fault


def _opening_fault(name: str, fault: Exception) -> PortFault:
    number = fault.errno if isinstance(fault, OSError) else fault.args[0] if fault.args else None
    text = str(fault)
    if number in _ABSENT or "FileNotFoundError" in text:
        return PortGone(say("There is no port {port}: plug the board in, or choose another port.", port=name))
    if number in _TAKEN or (sys.platform == "win32" and "PermissionError" in text):
        return PortRefused(say("The port {port} is in use by another program: close that program.", port=name))
    if number in {errno.EACCES, errno.EPERM}:
        return PortRefused(_permission_sentence(name))
    return PortRefused(say("The port {port} cannot be opened as a serial port: choose another port.", port=name))


def _permission_sentence(name: str) -> str:
    """Return the one command that lets her open the port."""
    try:
        path = Path(name)
        group = path.group()
        shares = bool(path.stat().st_mode & stat.S_IWGRP)
    except (OSError, KeyError, NotImplementedError):
        return say("You may not open the port {port}: ask whoever looks after this computer for permission.", port=name)
    if shares and group not in _GROUPS_OF_SYSTEM:
        return say(
            "You may not open the port {port}: join its group {group} (sudo usermod -aG {group} $USER), "
            "then log out and in again.",
            port=name,
            group=group,
        )
    return say(
        "You may not open the port {port}: allow it until the board is unplugged (sudo chmod a+rw {port}).", port=name
    )
