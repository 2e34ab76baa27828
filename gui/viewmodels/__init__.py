"""What the window says, worked out without Qt: each module turns a moment into a frozen picture of one part."""
