package org.lowfirst.station;

/** Answer of a bench to a command. */
public sealed interface Decision permits Accepted, Refused {}
