"""Planning a test by what its first zero-flow record shows: what it will know, which schedule pays, whether to test."""
