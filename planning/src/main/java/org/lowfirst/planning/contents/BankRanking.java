package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * Ranks supplies by what they read, brought to one temperature. Gas flows from the higher pressure to the lower whatever the
 * sizes are, so the rank follows the pressure and not the contents; readings of different days count only after the
 * temperatures have been taken out.
 */
public final class BankRanking {

    /** One supply counts as above another for certain when the chance of the contrary is at most this. */
    private static final double UNCERTAIN = 0.05;

    private final Surroundings surroundings;

    public BankRanking(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** A supply and its latest reading. */
    public record Latest(MeteredCylinder supply, ContentsMeasurement measurement) {}

    /**
     * A supply in its rank.
     *
     * @param rank 1 = lowest
     * @param supply its name
     * @param reading what its gauge would show at the common temperature
     * @param standardDeviation of that
     * @param aboveNextLowerForCertain whether it is above the one ranked before it with at least 95 % chance; true for rank 1
     */
    public record Ranked(
            int rank,
            String supply,
            GaugePressure reading,
            GaugePressure standardDeviation,
            boolean aboveNextLowerForCertain) {}

    private record Brought(Latest latest, double shown_Pa) {
        /** Standard deviation [Pa]; without the lasting error when one gauge serves both. */
        double deviation_Pa(boolean sameGauge) {
            ContentsMeasurement m = latest.measurement();
            double changing_Pa = Math.sqrt(m.changingVariance_mol2()) / m.molesPerPascal();
            return sameGauge ? changing_Pa : Math.hypot(changing_Pa, m.gauge().offset_Pa());
        }

        boolean sameGauge(Brought other) {
            return latest.measurement()
                    .reading()
                    .gauge()
                    .equals(other.latest.measurement().reading().gauge());
        }
    }

    /**
     * @param bank the supplies in any order; equal ones keep it
     * @param common the temperature of the comparison, usually the bench's today
     * @return the ranks, or why a reading cannot be brought to that temperature
     */
    public Evaluated<List<Ranked>> rank(List<Latest> bank, Temperature common) {
        Evaluated<List<Brought>> all = new Evaluated.Value<>(new ArrayList<>());
        for (Latest latest : bank) {
            all = all.then(list -> bring(latest, common).map(brought -> {
                list.add(brought);
                return list;
            }));
        }
        return all.map(BankRanking::inOrder);
    }

    private Evaluated<Brought> bring(Latest latest, Temperature common) {
        GaugeReading reading = latest.measurement().reading();
        return surroundings
                .gas()
                .density(
                        reading.shown().toAbsolute(surroundings.ambient()),
                        reading.temperature().value())
                .then(rho -> surroundings.gas().pressure(rho, common))
                .map(p -> new Brought(latest, p.toGauge(surroundings.ambient()).pascals()));
    }

    private static List<Ranked> inOrder(List<Brought> bank) {
        List<Brought> sorted = new ArrayList<>(bank);
        sorted.sort(Comparator.comparingDouble(Brought::shown_Pa));
        List<Ranked> ranked = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Brought here = sorted.get(i);
            ranked.add(new Ranked(
                    i + 1,
                    here.latest().supply().name(),
                    new GaugePressure(here.shown_Pa()),
                    new GaugePressure(here.deviation_Pa(false)),
                    i == 0 || certainlyAbove(here, sorted.get(i - 1))));
        }
        return List.copyOf(ranked);
    }

    private static boolean certainlyAbove(Brought here, Brought lower) {
        boolean same = here.sameGauge(lower);
        double deviation_Pa = Math.hypot(here.deviation_Pa(same), lower.deviation_Pa(same));
        return Gaussian.above((here.shown_Pa() - lower.shown_Pa()) / deviation_Pa) <= UNCERTAIN;
    }
}
