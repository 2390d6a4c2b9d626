"""Serial in: bytes to checked readings."""
