"""Data that ships with studiowatch: sheets, icons, sounds and the demo scenario."""
