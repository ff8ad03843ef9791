package org.lowfirst.planning.contents;

import java.util.List;

/** What left the supplies against what entered bottles, or was billed. */
public final class BankBalance {

    private final ContentsAssumptions assumptions;

    public BankBalance(ContentsAssumptions assumptions) {
        this.assumptions = assumptions;
    }

    /**
     * One supply between two readings.
     *
     * @param supply the supply
     * @param before before the first stage
     * @param after after the last
     */
    public record SupplyDrop(MeteredCylinder supply, ContentsMeasurement before, ContentsMeasurement after) {}

    /**
     * What one supply's gauge alone may be off.
     *
     * @param supply its name
     * @param drop_mol gas it lost by its readings [mol]
     * @param limit_mol what the limit of its gauge is worth there [mol]
     */
    public record SupplyAllowance(String supply, double drop_mol, double limit_mol) {}

    /**
     * The comparison.
     *
     * @param code inside gauge uncertainty, watch, or wrong valve or unrecorded fill
     * @param left_mol gas that left the supplies [mol]
     * @param entered_mol gas that entered bottles [mol]
     * @param difference_mol left - entered [mol]
     * @param standardDeviation_mol of the difference [mol]
     * @param chanceOfNoise chance that noise alone makes a difference at least this large, either way
     * @param supplies what each gauge may be off
     * @param possible what can be behind it, likeliest first; empty when inside gauge uncertainty
     */
    public record Balance(
            VerdictCode code,
            double left_mol,
            double entered_mol,
            double difference_mol,
            double standardDeviation_mol,
            double chanceOfNoise,
            List<SupplyAllowance> supplies,
            List<Cause> possible) {

        public Balance {
            supplies = List.copyOf(supplies);
            possible = List.copyOf(possible);
        }
    }

    /**
     * @param drops every supply that was or may have been opened
     * @param entered gas that entered the bottles, with its spread
     */
    public Balance compare(List<SupplyDrop> drops, ContentsEstimate entered) {
        double left_mol = 0.0;
        double variance = entered.standardDeviation_mol() * entered.standardDeviation_mol();
        for (SupplyDrop drop : drops) {
            left_mol += drop.before().amount_mol() - drop.after().amount_mol();
            variance += variance(drop);
        }
        double difference_mol = left_mol - entered.mean_mol();
        double deviation_mol = Math.sqrt(variance);
        double chance = Gaussian.beyond(difference_mol / deviation_mol);
        VerdictCode code = code(chance);
        return new Balance(
                code,
                left_mol,
                entered.mean_mol(),
                difference_mol,
                deviation_mol,
                chance,
                drops.stream().map(BankBalance::allowance).toList(),
                code == VerdictCode.INSIDE_GAUGE_UNCERTAINTY ? List.of() : possible(difference_mol));
    }

    private VerdictCode code(double chance) {
        if (chance <= assumptions.verdicts().likelyChance()) {
            return VerdictCode.LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL;
        }
        return chance <= assumptions.verdicts().watchChance()
                ? VerdictCode.WATCH
                : VerdictCode.INSIDE_GAUGE_UNCERTAINTY;
    }

    private static List<Cause> possible(double difference_mol) {
        return difference_mol > 0.0
                ? List.of(Cause.UNRECORDED_FILL, Cause.LEAK, Cause.BOTTLE_VOLUME)
                : List.of(Cause.OTHER_SOURCE, Cause.BOTTLE_VOLUME);
    }

    private double variance(SupplyDrop drop) {
        double along_mol = EnteredBottle.along_mol(drop.before(), drop.after());
        double volume_mol = drop.supply().volumeShare(assumptions.volumes())
                * (drop.before().amount_mol() - drop.after().amount_mol());
        return drop.before().changingVariance_mol2()
                + drop.after().changingVariance_mol2()
                + along_mol * along_mol
                + volume_mol * volume_mol;
    }

    private static SupplyAllowance allowance(SupplyDrop drop) {
        return new SupplyAllowance(
                drop.supply().name(),
                drop.before().amount_mol() - drop.after().amount_mol(),
                drop.after().limit_mol());
    }
}
