"""Make the two warning sounds: ``python tests/ui/make_sounds.py OUT_DIR``. Plain sums of sines, faded in and out."""

from __future__ import annotations

import sys
import wave
from pathlib import Path

import numpy as np

RATE_HZ = 44100
# (frequency in Hz, length in s, pause after it in s): both lie where hearing is keen, and differ in rhythm
SCORES = {
    "attention": ((660.0, 0.28, 0.06), (880.0, 0.42, 0.0)),
    "insistent": ((988.0, 0.16, 0.05), (784.0, 0.16, 0.05)) * 3,
}
FADE_S = 0.012
LOUDNESS = 0.6


def samples(score: tuple[tuple[float, float, float], ...]) -> np.ndarray:
    """Return a score as 16-bit samples."""
    parts = []
    for frequency_Hz, length_s, pause_s in score:
        time_s = np.arange(round(length_s * RATE_HZ)) / RATE_HZ
        tone = np.sin(2 * np.pi * frequency_Hz * time_s) + 0.35 * np.sin(4 * np.pi * frequency_Hz * time_s)
        fade = np.minimum(1.0, np.minimum(time_s, length_s - time_s) / FADE_S)
        decay = np.exp(-2.2 * time_s / length_s)
        parts += [tone / 1.35 * fade * decay, np.zeros(round(pause_s * RATE_HZ))]
    return np.round(np.concatenate(parts) * LOUDNESS * 32767).astype("<i2")


def write(name: str, folder: Path) -> Path:
    """Write the sound `name` into `folder`."""
    path = folder / f"{name}.wav"
    with wave.open(str(path), "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(2)
        out.setframerate(RATE_HZ)
        out.writeframes(samples(SCORES[name]).tobytes())
    return path


if __name__ == "__main__":
    for sound in SCORES:
        print(write(sound, Path(sys.argv[1])))  # noqa: T201 - run by hand
