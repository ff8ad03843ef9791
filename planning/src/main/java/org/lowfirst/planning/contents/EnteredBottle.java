package org.lowfirst.planning.contents;

import java.util.List;

/**
 * What entered a bottle during one stage, by its own readings.
 *
 * @param bottle its name
 * @param amount_mol gas that entered [mol]
 * @param variance_mol2 what differs from stage to stage [mol2]
 * @param lasting what is the same every time
 */
record EnteredBottle(String bottle, double amount_mol, double variance_mol2, List<Lasting> lasting) {

    /**
     * An error that comes back with every stage.
     *
     * @param cause what it comes from, the same text for the same cause
     * @param deviation_mol its standard deviation for this stage [mol], with the sign of the amount
     */
    record Lasting(String cause, double deviation_mol) {}

    EnteredBottle {
        lasting = List.copyOf(lasting);
    }

    /**
     * @param supply where the gas came from
     * @param bottle where it went
     * @param before the bottle before the stage
     * @param after the bottle at its end
     */
    static EnteredBottle of(
            MeteredCylinder supply,
            MeteredCylinder bottle,
            ContentsMeasurement before,
            ContentsMeasurement after,
            VolumeAssumptions volumes) {
        double amount_mol = after.amount_mol() - before.amount_mol();
        double along_mol = along_mol(before, after);
        double scatter = square(after.repeat_mol()) + square(before.repeat_mol());
        double settled = varianceIfSettled(before) + varianceIfSettled(after);
        return new EnteredBottle(
                bottle.name(),
                amount_mol,
                scatter + settled + square(along_mol),
                List.of(
                        new Lasting("supply volume", amount_mol * supply.volumeShare(volumes)),
                        new Lasting("volume of " + bottle.name(), amount_mol * bottle.volumeShare(volumes)),
                        new Lasting("warm gas", warm_mol(after) - warm_mol(before))));
    }

    /** Standard deviation, along the scale of one gauge, of the difference of two readings [mol]. */
    static double along_mol(ContentsMeasurement before, ContentsMeasurement after) {
        return after.molesPerPascal()
                * after.gauge().slope()
                * (after.shown().pascals() - before.shown().pascals());
    }

    private static double varianceIfSettled(ContentsMeasurement m) {
        return m.reading().temperature().settled() ? square(m.temperature_mol()) : 0.0;
    }

    private static double warm_mol(ContentsMeasurement m) {
        return m.reading().temperature().settled() ? 0.0 : m.temperature_mol();
    }

    private static double square(double x) {
        return x * x;
    }
}
