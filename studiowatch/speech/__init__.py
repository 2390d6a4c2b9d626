"""How she is spoken to: her language, her units, her clock."""
