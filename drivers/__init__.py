"""Wires: transports, framing, instruments, profiles, ports. The only folder that imports pyserial and pymodbus."""
