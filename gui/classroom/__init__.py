"""The trainer's side of a class: the only part of the window that knows the simulator. The front door opens it."""
