"""View models: words, colours and ranges, tested without Qt."""
