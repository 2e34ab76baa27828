"""Numbers: pure functions and frozen records. No clock, no files but its own data; pint only at its public edge."""
