package org.lowfirst.app.flight;

import org.lowfirst.app.file.Place;

/**
 * A fix as a flight recorder writes it.
 *
 * @param seconds after the midnight before the first fix
 * @param pressure_m pressure altitude; 0 also where there is none
 * @param gnss_m altitude by satellites; 0 also where there is none
 * @param threeDimensional whether the satellites gave an altitude
 * @param place where the pressure altitude stands
 */
record IgcFix(double seconds, int pressure_m, int gnss_m, boolean threeDimensional, Place place) {

    boolean hasGnss() {
        return threeDimensional && gnss_m != 0;
    }
}
