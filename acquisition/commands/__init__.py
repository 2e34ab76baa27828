"""The commands that need neither a simulated house nor a window, each `options -> exit status`."""
