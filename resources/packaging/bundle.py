"""Make the self-contained program of this system: a wheel, an empty environment with it, and PyInstaller's folder.

    python3 resources/packaging/bundle.py [--into dist]

On Linux it leaves `studiowatch-VERSION-linux-MACHINE.tar.gz` there: unpack it anywhere and start
`studiowatch/studiowatch`; `studiowatch/install.sh` puts it into the menu of the user who runs it. Windows and macOS
leave PyInstaller's folder; there, this has never been run. Needs a network, for PyInstaller and the libraries; only
Python's standard library to start.
"""

from __future__ import annotations

import argparse
import os
import platform
import shutil
import subprocess
import sys
import tarfile
import tempfile
import venv
from collections.abc import Sequence
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
SPECS = {"linux": "linux.spec", "win32": "windows.spec", "darwin": "macos.spec"}
TOOLS = ("build>=1.2,<2", "pyinstaller>=6.11,<7")
INSTALLER = """#!/bin/sh
# Puts studiowatch into your own menu, from where this folder lies now. `install.sh --remove` takes it away again.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
data=${XDG_DATA_HOME:-$HOME/.local/share}
entry=$data/applications/studiowatch.desktop
if [ "${1:-}" = --remove ]; then
    rm -f "$entry" "$data"/icons/hicolor/*/apps/studiowatch.png "$data/icons/hicolor/scalable/apps/studiowatch.svg"
    exit 0
fi
mkdir -p "$data/applications" "$data/icons"
cp -R "$here/share/icons/hicolor" "$data/icons/"
sed "s|^Exec=studiowatch|Exec=\\"$here/studiowatch\\"|" "$here/share/applications/studiowatch.desktop" > "$entry"
"""


def run(words: Sequence[str | Path], folder: Path | None = None) -> None:
    """Run a command of the way, in `folder`; end with its exit code where it fails."""
    print("+", *words, file=sys.stderr, flush=True)
    code = subprocess.run(words, cwd=folder, check=False).returncode
    if code:
        raise SystemExit(code)


def make_environment(folder: Path) -> Path:
    """Make an environment with the wheel of this project and PyInstaller; return its Python."""
    venv.create(folder / "env", with_pip=True)
    python = (
        folder / "env" / ("Scripts" if os.name == "nt" else "bin") / ("python.exe" if os.name == "nt" else "python")
    )
    run([python, "-m", "pip", "install", "--quiet", *TOOLS])
    run([python, "-m", "build", "--outdir", folder / "wheel", ROOT])
    (wheel,) = (folder / "wheel").glob("*.whl")
    run([python, "-m", "pip", "install", "--quiet", wheel])
    return python


def add_menu_files(env: Path, bundle: Path) -> None:
    """Put the desktop entry, the icons and what installs them beside the program; the wheel brought them along."""
    shutil.copytree(env / "share", bundle / "share")
    installer = bundle / "install.sh"
    installer.write_text(INSTALLER, encoding="utf-8")
    installer.chmod(0o755)
    shutil.copy(ROOT / "LICENSE", bundle)


def pack(bundle: Path, into: Path, version: str) -> Path:
    """Pack the folder, owned by nobody in particular."""
    packed = into / f"studiowatch-{version}-linux-{platform.machine()}.tar.gz"

    def plain(entry: tarfile.TarInfo) -> tarfile.TarInfo:
        entry.uid = entry.gid = 0
        entry.uname = entry.gname = ""
        return entry

    with tarfile.open(packed, "w:gz") as archive:
        archive.add(bundle, arcname="studiowatch", filter=plain)
    return packed


def main() -> None:
    """Make it."""
    call = argparse.ArgumentParser(description=__doc__)
    call.add_argument("--into", type=Path, default=ROOT / "dist")
    into = call.parse_args().into.resolve()
    into.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as holder:
        work = Path(holder)
        python = make_environment(work)
        freeze = ["-m", "PyInstaller", "--noconfirm", "--distpath", into, "--workpath", work / "build"]
        # in `work`, not beside the code: it is the wheel that is to be found
        run([python, *freeze, HERE / SPECS[sys.platform]], work)
        ask = [python, "-c", "import studiowatch; print(studiowatch.__version__)"]
        version = subprocess.check_output(ask, cwd=work, text=True)
        if sys.platform == "linux":
            add_menu_files(work / "env", into / "studiowatch")
            print(pack(into / "studiowatch", into, version.strip()))


if __name__ == "__main__":
    main()
