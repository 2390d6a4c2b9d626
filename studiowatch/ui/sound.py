"""The warning's voice: a thread of its own plays it, and says so when the machine has no sound."""

from __future__ import annotations

import io
import logging
import queue
import sys
import threading
import time
import wave
from collections.abc import Generator
from contextlib import suppress
from importlib.resources import files
from pathlib import Path
from typing import Protocol

import miniaudio
import numpy as np

from studiowatch.speech.words import mark, say
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.players import play_elsewhere, player_name

_RATE_HZ = 44100
_CHANNELS = 1
_LONGEST_SOUND_S = 5.0
HANGS_AFTER_S = 20.0  # s, longer than the device and then the player may take: the sound's server does not answer
_NULL_BACKEND = "Null"  # what the library calls a device that plays into nothing
NO_SOUND = mark("no sound on this machine")

logger = logging.getLogger(__name__)


class Speaker(Protocol):
    """Something that can be heard."""

    @property
    def trouble(self) -> str:
        """Return why nothing can be heard, or ""."""
        ...

    def play(self, sound: Sound, loudness: float = 1.0) -> None:
        """Play `sound` soon, 0 to 1 loud, and return at once."""
        ...

    def close(self) -> None:
        """Fall silent and let the device go."""
        ...


class DeviceSpeaker:
    """Plays through the machine's sound device, opened only while something is played."""

    def __init__(self) -> None:
        self._wanted: queue.Queue[tuple[Sound, float] | None] = queue.Queue(maxsize=2)
        self._trouble = sound_trouble()
        self._began_s: float | None = None
        self._thread = threading.Thread(target=self._run, name="speaker", daemon=True)
        self._thread.start()

    @property
    def trouble(self) -> str:
        """Return why nothing can be heard, or ""; a device that keeps a sound for long plays nothing after it."""
        began_s = self._began_s
        if began_s is not None and time.monotonic() - began_s >= HANGS_AFTER_S:
            return say(NO_SOUND)
        return self._trouble

    def play(self, sound: Sound, loudness: float = 1.0) -> None:
        """Play `sound` soon, 0 to 1 loud; while two are waiting already, one more says nothing new."""
        if not self._wanted.full():
            self._wanted.put_nowait((sound, loudness))

    def close(self) -> None:
        """Finish the sound that plays, and join the thread.

        Raises
        ------
        RuntimeError
            If the thread lives on: the device does not return.
        """
        with suppress(queue.Full):
            self._wanted.put(None, timeout=2 * _LONGEST_SOUND_S)
        self._thread.join(timeout=2 * _LONGEST_SOUND_S)
        if self._thread.is_alive():
            raise RuntimeError("the speaker's thread lives on")  # not said

    def _run(self) -> None:
        while (wanted := self._wanted.get()) is not None:
            self._began_s = time.monotonic()
            try:
                self._trouble = _sound(*wanted)
            except Exception:  # the thread's top: the next warning is to be heard all the same
                logger.exception("a sound could not be played")  # not said
                self._trouble = say(NO_SOUND)
            finally:
                self._began_s = None


def sound_trouble() -> str:
    """Return why nothing can be heard on this machine, or ""."""
    return "" if _backends() or player_name() else say(NO_SOUND)


def tried_silently() -> str:
    """Play a warning to its end without a sound, and return why it would not be heard, or ""."""
    return _sound(Sound.ATTENTION, 0.0)


def sound_way() -> str:
    """Return what a warning would be heard through on this machine."""
    backends, player = _backends(), player_name()
    if backends:
        names = say(" or ").join(backend.name for backend in backends)
        if player:
            return say("the sound device ({names}), else the player {player}", names=names, player=player)
        return say("the sound device ({names})", names=names)
    if player:
        return say("the player {player}", player=player)
    return say("the desktop's beep and a flash of the window")


def sound_file(sound: Sound) -> bytes:
    """Return the bytes of the WAV file for `sound`."""
    return files("studiowatch.resources").joinpath("sounds", f"{sound}.wav").read_bytes()


def wave_file(sound: Sound, loudness: float) -> bytes:
    """Return the WAV file for `sound`, made as loud."""
    made = io.BytesIO()
    with wave.open(io.BytesIO(sound_file(sound))) as read, wave.open(made, "wb") as written:
        written.setparams(read.getparams())
        written.writeframes(_scaled(read.readframes(read.getnframes()), loudness))
    return made.getvalue()


def _scaled(samples: bytes, loudness: float) -> bytes:
    return (np.frombuffer(samples, "<i2") * loudness).astype("<i2").tobytes()


def _sound(sound: Sound, loudness: float) -> str:
    """Play `sound` through the device, else the platform's player, and return why it was not heard, or ""."""
    try:
        trouble = _play(sound, loudness)
    except miniaudio.MiniaudioError:
        trouble = say(NO_SOUND)
    return "" if trouble and play_elsewhere(wave_file(sound, loudness)) else trouble


def _play(sound: Sound, loudness: float) -> str:
    """Play `sound` to its end, and return the trouble, or ""."""
    backends = _backends()
    if not backends:
        return say(NO_SOUND)
    decoded = miniaudio.decode(sound_file(sound), nchannels=_CHANNELS, sample_rate=_RATE_HZ)
    device = miniaudio.PlaybackDevice(
        nchannels=_CHANNELS, sample_rate=_RATE_HZ, backends=backends, app_name="studiowatch"
    )
    with device:
        if device.backend == _NULL_BACKEND:
            return say(NO_SOUND)
        ended = threading.Event()
        stream = _stream(_scaled(decoded.samples.tobytes(), loudness), ended)
        next(stream)
        device.start(stream)
        if not ended.wait(_LONGEST_SOUND_S):  # it opened, and took no samples: nobody heard it
            return say(NO_SOUND)
    return ""


def _stream(samples: bytes, ended: threading.Event) -> Generator[bytes, int, None]:
    """Yield as many frames as the device asks for, then set `ended` once the last were taken."""
    frame_bytes = 2 * _CHANNELS
    frames = yield b""
    start = 0
    while start < len(samples):
        stop = start + frames * frame_bytes
        chunk = samples[start:stop]
        frames = yield chunk + b"\0" * (frames * frame_bytes - len(chunk))
        start = stop
    ended.set()
    while True:
        frames = yield b"\0" * (frames * frame_bytes)


def _backends() -> list[miniaudio.Backend] | None:
    """Return what to play through. On Linux without a sound card ALSA is not tried: it fills the terminal."""
    if not sys.platform.startswith("linux"):
        return [miniaudio.Backend.WASAPI] if sys.platform == "win32" else [miniaudio.Backend.COREAUDIO]
    backends = []
    if any(Path("/run/user").glob("*/pulse/native")):
        backends.append(miniaudio.Backend.PULSEAUDIO)
    if any(Path("/dev/snd").glob("pcm*p")):
        backends.append(miniaudio.Backend.ALSA)
    return backends or None
