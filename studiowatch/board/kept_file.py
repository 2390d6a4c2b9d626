"""A small JSON file beside the records, replaced as a whole: a crash leaves the old one or the new."""

from __future__ import annotations

import json
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
    draft.write_text(json.dumps(kept, indent=1), "utf-8")
    draft.replace(path)
