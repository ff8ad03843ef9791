package org.lowfirst.app.money;

import java.util.List;
import org.lowfirst.station.charges.RentStay;

/**
 * How long supplies were here.
 *
 * @param known by serial number, in order of arrival
 * @param unnamed names of supplies without a serial number, which cannot be checked
 */
public record Stays(List<RentStay> known, List<String> unnamed) {

    public Stays {
        known = List.copyOf(known);
        unnamed = List.copyOf(unnamed);
    }
}
