package org.lowfirst.planning;

import java.util.List;
import org.lowfirst.transfer.Stage;

/**
 * Fills taken from a bank one after another: the numeric kernel of the planner. Mutable, used by one thread for one question.
 *
 * <p>Works in volumes [m3] and amounts [mol] only, because at one temperature equal pressure is equal density (see
 * {@link Stage}); no equation of state is evaluated here. Supplies are kept in order of density, lowest first; those that are
 * used first stand before the others.
 */
final class Cascade {

    private final int count;
    private final double[] volume_m3;
    private final double[] contents_mol;
    private final boolean[] heldBack;
    private final boolean[] usedFirst;
    private int first;
    /** Place of each supply in the bank the cascade was made from. */
    private final int[] place;

    private final double hose_m3;
    private final double purgedHose_mol;
    private double vented_mol;
    private boolean reached;

    // what the last fill did, by place of the supply
    private final Visit[] visits;
    private final double[] bottleBefore_mol;
    private final double[] bottleAfter_mol;

    Cascade(BankState bank, Bench bench) {
        List<RankedSupply> supplies = bank.supplies();
        count = supplies.size();
        volume_m3 = new double[count];
        contents_mol = new double[count];
        heldBack = new boolean[count];
        usedFirst = new boolean[count];
        place = new int[count];
        visits = new Visit[count];
        bottleBefore_mol = new double[count];
        bottleAfter_mol = new double[count];
        hose_m3 = bench.hose_m3();
        purgedHose_mol = hose_m3 * bench.ambientDensity_molPerM3();
        for (int i = 0; i < count; i++) {
            RankedSupply supply = supplies.get(i);
            volume_m3[i] = supply.waterVolume().cubicMetres();
            contents_mol[i] = supply.contents().moles();
            heldBack[i] = supply.heldBack();
            usedFirst[i] = supply.turn() == Turn.FIRST;
            first += usedFirst[i] ? 1 : 0;
            place[i] = i;
            visits[i] = Visit.NOT_NEEDED;
        }
        sort();
    }

    /**
     * Fills one bottle with a purged hose, then vents the hose.
     *
     * @return gas in the bottle at the end [mol]
     */
    double fill(Charge bottle, Habit habit) {
        double hose_mol = purgedHose_mol;
        double bottle_mol = bottle.start_mol();
        double stop_mol = bottle.volume_m3() * bottle.stop_molPerM3();
        reached = bottle.needsNothing();
        for (int k = 0; k < count; k++) {
            int i = habit == Habit.LOWEST_FIRST || k < first ? k : count - 1 - (k - first);
            double upstream_m3 = volume_m3[i] + hose_m3;
            double upstream_mol = contents_mol[i] + hose_mol;
            Visit visit = look(i, upstream_mol / upstream_m3, bottle_mol / bottle.volume_m3());
            bottleBefore_mol[place[i]] = bottle_mol;
            if (visit == Visit.EQUAL) {
                double equal_molPerM3 =
                        Stage.equalDensity_molPerM3(upstream_mol, upstream_m3, bottle_mol, bottle.volume_m3());
                reached = equal_molPerM3 >= bottle.stop_molPerM3();
                double after_mol = Math.max(bottle_mol, reached ? stop_mol : bottle.volume_m3() * equal_molPerM3);
                double rest_molPerM3 = (upstream_mol - (after_mol - bottle_mol)) / upstream_m3;
                contents_mol[i] = volume_m3[i] * rest_molPerM3;
                hose_mol = hose_m3 * rest_molPerM3;
                bottle_mol = after_mol;
                visit = reached ? Visit.TARGET : Visit.EQUAL;
            }
            bottleAfter_mol[place[i]] = bottle_mol;
            visits[place[i]] = visit;
        }
        vented_mol = Math.max(0.0, hose_mol - purgedHose_mol);
        sort();
        return bottle_mol;
    }

    /** Whether the supply is opened ({@link Visit#EQUAL}), and if not why not. */
    private Visit look(int i, double withHose_molPerM3, double bottle_molPerM3) {
        if (heldBack[place[i]]) {
            return Visit.HELD_BACK;
        }
        if (reached) {
            return Visit.NOT_NEEDED;
        }
        if (withHose_molPerM3 > bottle_molPerM3) {
            return Visit.EQUAL;
        }
        return contents_mol[i] / volume_m3[i] > bottle_molPerM3
                ? Visit.NOTHING_LEFT_AFTER_HOSE
                : Visit.NOT_ABOVE_BOTTLE;
    }

    /** Sets the gas in the supply at a place of the original bank. */
    void setContents(int placeInBank, double newContents_mol) {
        contents_mol[indexOf(placeInBank)] = newContents_mol;
        sort();
    }

    boolean reached() {
        return reached;
    }

    /** What went to the surroundings with the hose after the last fill [mol]. */
    double vented_mol() {
        return vented_mol;
    }

    Visit visit(int placeInBank) {
        return visits[placeInBank];
    }

    double bottleBefore_mol(int placeInBank) {
        return bottleBefore_mol[placeInBank];
    }

    double bottleAfter_mol(int placeInBank) {
        return bottleAfter_mol[placeInBank];
    }

    /** Gas in a supply now [mol]. */
    double contents_mol(int placeInBank) {
        return contents_mol[indexOf(placeInBank)];
    }

    private int indexOf(int placeInBank) {
        int i = 0;
        while (place[i] != placeInBank) {
            i++;
        }
        return i;
    }

    /** Insertion sort by turn and density, stable; the order hardly ever changes from one fill to the next. */
    private void sort() {
        for (int i = 1; i < count; i++) {
            double v = volume_m3[i];
            double n = contents_mol[i];
            int p = place[i];
            int j = i - 1;
            while (j >= 0 && after(j, v, n, usedFirst[p])) {
                volume_m3[j + 1] = volume_m3[j];
                contents_mol[j + 1] = contents_mol[j];
                place[j + 1] = place[j];
                j--;
            }
            volume_m3[j + 1] = v;
            contents_mol[j + 1] = n;
            place[j + 1] = p;
        }
    }

    private boolean after(int j, double v_m3, double n_mol, boolean isFirst) {
        boolean otherFirst = usedFirst[place[j]];
        return otherFirst == isFirst ? contents_mol[j] * v_m3 > n_mol * volume_m3[j] : isFirst;
    }
}
