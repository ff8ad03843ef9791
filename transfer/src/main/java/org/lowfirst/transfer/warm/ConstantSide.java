package org.lowfirst.transfer.warm;

import java.util.Arrays;
import org.lowfirst.gas.StatePoint;
import org.lowfirst.transfer.Hose;

/** A source that does not change. */
final class ConstantSide implements SourceSide {

    private final WarmSource.Constant source;
    private final Hose hose;
    private final StatePoint point;

    ConstantSide(WarmSource.Constant source, Hose hose, GasProperties gas) {
        this.source = source;
        this.hose = hose;
        point = gas.equation().newPoint();
        if (!point.moveToPressure(
                source.pressure().pascals(), source.temperature().kelvin())) {
            throw new LeftRange("a source at " + source.pressure().pascals() + " Pa and "
                    + source.temperature().kelvin() + " K");
        }
    }

    @Override
    public void start(double[] y, int at) {
        Arrays.fill(y, at, at + Side.SIZE, 0.0);
    }

    @Override
    public void evaluate(double moved_mol, double[] y, int at) {}

    @Override
    public void derivatives(double flow_molPerS, double[] yDot, int at) {
        Arrays.fill(yDot, at, at + Side.SIZE, 0.0);
    }

    @Override
    public void tolerances(double error_K, double reference_molPerM3, double[] tolerance, int at) {
        Arrays.fill(tolerance, at, at + Side.SIZE, 1.0);
    }

    @Override
    public double p_Pa() {
        return point.p_Pa();
    }

    @Override
    public double T_K() {
        return point.T_K();
    }

    @Override
    public double wall_K() {
        return point.T_K();
    }

    @Override
    public double rho_molPerM3() {
        return point.rho_molPerM3();
    }

    @Override
    public double h_JPerMol() {
        return point.h_JPerMol();
    }

    @Override
    public double toAir_W() {
        return 0.0;
    }

    @Override
    public double pressureSlope_PaPerMol() {
        return 0.0;
    }

    @Override
    public void give(double amount_mol, double[] y, int at) {}

    @Override
    public void rewrite(double moved_mol, double[] y, int at) {}

    @Override
    public double total_J(double[] y, int at) {
        return 0.0;
    }

    @Override
    public SourceAfter after(double moved_mol, double[] y, int at) {
        return new SourceAfter(source, hose);
    }
}
