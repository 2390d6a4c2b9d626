"""A small JSON file beside the records, replaced as a whole: a crash or a power cut leaves the old one or the new."""

from __future__ import annotations

import json
import os
from pathlib import Path


def write_kept(path: Path, kept: object) -> None:
    """Replace what is kept in `path`.

    Raises
    ------
    OSError
        If it cannot be written; what was there is there still.
    """
    draft = path.with_suffix(".new")
    draft.touch(mode=0o600)
    with draft.open("w", encoding="utf-8") as out:
        json.dump(kept, out, indent=1)
        out.flush()
        os.fsync(out.fileno())
    draft.replace(path)
