"""Simulated instruments, byte for byte: they know neither port nor clock, only bytes and the time they are told."""
