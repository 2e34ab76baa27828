"""Passive widgets: each shows the picture it is given and tells what the user asked for."""
