"""The air: readings, movement, limits and the health of the sensors."""
