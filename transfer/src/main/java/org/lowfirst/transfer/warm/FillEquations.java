package org.lowfirst.transfer.warm;

/**
 * The rates of change of a stage: array of amount moved [mol], bottle ({@link Side}), source, heat to air [J].
 *
 * <p>Each energy that leaves one place enters another with the same number, so the sums of amounts and of energies stay what they
 * were to rounding, however long the steps.
 */
final class FillEquations implements Integration.Rates {

    static final int BOTTLE = 1;
    static final int SOURCE = BOTTLE + Side.SIZE;
    static final int AIR = SOURCE + Side.SIZE;
    static final int DIMENSION = AIR + 1;

    private static final int MOST_STEPS = 30;
    private static final int LEVEL_STEPS = 3;
    private static final double LAST_STEP = 1e-12;

    private final Side bottle;
    private final SourceSide source;
    private final double bottleStart_mol;
    private final Opening opening;
    private final NozzleTable nozzle;
    private final double molarMass_kgPerMol;
    private double flow_molPerS;

    FillEquations(
            Side bottle,
            double bottleStart_mol,
            SourceSide source,
            Opening opening,
            NozzleTable nozzle,
            double molarMass_kgPerMol) {
        this.bottle = bottle;
        this.bottleStart_mol = bottleStart_mol;
        this.source = source;
        this.opening = opening;
        this.nozzle = nozzle;
        this.molarMass_kgPerMol = molarMass_kgPerMol;
    }

    /** Brings bottle and source to a state of the array. */
    void evaluate(double[] y) {
        bottle.evaluate(bottleStart_mol + y[0], y, BOTTLE);
        source.evaluate(y[0], y, SOURCE);
    }

    @Override
    public void derivatives(double[] y, double[] yDot) {
        evaluate(y);
        bottle.prepareHeat(true);
        flow_molPerS = flow_molPerS();
        bottle.flowHeat(flow_molPerS);
        yDot[0] = flow_molPerS;
        bottle.derivatives(flow_molPerS, source.h_JPerMol(), yDot, BOTTLE);
        source.derivatives(flow_molPerS, yDot, SOURCE);
        yDot[AIR] = bottle.toAir_W + source.toAir_W();
    }

    /**
     * Lets over what is missing to equal pressure, at once and without heat, but no more than {@code most_mol}; amount and energy
     * stay closed.
     */
    void level(double[] y, double most_mol) {
        double left_mol = most_mol;
        for (int i = 0; i < LEVEL_STEPS; i++) {
            evaluate(y);
            double h = source.h_JPerMol();
            double gap_Pa = source.p_Pa() - bottle.p_Pa;
            double over_mol =
                    Math.min(left_mol, gap_Pa / (bottle.pressureSlope_PaPerMol(h) + source.pressureSlope_PaPerMol()));
            left_mol -= over_mol;
            y[0] += over_mol;
            bottle.add(over_mol, h, y, BOTTLE);
            source.give(over_mol, y, SOURCE);
        }
    }

    private double flow_molPerS() {
        double most = opening.widest().squareMetres()
                * nozzle.flux_kgPerM2S(
                        source.p_Pa(), source.rho_molPerM3() * molarMass_kgPerMol, source.T_K(), bottle.p_Pa)
                / molarMass_kgPerMol;
        if (opening instanceof Opening.SteadyRise steady && most > 0.0) {
            return Math.min(most, rising_molPerS(steady.rate().pascalsPerSecond()));
        }
        return most;
    }

    /**
     * The flow f at which the bottle's pressure rises at the given rate r: {@code g(f) = a f - r - b q(f) = 0}, with q the heat to
     * the wall, which the jet raises ever less. So g is convex and below zero at 0: one root, and Newton's method comes down to it
     * from any f beyond.
     */
    private double rising_molPerS(double rate_PaPerS) {
        double b = bottle.dpdT / bottle.capacity_JPerK;
        double a = bottle.pressureSlope_PaPerMol(source.h_JPerMol());
        if (!(a > 0.0)) {
            throw new LeftRange("a bottle so much hotter than its source that gas let in lowers its pressure");
        }
        double f = Math.max(flow_molPerS, rate_PaPerS / a);
        while (gap(f, a, b, rate_PaPerS) < 0.0) {
            f *= 2.0;
        }
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = gap(f, a, b, rate_PaPerS) / (a - b * bottle.heatSlope_JPerMol(f));
            f -= step;
            if (Math.abs(step) <= LAST_STEP * f) {
                break;
            }
        }
        return f;
    }

    private double gap(double f, double a, double b, double rate_PaPerS) {
        return a * f - rate_PaPerS - b * bottle.heatToWall_W(f);
    }
}
