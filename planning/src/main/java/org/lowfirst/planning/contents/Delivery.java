package org.lowfirst.planning.contents;

import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * A supply as it came from the supplier, against a full one. A new supply is what it reads; also the numbers of a note to the
 * supplier.
 *
 * @param code whether it is full
 * @param reading what it reads, with time, gauge and temperature
 * @param fullWouldRead what a full one would read at the same temperature
 * @param amount_mol gas inside [mol]
 * @param full gas in a full one
 * @param standardDeviation_mol of the amount, lasting error of the gauge included [mol]
 * @param chanceOfNoise chance that a full one reads at least as far off
 */
public record Delivery(
        Code code,
        GaugeReading reading,
        GaugePressure fullWouldRead,
        double amount_mol,
        Amount full,
        double standardDeviation_mol,
        double chanceOfNoise) {

    /** What to make of a delivered supply. */
    public enum Code {
        /** As full as the gauge can tell. */
        FULL,
        /** Less than a full one, beyond what the gauge may err. */
        SHORT,
        /** More than a full one, beyond what the gauge may err: do not use it before the supplier has been asked. */
        OVER_FULL
    }

    /** Gas missing [mol]; negative when there is too much. */
    public double missing_mol() {
        return full.moles() - amount_mol;
    }

    /** Gas missing as a share of a full one. */
    public double missingShare() {
        return missing_mol() / full.moles();
    }

    /**
     * @param cylinder the supply
     * @param measurement what it reads
     * @param fullReading what a full one reads at the reference temperature
     * @param reference that temperature
     * @param surroundings gas and ambient pressure
     * @return the comparison, or why a full one's contents cannot be computed
     */
    public static Evaluated<Delivery> assess(
            MeteredCylinder cylinder,
            ContentsMeasurement measurement,
            GaugePressure fullReading,
            Temperature reference,
            Surroundings surroundings,
            VerdictThresholds thresholds) {
        Temperature now = measurement.reading().temperature().value();
        return surroundings
                .gas()
                .density(fullReading.toAbsolute(surroundings.ambient()), reference)
                .then(full -> surroundings
                        .gas()
                        .pressure(full, now)
                        .map(there -> compare(
                                measurement,
                                there.toGauge(surroundings.ambient()),
                                full.amountIn(cylinder.waterVolume()),
                                thresholds)));
    }

    private static Delivery compare(
            ContentsMeasurement m, GaugePressure fullWouldRead, Amount full, VerdictThresholds thresholds) {
        double deviation_mol = m.alone().standardDeviation_mol();
        double missing_mol = full.moles() - m.amount_mol();
        double chance = Gaussian.beyond(missing_mol / deviation_mol);
        Code code = Code.FULL;
        if (chance <= thresholds.watchChance()) {
            code = missing_mol > 0.0 ? Code.SHORT : Code.OVER_FULL;
        }
        return new Delivery(code, m.reading(), fullWouldRead, m.amount_mol(), full, deviation_mol, chance);
    }
}
