"""Numbers only: moist air, and heat and vapour transfer at a plate."""
