"""Commands for people and for scripts."""
