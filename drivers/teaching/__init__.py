"""Teaching a gauge that no profile knows: look at what it sends, say what the numbers are, get a profile."""
