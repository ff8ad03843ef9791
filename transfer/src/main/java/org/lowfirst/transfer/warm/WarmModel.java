package org.lowfirst.transfer.warm;

import org.hipparchus.exception.MathRuntimeException;
import org.lowfirst.gas.CaloricEquation;

/**
 * Fills and rests of real gas with heat. Immutable and thread-safe.
 *
 * <p>The range is that of the gas equation, 160 K and up; flow through a valve is tabulated for gas before it up to 440 K and
 * 42 MPa (below 220 K see {@link NozzleTable}). Beyond, there is no answer. Accuracy: docs/validation.md, "Warm gas".
 */
public final class WarmModel {

    private final GasProperties gas;
    private final HeatModel heat;
    private final NozzleTable nozzle;

    private WarmModel(GasProperties gas, HeatModel heat, NozzleTable nozzle) {
        this.gas = gas;
        this.heat = heat;
        this.nozzle = nozzle;
    }

    /** Oxygen with the published heat transfer; its tables are made at the first call. */
    public static WarmModel oxygen() {
        return Loaded.OXYGEN;
    }

    static WarmModel of(GasProperties gas, HeatModel heat) {
        return new WarmModel(gas, heat, new NozzleTable(gas.equation()));
    }

    /** The same gas with another heat transfer. */
    public WarmModel with(HeatModel other) {
        return new WarmModel(gas, other, nozzle);
    }

    public HeatModel heat() {
        return heat;
    }

    public CaloricEquation equation() {
        return gas.equation();
    }

    NozzleTable nozzle() {
        return nozzle;
    }

    /** Opens the valve of a stage until the bottle is at its stop, both are equal or the time is up. */
    public Answer<WarmFill> fill(WarmStage stage) {
        try {
            return Answer.of(new FillRun(stage, gas, heat, nozzle).run());
        } catch (LeftRange left) {
            return Answer.refused(
                    new WarmRefusal.NoAnswer("The gas left the range that can be computed: " + left.getMessage()));
        } catch (MathRuntimeException unsolved) {
            return Answer.refused(
                    new WarmRefusal.NoAnswer("The stage could not be followed: " + unsolved.getMessage()));
        }
    }

    /** Leaves a shut cylinder alone until it is settled or the time is up. */
    public Answer<Settling> rest(Rest rest) {
        try {
            return Answer.of(new RestRun(rest, gas, heat).run());
        } catch (LeftRange left) {
            return Answer.refused(
                    new WarmRefusal.NoAnswer("The gas left the range that can be computed: " + left.getMessage()));
        } catch (MathRuntimeException unsolved) {
            return Answer.refused(new WarmRefusal.NoAnswer("The rest could not be followed: " + unsolved.getMessage()));
        }
    }

    private static final class Loaded {
        static final WarmModel OXYGEN = of(GasProperties.oxygen(), HeatModel.published());
    }
}
