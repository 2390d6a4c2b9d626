"""Thin widgets: they set what the view models say."""
