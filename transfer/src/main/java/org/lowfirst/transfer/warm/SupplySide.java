package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Amount;
import org.lowfirst.transfer.Hose;

/** A supply and its hose, one gas with one temperature. */
final class SupplySide implements SourceSide {

    private final Side side;
    private final WarmState state;
    private final Hose hose;
    private final double start_mol;
    private final double air_K;

    SupplySide(WarmState state, Hose hose, GasProperties gas, HeatModel heat, Surroundings surroundings) {
        this.state = state;
        this.hose = hose;
        side = new Side(state.vessel(), hose.volume().cubicMetres(), gas, heat, surroundings);
        start_mol = state.contents().moles() + hose.contents().moles();
        air_K = surroundings.temperature().kelvin();
    }

    /** Temperature when the supply's gas and the hose's have mixed without heat or work [K]. */
    private double mixed_K() {
        double gas_K = state.gas().kelvin();
        double hose_m3 = hose.volume().cubicMetres();
        if (hose_m3 == 0.0) {
            return gas_K;
        }
        double supply_m3 = state.vessel().waterVolume().cubicMetres();
        double energy_J = side.gasEnergy_J(state.contents().moles(), supply_m3, gas_K);
        if (hose.contents().moles() > 0.0) {
            energy_J += side.gasEnergy_J(hose.contents().moles(), hose_m3, air_K);
        }
        return side.temperature_K(start_mol, energy_J, gas_K);
    }

    @Override
    public void start(double[] y, int at) {
        double[] layers =
                state.wall().stream().mapToDouble(layer -> layer.kelvin()).toArray();
        side.write(start_mol, mixed_K(), layers, y, at);
    }

    @Override
    public void evaluate(double moved_mol, double[] y, int at) {
        double left_mol = start_mol - moved_mol;
        if (!(left_mol > 0.0)) {
            throw new LeftRange("a supply that is empty");
        }
        side.evaluate(left_mol, y, at);
    }

    @Override
    public void derivatives(double flow_molPerS, double[] yDot, int at) {
        side.prepareHeat(false);
        side.flowHeat(0.0);
        side.derivatives(-flow_molPerS, side.h_JPerMol, yDot, at);
    }

    @Override
    public void tolerances(double error_K, double reference_molPerM3, double[] tolerance, int at) {
        side.tolerances(error_K, reference_molPerM3, tolerance, at);
    }

    @Override
    public double p_Pa() {
        return side.p_Pa;
    }

    @Override
    public double T_K() {
        return side.T_K;
    }

    @Override
    public double wall_K() {
        return side.inner_K;
    }

    @Override
    public double rho_molPerM3() {
        return side.rho_molPerM3;
    }

    @Override
    public double h_JPerMol() {
        return side.h_JPerMol;
    }

    @Override
    public double toAir_W() {
        return side.toAir_W;
    }

    @Override
    public double pressureSlope_PaPerMol() {
        return side.pressureSlope_PaPerMol(side.h_JPerMol);
    }

    @Override
    public void give(double amount_mol, double[] y, int at) {
        side.add(-amount_mol, side.h_JPerMol, y, at);
    }

    @Override
    public void rewrite(double moved_mol, double[] y, int at) {
        side.rewrite(start_mol - moved_mol, y, at);
    }

    @Override
    public double total_J(double[] y, int at) {
        return Side.total_J(y, at);
    }

    @Override
    public SourceAfter after(double moved_mol, double[] y, int at) {
        evaluate(moved_mol, y, at);
        double hose_mol = side.rho_molPerM3 * hose.volume().cubicMetres();
        WarmState left = side.state(state.vessel(), start_mol - moved_mol - hose_mol);
        return new SourceAfter(new WarmSource.FromSupply(left), new Hose(hose.volume(), new Amount(hose_mol)));
    }
}
