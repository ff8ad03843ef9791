package org.lowfirst.transfer.warm;

import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.StatePoint;
import org.lowfirst.gas.Temperature;

/**
 * One gas volume with its wall while a simulation runs. Mutable, one simulation only.
 *
 * <p>State, from {@code at} in the array: U energy of the gas [J] (with {@link Contact#PERFECT} of gas and inner layer), T
 * temperature of the gas [K], E1 and E2 energies of the layers [J]. U and E are what is conserved; T is carried along to start the
 * search for the temperature close by and is corrected to U each time.
 *
 * <p>Symbols: V volume [m3], n amount [mol], rho = n / V, u and h per mole [J/mol], C heat capacity of what U counts [J/K].
 */
final class Side {

    static final int SIZE = 4;
    private static final int U = 0;
    private static final int T = 1;
    private static final int E1 = 2;
    private static final int E2 = 3;
    /** A correction to U up to this is linear to rounding [K]. */
    private static final double LINEAR_K = 1e-3;

    private static final int MOST_STEPS = 50;

    private final StatePoint point;
    private final GasProperties gas;
    private final HeatModel heat;
    private final Wall wall;
    private final List<WallLayer> layers;
    private final Contact contact;
    private final double air_K;
    private final double molarMass_kgPerMol;

    final double volume_m3;

    double p_Pa;
    double T_K;
    double rho_molPerM3;
    double h_JPerMol;
    double capacity_JPerK;
    /** d(rho u)/d rho at constant temperature [J/mol]. */
    double uSlope_JPerMol;

    double dpdrho;
    double dpdT;
    double inner_K;
    double outer_K;
    /** Coefficient at rest, and what a flow of 1 kg/s into this side would add [W/(m2 K)]. */
    private double natural_WPerM2K;

    private double forced_WPerM2K;
    /** Heat from gas to wall, through the wall, and from wall to air [W]. */
    double toWall_W;

    double through_W;
    double toAir_W;

    Side(WarmVessel vessel, double extra_m3, GasProperties gas, HeatModel heat, Surroundings surroundings) {
        this.gas = gas;
        this.heat = heat;
        point = gas.equation().newPoint();
        molarMass_kgPerMol = gas.equation().molarMass_kgPerMol();
        wall = vessel.wall();
        layers = wall.layers();
        contact = vessel.contact();
        air_K = surroundings.temperature().kelvin();
        volume_m3 = vessel.waterVolume().cubicMetres() + extra_m3;
    }

    /** Energy of a state as U counts it [J]. */
    double energy_J(double n_mol, double gas_K, double inner_K) {
        move(n_mol / volume_m3, gas_K);
        double u = n_mol * point.u_JPerMol();
        return contact == Contact.PERFECT ? u + layers.get(0).energy_J(inner_K) : u;
    }

    /** Temperature of gas with this energy, the wall left out [K]. */
    double temperature_K(double n_mol, double gas_J, double guess_K) {
        if (!point.moveToEnergy(n_mol / volume_m3, gas_J / n_mol, guess_K)) {
            throw new LeftRange("density " + n_mol / volume_m3 + " mol/m3 with energy " + gas_J / n_mol + " J/mol");
        }
        return point.T_K();
    }

    /** Energy of gas of this amount and temperature, the wall left out [J]. */
    double gasEnergy_J(double n_mol, double volume_m3, double gas_K) {
        move(n_mol / volume_m3, gas_K);
        return n_mol * point.u_JPerMol();
    }

    /** Writes a state into the array. */
    void write(double n_mol, double gas_K, double[] layer_K, double[] y, int at) {
        y[at + U] = energy_J(n_mol, gas_K, layer_K[0]);
        y[at + T] = gas_K;
        y[at + E1] = contact == Contact.PERFECT ? 0.0 : layers.get(0).energy_J(layer_K[0]);
        y[at + E2] = layers.size() > 1 ? layers.get(1).energy_J(layer_K[1]) : 0.0;
    }

    /** Writes what was evaluated last into the array, from amount and temperatures alone. */
    void rewrite(double n_mol, double[] y, int at) {
        write(n_mol, T_K, new double[] {inner_K, outer_K}, y, at);
    }

    /** Pressure of an amount at a temperature [Pa]. */
    double pressure_Pa(double n_mol, double gas_K) {
        move(n_mol / volume_m3, gas_K);
        return point.p_Pa();
    }

    /** Everything but the heat flows, from an amount and the array. */
    void evaluate(double n_mol, double[] y, int at) {
        rho_molPerM3 = n_mol / volume_m3;
        double t = y[at + T];
        double missing_J = 0.0;
        double wall_JPerK = 0.0;
        for (int i = 0; ; i++) {
            move(rho_molPerM3, t);
            missing_J = y[at + U] - n_mol * point.u_JPerMol();
            if (contact == Contact.PERFECT) {
                missing_J -= layers.get(0).energy_J(t);
                wall_JPerK = layers.get(0).capacity_JPerK(t);
            }
            capacity_JPerK = n_mol * point.cv_JPerMolK() + wall_JPerK;
            double step_K = missing_J / capacity_JPerK;
            if (Math.abs(step_K) <= LINEAR_K) {
                T_K = t + step_K;
                break;
            }
            if (i == MOST_STEPS) {
                throw new LeftRange("no temperature for the energy of the gas near " + t + " K");
            }
            t += step_K;
        }
        double correction_K = T_K - t;
        dpdrho = point.dpdrho_PaM3PerMol();
        dpdT = point.dpdT_PaPerK();
        p_Pa = point.p_Pa() + dpdT * correction_K;
        double u = point.u_JPerMol() + point.cv_JPerMolK() * correction_K;
        h_JPerMol = u + p_Pa / rho_molPerM3;
        uSlope_JPerMol = u + rho_molPerM3 * point.dudrho_JM3PerMol2();
        inner_K = contact == Contact.PERFECT ? T_K : layers.get(0).temperature_K(y[at + E1]);
        outer_K = layers.size() > 1 ? layers.get(1).temperature_K(y[at + E2]) : inner_K;
        if (!(inner_K > 0.0 && outer_K > 0.0)) {
            throw new LeftRange("a wall at " + inner_K + " K inside and " + outer_K + " K outside");
        }
    }

    private void move(double rho_molPerM3, double T_K) {
        if (!point.moveTo(rho_molPerM3, T_K)) {
            throw new LeftRange("density " + rho_molPerM3 + " mol/m3 at " + T_K + " K");
        }
    }

    /** The coefficients between gas and wall, after {@link #evaluate}. */
    void prepareHeat(boolean jet) {
        if (contact != Contact.CONVECTION) {
            return;
        }
        double mu = gas.transport().viscosity_PaS(point);
        double k = gas.transport().conductivity_WPerMK(point);
        double beta = dpdT / (rho_molPerM3 * dpdrho);
        double group = rho_molPerM3 * rho_molPerM3 * beta * point.cp_JPerMolK() * molarMass_kgPerMol / mu;
        natural_WPerM2K = heat.inside().natural_WPerM2K(T_K - inner_K, wall.innerDiameter_m(), k, group);
        forced_WPerM2K = jet ? heat.inside().forcedAtUnitFlow_WPerM2K(wall.innerDiameter_m(), k, mu) : 0.0;
    }

    /** Heat from gas to wall while gas streams in [W]. */
    double heatToWall_W(double inflow_molPerS) {
        if (contact != Contact.CONVECTION) {
            return 0.0;
        }
        return (T_K - inner_K) * conductance_WPerK(coefficient_WPerM2K(inflow_molPerS));
    }

    /** How that heat rises with the inflow [J/mol]. */
    double heatSlope_JPerMol(double inflow_molPerS) {
        if (contact != Contact.CONVECTION || inflow_molPerS <= 0.0) {
            return 0.0;
        }
        double h = coefficient_WPerM2K(inflow_molPerS);
        double g = conductance_WPerK(h);
        double dh = heat.inside().forcedExponent * (h - natural_WPerM2K) / inflow_molPerS;
        return (T_K - inner_K) * g * g / (h * h * wall.innerArea_m2()) * dh;
    }

    private double coefficient_WPerM2K(double inflow_molPerS) {
        if (forced_WPerM2K == 0.0 || inflow_molPerS <= 0.0) {
            return natural_WPerM2K;
        }
        return natural_WPerM2K
                + forced_WPerM2K * Math.pow(inflow_molPerS * molarMass_kgPerMol, heat.inside().forcedExponent);
    }

    private double conductance_WPerK(double h_WPerM2K) {
        double hA = h_WPerM2K * wall.innerArea_m2();
        return hA / (1.0 + hA * layers.get(0).halfResistance_KPerW());
    }

    /** How the pressure rises with gas of this enthalpy let in, without heat [Pa/mol]. */
    double pressureSlope_PaPerMol(double with_JPerMol) {
        return dpdrho / volume_m3 + dpdT / capacity_JPerK * (with_JPerMol - uSlope_JPerMol);
    }

    /** Adds gas of this enthalpy to the array, without heat; after {@link #evaluate}. */
    void add(double gain_mol, double with_JPerMol, double[] y, int at) {
        y[at + U] += gain_mol * with_JPerMol;
        y[at + T] += gain_mol * (with_JPerMol - uSlope_JPerMol) / capacity_JPerK;
    }

    /** All heat flows, after {@link #prepareHeat}. */
    void flowHeat(double inflow_molPerS) {
        toWall_W = heatToWall_W(inflow_molPerS);
        WallLayer last = layers.get(layers.size() - 1);
        through_W = layers.size() > 1
                ? (inner_K - outer_K) / (layers.get(0).halfResistance_KPerW() + last.halfResistance_KPerW())
                : 0.0;
        double hA = wall.outerArea_m2()
                * heat.outside().coefficient_WPerM2K(outer_K, air_K, wall.height_m(), wall.emissivity());
        toAir_W = (outer_K - air_K) * hA / (1.0 + hA * last.halfResistance_KPerW());
        if (contact == Contact.NONE) {
            through_W = 0.0;
            toAir_W = 0.0;
        }
    }

    /**
     * The derivatives, after {@link #flowHeat}.
     *
     * @param gain_molPerS amount gained, negative when lost [mol/s]
     * @param with_JPerMol enthalpy of the gas that comes or goes [J/mol]
     */
    void derivatives(double gain_molPerS, double with_JPerMol, double[] yDot, int at) {
        double outer_W = layers.size() > 1 ? through_W : toAir_W;
        boolean perfect = contact == Contact.PERFECT;
        double fromGas_W = perfect ? outer_W : toWall_W;
        yDot[at + U] = gain_molPerS * with_JPerMol - fromGas_W;
        yDot[at + T] = (yDot[at + U] - gain_molPerS * uSlope_JPerMol) / capacity_JPerK;
        yDot[at + E1] = perfect ? 0.0 : toWall_W - outer_W;
        yDot[at + E2] = layers.size() > 1 ? through_W - toAir_W : 0.0;
    }

    /** How finely each part of the state is to be followed when temperatures are to be right to {@code error_K}. */
    void tolerances(double error_K, double reference_molPerM3, double[] tolerance, int at) {
        double gas_JPerK = volume_m3 * reference_molPerM3 * 2.5 * IdealGas.MOLAR_GAS_CONSTANT_J_PER_MOL_K;
        double inner_JPerK = layers.get(0).capacity_JPerK(air_K);
        tolerance[at + U] = error_K * gas_JPerK;
        tolerance[at + T] = error_K;
        tolerance[at + E1] = error_K * inner_JPerK;
        tolerance[at + E2] = error_K * (layers.size() > 1 ? layers.get(1).capacity_JPerK(air_K) : inner_JPerK);
    }

    /** Energy of gas and wall that an array holds [J]. */
    static double total_J(double[] y, int at) {
        return y[at + U] + y[at + E1] + y[at + E2];
    }

    /** What was evaluated last as a state of a vessel with this amount of gas. */
    WarmState state(WarmVessel vessel, double n_mol) {
        Temperature inner = new Temperature(inner_K);
        return new WarmState(
                vessel,
                new Amount(n_mol),
                new Temperature(T_K),
                layers.size() > 1 ? List.of(inner, new Temperature(outer_K)) : List.of(inner));
    }
}
