package org.lowfirst.station;

/** Something a person stated or is told, to be shown with its unit. */
public sealed interface Stated permits StatedQuantity, StatedTime {}
