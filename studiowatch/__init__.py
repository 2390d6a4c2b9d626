"""Watches a painter's drying room: ready times for each coat, and a warning when the air would spoil one."""

__version__ = "0.1.0"
