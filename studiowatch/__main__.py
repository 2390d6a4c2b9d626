"""Compose and start; nothing else."""

from __future__ import annotations


def main() -> int:
    """Run studiowatch and return its exit code."""
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
