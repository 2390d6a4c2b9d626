"""The sounds and the thread that plays them. That they are heard was not tested: no machine here has a loudspeaker."""

from __future__ import annotations

import io
import os
import threading
import wave
from pathlib import Path
from typing import Self

import miniaudio
import numpy as np
import pytest

from studiowatch.ui import sound as sound_module
from studiowatch.ui.models.alarm import Sound
from studiowatch.ui.sound import (
    NO_SOUND,
    DeviceSpeaker,
    sound_file,
    sound_trouble,
    sound_way,
    tried_silently,
    wave_file,
)

from .make_sounds import SCORES, samples


def read(sound: Sound) -> tuple[np.ndarray, int]:
    with wave.open(io.BytesIO(sound_file(sound))) as opened:
        assert opened.getsampwidth() == 2
        assert opened.getnchannels() == 1
        return np.frombuffer(opened.readframes(opened.getnframes()), "<i2"), opened.getframerate()


@pytest.mark.parametrize("sound", list(Sound))
def test_that_a_sound_is_short_starts_and_ends_in_silence_and_does_not_clip(sound: Sound) -> None:
    wave_form, rate_Hz = read(sound)
    assert 0.3 < len(wave_form) / rate_Hz < 2.0
    assert abs(int(wave_form[0])) < 100
    assert abs(int(wave_form[-1])) < 400
    assert 8000 < np.abs(wave_form.astype(int)).max() < 32_000


@pytest.mark.parametrize("sound", list(Sound))
def test_that_the_shipped_sound_is_what_the_score_says(sound: Sound) -> None:
    wave_form, rate_Hz = read(sound)
    first_Hz, length_s, _ = SCORES[sound][0]
    note = wave_form[: round(length_s * rate_Hz)]
    loudest = np.argmax(np.abs(np.fft.rfft(note))) * rate_Hz / len(note)
    assert loudest == pytest.approx(first_Hz, abs=rate_Hz / len(note))
    assert len(samples(SCORES[sound])) == len(wave_form)


@pytest.fixture(autouse=True)
def no_player(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("shutil.which", lambda _name: None)


@pytest.fixture
def null_device(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sound_module, "_backends", lambda: [miniaudio.Backend.NULL])


@pytest.mark.usefixtures("null_device")
def test_that_a_device_that_plays_into_nothing_is_no_sound() -> None:
    speaker = DeviceSpeaker()
    assert speaker.trouble == ""
    speaker.play(Sound.ATTENTION)
    speaker.close()
    assert speaker.trouble == NO_SOUND


def test_that_a_machine_without_a_card_says_so_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sound_module, "_backends", lambda: None)
    speaker = DeviceSpeaker()
    assert speaker.trouble == sound_trouble() == NO_SOUND
    speaker.play(Sound.INSISTENT)
    speaker.close()
    assert speaker.trouble == NO_SOUND


def test_that_a_device_that_fails_is_no_sound_and_the_thread_lives(monkeypatch: pytest.MonkeyPatch) -> None:
    def failing(_sound: Sound, _loudness: float) -> str:
        raise miniaudio.MiniaudioError("failed to init device")

    monkeypatch.setattr(sound_module, "_play", failing)
    speaker = DeviceSpeaker()
    speaker.play(Sound.ATTENTION)
    speaker.play(Sound.ATTENTION)
    assert speaker._thread.is_alive()
    speaker.close()
    assert speaker.trouble == NO_SOUND


class StalledDevice:
    """A device that opens, and never asks for a sample: a sink that is suspended, a screen that is off."""

    backend = "ALSA"

    def __init__(self, **_how: object) -> None:
        pass

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_fault: object) -> None:
        pass

    def start(self, _stream: object) -> None:
        pass


@pytest.mark.usefixtures("null_device")
def test_that_a_device_that_takes_no_sample_is_no_sound(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(miniaudio, "PlaybackDevice", StalledDevice)
    monkeypatch.setattr(sound_module, "_LONGEST_SOUND_S", 0.01)
    assert tried_silently() == NO_SOUND


def test_that_a_device_that_does_not_return_is_no_sound_and_holds_nobody_up(monkeypatch: pytest.MonkeyPatch) -> None:
    begun, gate = threading.Event(), threading.Event()

    def hanging(_sound: Sound, _loudness: float) -> str:
        begun.set()
        gate.wait(10)
        return ""

    monkeypatch.setattr(sound_module, "_play", hanging)
    monkeypatch.setattr(sound_module, "_backends", lambda: [miniaudio.Backend.NULL])
    speaker = DeviceSpeaker()
    speaker.play(Sound.ATTENTION)
    assert begun.wait(10)
    assert speaker.trouble == ""
    monkeypatch.setattr(sound_module, "HANGS_AFTER_S", 0.0)
    monkeypatch.setattr(sound_module, "_LONGEST_SOUND_S", 0.01)
    assert speaker.trouble == NO_SOUND
    speaker.play(Sound.ATTENTION)
    speaker.play(Sound.ATTENTION)
    with pytest.raises(RuntimeError, match="lives on"):
        speaker.close()
    gate.set()
    speaker.close()
    assert speaker.trouble == ""


def test_that_the_stream_gives_every_sample_once_and_then_silence() -> None:
    ended = threading.Event()
    data = bytes(range(1, 11))
    stream = sound_module._stream(data, ended)
    next(stream)
    got = b"".join(stream.send(3) for _ in range(3))
    assert got[:10] == data
    assert set(got[10:]) == {0}
    assert ended.is_set()


def test_that_more_sounds_than_two_do_not_pile_up(monkeypatch: pytest.MonkeyPatch) -> None:
    gate, played = threading.Event(), []

    def slow(sound: Sound, _loudness: float) -> str:
        gate.wait(10)
        played.append(sound)
        return ""

    monkeypatch.setattr(sound_module, "_play", slow)
    speaker = DeviceSpeaker()
    for _ in range(50):
        speaker.play(Sound.ATTENTION)
    gate.set()
    speaker.close()
    assert 1 <= len(played) <= 4


@pytest.mark.parametrize("loudness", [0.2, 0.7, 1.0])
def test_that_a_sound_is_made_as_loud_as_asked(loudness: float) -> None:
    with wave.open(io.BytesIO(wave_file(Sound.INSISTENT, loudness))) as opened:
        made = np.frombuffer(opened.readframes(opened.getnframes()), "<i2").astype(int)
    full, _ = read(Sound.INSISTENT)
    assert np.abs(made).max() == pytest.approx(loudness * np.abs(full.astype(int)).max(), abs=1)


@pytest.fixture
def made_player(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Put a player first on the path that keeps what it is given, and take every sound device away."""
    heard = tmp_path / "heard.wav"
    player = tmp_path / "paplay"
    player.write_text(f'#!/bin/sh\ncat "$1" > "{heard}"\n', "utf-8")
    player.chmod(0o755)
    monkeypatch.setenv("PATH", str(tmp_path), prepend=os.pathsep)
    monkeypatch.setattr("shutil.which", lambda name: str(player) if name == "paplay" else None)
    monkeypatch.setattr(sound_module, "_backends", lambda: None)
    return heard


def test_that_without_a_device_the_desktops_player_is_heard(made_player: Path) -> None:
    assert sound_trouble() == ""
    assert sound_way() == "the player paplay"
    speaker = DeviceSpeaker()
    speaker.play(Sound.ATTENTION, 0.5)
    speaker.close()
    assert speaker.trouble == ""
    assert made_player.read_bytes() == wave_file(Sound.ATTENTION, 0.5)


def test_that_a_player_that_fails_is_no_sound(made_player: Path, tmp_path: Path) -> None:
    (tmp_path / "paplay").write_text("#!/bin/sh\nexit 1\n", "utf-8")
    speaker = DeviceSpeaker()
    speaker.play(Sound.ATTENTION)
    speaker.close()
    assert speaker.trouble == tried_silently() == NO_SOUND
    assert not made_player.exists()


def test_that_a_try_plays_the_warning_without_a_sound(made_player: Path) -> None:
    assert tried_silently() == ""
    with wave.open(str(made_player)) as played:
        assert played.getnframes() == read(Sound.ATTENTION)[0].size
        assert set(played.readframes(played.getnframes())) == {0}


def test_that_a_machine_without_anything_says_what_is_left(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sound_module, "_backends", lambda: None)
    assert sound_way() == "the desktop's beep and a flash of the window"
