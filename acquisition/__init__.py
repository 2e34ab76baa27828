"""The test itself: rig, steps, procedures, engine, control, the job file and the papers made from it."""
