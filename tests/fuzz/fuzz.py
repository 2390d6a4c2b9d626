"""Search for bytes that break a target, guided by coverage, for so many seconds.

    .venv/bin/pip install atheris
    .venv/bin/python tests/fuzz/fuzz.py wire 600

Seeds are what the project has of the kind, each once. A room log is kept to some rows: every row goes through the same
code, a run costs as much as its rows, and seeds of 3000 bytes made it two hundred times slower. What breaks a target is
kept in `tests/fuzz/crashes/TARGET`, where the tests try it from then on; mend the program, not the corpus.
"""

from __future__ import annotations

import json
import shutil
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["studiowatch", "tomllib", "csv", "json"]):
    from targets import TARGETS

    from studiowatch.board.room_log_cells import VALUE_COLUMNS
    from studiowatch.board.room_log_times import TIME_COLUMNS

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
MOST_BYTES = 3000  # of a seed
LONGEST = 4096  # bytes that are tried
SHORT = {"room_log": (300, 512)}  # the same where less does: a header and five rows; twenty rows that are short
WORDS = {  # that nobody would find by chance
    "room_log": (
        *VALUE_COLUMNS,
        *TIME_COLUMNS,
        "cover",
        "2026-03-02T09:00:00Z",
        "2026-03-02T09:00:00+01:00",
        "1772442000",
        "1772442000000",
        "1e400",
        "nan",
    ),
}
WRITTEN = {
    "loose": (
        b"Temp: 21.4 C, Humidity: 48.0 %\r\n" * 8,
        b'{"temp_c": 21.4, "hum": 48.0}\n' * 8,
        b"temp (C),hum (%)\r\n" + b"21.4,48.0\r\n" * 8,
    ),
    "room_log": (b"time,temperature_C,humidity_pct\n2026-03-02T09:00:00Z,21.0,48.0\n2026-03-02T09:01:00Z,,48.0\n",),
}
FILES = {
    "room_log": ("tests/**/*.csv", "resources/**/*.csv"),
    "studio": ("tests/**/*.toml", "resources/demo/*.toml"),
    "sheet": ("resources/sheets/*.toml",),
}


def seeds(target: str) -> Iterator[bytes]:
    """Yield what the project has of the kind, each once and cut at the end of a line where it is long."""
    most, _ = SHORT.get(target, (MOST_BYTES, LONGEST))
    yield from dict.fromkeys(
        seed if len(seed) <= most else seed[: seed.rfind(b"\n", 0, most) + 1] for seed in _all(target)
    )


def _all(target: str) -> Iterator[bytes]:
    yield from WRITTEN.get(target, ())
    if target in {"wire", "loose"}:
        vectors = json.loads((ROOT / "shared" / "wire_vectors.json").read_text(encoding="utf-8"))
        yield b"".join(vector["line"].encode() for vector in vectors["accepted"])
    for pattern in FILES.get(target, ()):
        for path in ROOT.glob(pattern):
            yield path.read_bytes()


def main() -> None:
    """Run libFuzzer on one target."""
    target, seconds = sys.argv[1], sys.argv[2]
    _, longest = SHORT.get(target, (MOST_BYTES, LONGEST))
    kept = HERE / "crashes" / target
    kept.mkdir(parents=True, exist_ok=True)
    corpus = Path(tempfile.mkdtemp(prefix=f"fuzz-{target}-"))
    for number, seed in enumerate(seeds(target)):
        (corpus / f"seed-{number}").write_bytes(seed)
    for path in kept.iterdir():
        shutil.copy(path, corpus / path.name)
    options = [
        f"-max_total_time={seconds}",
        f"-max_len={longest}",
        "-timeout=20",
        f"-artifact_prefix={kept}/",
        "-print_final_stats=1",
    ]
    if target in WORDS:
        words = Path(tempfile.mkdtemp(prefix="fuzz-words-")) / "words"
        words.write_text("".join(f'"{word}"\n' for word in WORDS[target]), encoding="ascii")
        options.append(f"-dict={words}")
    atheris.Setup([sys.argv[0], str(corpus), *options], TARGETS[target])
    atheris.Fuzz()


if __name__ == "__main__":
    main()
