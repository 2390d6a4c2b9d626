"""What is drawn for paper: no screen is needed."""
