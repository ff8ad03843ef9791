package org.lowfirst.station;

import org.lowfirst.station.readiness.Place;

/**
 * What a bottle is meant for.
 *
 * @param group name of its group
 */
public record Assignment(String group, Place place) {

    Assignment at(Place other) {
        return new Assignment(group, other);
    }
}
