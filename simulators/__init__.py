"""A house that leaks, weather, a fan and gauges; and the wire server that makes them look like real instruments."""
