package org.lowfirst.planning.warm;

import org.lowfirst.transfer.warm.Datasheet;

/** Figures of plan-assumptions.txt, by name. */
final class Assumptions {

    private static final Datasheet SHEET = Datasheet.beside(Assumptions.class, "plan-assumptions.txt");

    private Assumptions() {}

    static double share(String name) {
        return SHEET.value(name, "1");
    }

    static double seconds(String name) {
        return SHEET.value(name, "s");
    }

    static double kelvin(String name) {
        return SHEET.value(name, "K");
    }

    static double pascals(String name) {
        return SHEET.value(name, "Pa");
    }

    static double pascalsPerSecond(String name) {
        return SHEET.value(name, "Pa/s");
    }

    static double squareMetres(String name) {
        return SHEET.value(name, "m2");
    }
}
