"""SQLite: readings and records on disk, and files in and out."""
