package org.lowfirst.station;

import org.lowfirst.station.stamp.Convention;

/**
 * What was typed from the stamp of a bottle.
 *
 * @param line as typed, parts nobody understood included
 */
public record StampLine(String line, Convention convention) {}
