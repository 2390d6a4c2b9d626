"""The work: pieces, coats, prompts, warnings and the words for them."""
