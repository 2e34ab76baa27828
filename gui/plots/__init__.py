"""Plots: items made once, fed by `setData` only; scales, ticks and logarithms come from the view models."""
