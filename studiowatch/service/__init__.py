"""The keeper: one thread that owns the store and the model and publishes snapshots."""
