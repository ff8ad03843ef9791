package org.lowfirst.planning.camp;

import java.util.Arrays;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.study.BottleUse;
import org.lowfirst.planning.study.kernel.BankLevels;
import org.lowfirst.planning.study.kernel.Draws;

/** Many camps: drawn once, lived through with each number of supplies. */
final class Camps {

    private static final double MOST_CAMPS = 2_000;
    private static final double LEAST_CAMPS = 200;
    /** Fills in all camps together, so that a large camp does not take longer than a small one. */
    private static final double FILLS = 400_000;

    private final CampRequest request;
    private final Isotherm line;
    private final double[] stop_molPerM3;
    private final double full_molPerM3;
    private final int camps;
    private final int[] wanted;

    Camps(CampRequest request) {
        this.request = request;
        line = request.conditions().gas().isotherm(request.conditions().bench()).orElseThrow();
        full_molPerM3 = density_molPerM3(request.supplyReading().pascals());
        FillPlanner planner = FillPlanner.under(request.conditions());
        stop_molPerM3 = request.bottles().stream()
                .mapToDouble(use -> density_molPerM3(planner.stop(use.target(), use.servicePressure())
                        .reading()
                        .pascals()))
                .toArray();
        double each = request.days() * request.pilots() * request.fillsPerPilotPerDay();
        camps = (int) Math.max(LEAST_CAMPS, Math.min(MOST_CAMPS, FILLS / each));
        wanted = new int[camps];
        for (int camp = 0; camp < camps; camp++) {
            Draws draws = new Draws(request.seed(), camp);
            for (int day = 0; day < request.days(); day++) {
                wanted[camp] += fillsOnADay(draws);
            }
        }
    }

    /** Chance that the day is flown first, then the fills; the bottles come from another stream. */
    private int fillsOnADay(Draws draws) {
        boolean flown = draws.uniform() < request.flyableShare();
        return flown ? draws.poisson(request.pilots() * request.fillsPerPilotPerDay()) : 0;
    }

    Band fillsWanted() {
        return Band.ofEqual(wanted);
    }

    CampOption with(int supplies) {
        int[] made = new int[camps];
        int[] covered = new int[camps];
        BankLevels full = new BankLevels(
                supplies, request.conditions().hose().cubicMetres(), density_molPerM3(GaugePressure.ZERO.pascals()));
        for (int place = 0; place < supplies; place++) {
            full.put(place, request.supplyVolume().cubicMetres(), full_molPerM3);
        }
        BankLevels bank = full.another();
        for (int camp = 0; camp < camps; camp++) {
            bank.copy(full);
            live(camp, bank, made, covered);
        }
        double all = 0;
        for (int camp = 0; camp < camps; camp++) {
            all += made[camp] == wanted[camp] ? 1 : 0;
        }
        return new CampOption(
                supplies, new Amount(full.contents_mol()), Band.ofEqual(made), Band.ofEqual(covered), all / camps);
    }

    private void live(int camp, BankLevels bank, int[] made, int[] covered) {
        Draws days = new Draws(request.seed(), camp);
        Draws bottles = new Draws(request.seed(), -1L - camp);
        boolean allDone = true;
        for (int day = 0; day < request.days(); day++) {
            for (int i = fillsOnADay(days); i > 0; i--) {
                boolean done = fill(bank, bottles);
                made[camp] += done ? 1 : 0;
                allDone &= done;
            }
            covered[camp] += allDone ? 1 : 0;
        }
    }

    private boolean fill(BankLevels bank, Draws bottles) {
        int kind = picked(bottles.uniform());
        BottleUse use = request.bottles().get(kind);
        double low_Pa = use.startLowest().pascals();
        double start_molPerM3 = density_molPerM3(low_Pa + (use.startHighest().pascals() - low_Pa) * bottles.uniform());
        return start_molPerM3 >= stop_molPerM3[kind]
                || bank.fill(
                        use.waterVolume().cubicMetres(), start_molPerM3, stop_molPerM3[kind], BankLevels.NO_BOOSTER);
    }

    private int picked(double uniform) {
        double[] shares =
                request.bottles().stream().mapToDouble(BottleUse::share).toArray();
        double left = uniform * Arrays.stream(shares).sum();
        int kind = 0;
        while (kind < shares.length - 1 && left >= shares[kind]) {
            left -= shares[kind++];
        }
        return kind;
    }

    private double density_molPerM3(double gauge_Pa) {
        return line.density_molPerM3(gauge_Pa + request.conditions().ambient().pascals());
    }
}
