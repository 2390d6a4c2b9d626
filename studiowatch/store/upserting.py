"""SQL that inserts a row or replaces its values."""

from __future__ import annotations

from collections.abc import Sequence


def upsert(table: str, columns: Sequence[str]) -> str:
    """Return SQL that inserts a row or replaces its values, so that what refers to the row stays."""
    key, *rest = columns
    return (
        f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({', '.join('?' * len(columns))}) "  # noqa: S608 - own names
        f"ON CONFLICT ({key}) DO UPDATE SET {', '.join(f'{name} = excluded.{name}' for name in rest)}"
    )
