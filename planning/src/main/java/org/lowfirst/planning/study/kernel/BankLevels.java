package org.lowfirst.planning.study.kernel;

/**
 * A bank as a row of molar densities, lowest first; supplies that are used first stand before the others, they too lowest first.
 * Mutable, used by one thread.
 *
 * <p>At one temperature equal pressure is equal density, and no density changes with the temperature, so years of fills need no
 * equation of state. The same stages as {@link org.lowfirst.planning.FillPlanner} plans, kept to what a count needs; a test
 * compares the two.
 *
 * <p>Symbols: V volume [m3], rho molar density [mol/m3]; s supply, h hose, b bottle.
 */
public final class BankLevels {

    /** Inlet density of a booster that is not there. */
    public static final double NO_BOOSTER = Double.POSITIVE_INFINITY;

    private final int count;
    private int usedFirst;
    private final double hose_m3;
    private final double purged_molPerM3;
    private final double[] volume_m3;
    private final double[] rho_molPerM3;
    private final double[] after_molPerM3;
    private double end_molPerM3;
    private double hoseAfter_molPerM3;
    private double vented_mol;
    private double boosted_mol;

    /**
     * @param count supplies
     * @param hose_m3 hose volume [m3], vented after each bottle; 0 leaves it out of account
     * @param purged_molPerM3 density of the gas in a purged hose [mol/m3]
     */
    public BankLevels(int count, double hose_m3, double purged_molPerM3) {
        this.count = count;
        this.hose_m3 = hose_m3;
        this.purged_molPerM3 = purged_molPerM3;
        volume_m3 = new double[count];
        rho_molPerM3 = new double[count];
        after_molPerM3 = new double[count];
    }

    /** A bank like this one. */
    public BankLevels another() {
        BankLevels twin = new BankLevels(count, hose_m3, purged_molPerM3);
        twin.copy(this);
        return twin;
    }

    /** Makes this bank like another of the same size. */
    public void copy(BankLevels other) {
        usedFirst = other.usedFirst;
        System.arraycopy(other.volume_m3, 0, volume_m3, 0, count);
        System.arraycopy(other.rho_molPerM3, 0, rho_molPerM3, 0, count);
    }

    /** Puts a supply in a place, whatever its level; call {@link #rank()} when all are in. */
    public void put(int place, double supply_m3, double supply_molPerM3) {
        volume_m3[place] = supply_m3;
        rho_molPerM3[place] = supply_molPerM3;
    }

    /** The supplies in the first so many places are opened before those of lower density; call {@link #rank()} afterwards. */
    public void useFirst(int supplies) {
        usedFirst = supplies;
    }

    /** Puts the supplies in order of density; supplies of one density keep theirs. */
    public void rank() {
        for (int i = 1; i < count; i++) {
            settle(i);
        }
    }

    /**
     * Fills a bottle if this can be done, and leaves everything as it was if not. What the stages leave short a booster pumps
     * over from the lowest supplies that are above its inlet.
     *
     * @param bottle_m3 water volume of the bottle [m3]
     * @param start_molPerM3 density in it before [mol/m3], below the stop
     * @param stop_molPerM3 density at which the valve is shut [mol/m3]
     * @param inlet_molPerM3 density that the booster leaves in a supply [mol/m3]; {@link #NO_BOOSTER} for none
     * @return whether the bottle came to its stop
     */
    public boolean fill(double bottle_m3, double start_molPerM3, double stop_molPerM3, double inlet_molPerM3) {
        int used = looked(bottle_m3, start_molPerM3, stop_molPerM3, inlet_molPerM3);
        if (used < 0) {
            return false;
        }
        System.arraycopy(after_molPerM3, 0, rho_molPerM3, 0, used);
        vented_mol = hose_m3 * Math.max(0.0, hoseAfter_molPerM3 - purged_molPerM3);
        rank();
        return true;
    }

    /** Whether {@link #fill} would bring the bottle to its stop. */
    public boolean reaches(double bottle_m3, double start_molPerM3, double stop_molPerM3, double inlet_molPerM3) {
        return looked(bottle_m3, start_molPerM3, stop_molPerM3, inlet_molPerM3) >= 0;
    }

    private int looked(double bottle_m3, double start_molPerM3, double stop_molPerM3, double inlet_molPerM3) {
        boosted_mol = 0.0;
        int used = stages(bottle_m3, start_molPerM3, stop_molPerM3);
        if (used >= 0 || inlet_molPerM3 == NO_BOOSTER) {
            return used;
        }
        return boost(bottle_m3 * (stop_molPerM3 - end_molPerM3), inlet_molPerM3) ? count : -1;
    }

    private boolean boost(double short_mol, double inlet_molPerM3) {
        double missing_mol = short_mol;
        for (int i = 0; i < count && missing_mol > 0.0; i++) {
            double above_mol = volume_m3[i] * (after_molPerM3[i] - inlet_molPerM3);
            if (above_mol > 0.0) {
                double moved_mol = Math.min(above_mol, missing_mol);
                after_molPerM3[i] -= moved_mol / volume_m3[i];
                missing_mol -= moved_mol;
            }
        }
        boosted_mol = short_mol;
        return missing_mol <= 0.0;
    }

    /** Works out the stages; answers how many supplies were looked at when the stop was reached, or -1. */
    private int stages(double bottle_m3, double start_molPerM3, double stop_molPerM3) {
        double b = start_molPerM3;
        double h = purged_molPerM3;
        for (int i = 0; i < count; i++) {
            double upstream_m3 = volume_m3[i] + hose_m3;
            double u = hose_m3 == 0.0 ? rho_molPerM3[i] : (rho_molPerM3[i] * volume_m3[i] + h * hose_m3) / upstream_m3;
            if (!(u > b)) {
                after_molPerM3[i] = rho_molPerM3[i];
                continue;
            }
            double equal = b + (u - b) * upstream_m3 / (upstream_m3 + bottle_m3);
            if (equal >= stop_molPerM3) {
                after_molPerM3[i] = u - (stop_molPerM3 - b) * bottle_m3 / upstream_m3;
                end_molPerM3 = stop_molPerM3;
                hoseAfter_molPerM3 = after_molPerM3[i];
                return i + 1;
            }
            after_molPerM3[i] = equal;
            h = equal;
            b = equal;
        }
        end_molPerM3 = b;
        hoseAfter_molPerM3 = h;
        return -1;
    }

    /** Density in the bottle at the end of the stages last worked out, before a booster, whether taken or not [mol/m3]. */
    public double end_molPerM3() {
        return end_molPerM3;
    }

    /** Gas that went to the surroundings with the hose in the last fill [mol]. */
    public double vented_mol() {
        return vented_mol;
    }

    /** Gas that the booster had to move in the last fill, 0 when the stages did it all [mol]. */
    public double boosted_mol() {
        return boosted_mol;
    }

    /**
     * Sends the supply in a place back and puts another of the same volume in, which is used by its rank; the places are ranked
     * again.
     */
    public void exchange(int place, double supply_molPerM3) {
        usedFirst -= place < usedFirst ? 1 : 0;
        System.arraycopy(rho_molPerM3, place + 1, rho_molPerM3, place, count - 1 - place);
        double v = volume_m3[place];
        System.arraycopy(volume_m3, place + 1, volume_m3, place, count - 1 - place);
        volume_m3[count - 1] = v;
        rho_molPerM3[count - 1] = supply_molPerM3;
        settle(count - 1);
    }

    public int size() {
        return count;
    }

    /** Place of the supply of the least density; among equals the one that is opened first. */
    public int lowest() {
        return usedFirst > 0 && usedFirst < count && rho_molPerM3[usedFirst] < rho_molPerM3[0] ? usedFirst : 0;
    }

    /** Density of the supply in a place, 0 = opened first [mol/m3]. */
    public double density_molPerM3(int place) {
        return rho_molPerM3[place];
    }

    /** Water volume of the supply in a place, 0 = opened first [m3]. */
    public double volume_m3(int place) {
        return volume_m3[place];
    }

    /** Gas in all supplies [mol]. */
    public double contents_mol() {
        double sum = 0.0;
        for (int i = 0; i < count; i++) {
            sum += volume_m3[i] * rho_molPerM3[i];
        }
        return sum;
    }

    private void settle(int from) {
        double v = volume_m3[from];
        double rho = rho_molPerM3[from];
        int lowest = from < usedFirst ? 0 : usedFirst;
        int j = from - 1;
        while (j >= lowest && rho_molPerM3[j] > rho) {
            rho_molPerM3[j + 1] = rho_molPerM3[j];
            volume_m3[j + 1] = volume_m3[j];
            j--;
        }
        rho_molPerM3[j + 1] = rho;
        volume_m3[j + 1] = v;
    }
}
