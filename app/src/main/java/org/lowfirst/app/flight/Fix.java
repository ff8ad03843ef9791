package org.lowfirst.app.flight;

import org.lowfirst.app.file.Place;

/**
 * One point of a track.
 *
 * @param seconds after any fixed moment
 * @param metres pressure altitude
 * @param place where its altitude stands in the track file
 */
record Fix(double seconds, double metres, Place place) {}
