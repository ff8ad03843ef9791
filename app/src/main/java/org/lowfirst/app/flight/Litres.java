package org.lowfirst.app.flight;

import java.util.Locale;

/** Litres of free gas with the digits a person needs. */
final class Litres {

    private static final double WHOLE_FROM = 20.0;

    private Litres() {}

    static String of(double litres) {
        return number(litres) + " L";
    }

    /** Whole litres, tenths below 20. */
    static String number(double litres) {
        return String.format(Locale.ROOT, Math.abs(litres) < WHOLE_FROM ? "%.1f" : "%,.0f", litres + 0.0);
    }
}
