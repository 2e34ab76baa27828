"""Bytes to frames, without any port: each framer is fed whatever arrived and gives back whole frames only."""
