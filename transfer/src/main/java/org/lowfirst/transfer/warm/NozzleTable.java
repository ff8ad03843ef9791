package org.lowfirst.transfer.warm;

import org.lowfirst.gas.CaloricEquation;

/**
 * Mass flux of a real gas through a loss-free nozzle, choked or not. Immutable.
 *
 * <p>With x = 1 - pb / p0 the flux is {@code G = sqrt(p0 rho0 psi2(x))}, psi2 = 2 x (1 + a x + b x^2) up to the choking value x*,
 * constant beyond. For small x this is the flow of a liquid; a and b make psi2 at x* and its maximum there those of the exact
 * sonic flow, which is tabulated and interpolated by cubics in p0 and T0. For the ideal gas the form is right to 0.1 %.
 *
 * <p>Gas colder than 220 K would come near to condensing in the throat, where the equation of state is not used; it is taken to
 * choke as gas of 220 K does, with its own pressure and density. That is within 7 % where it can be
 * checked.
 *
 * <p>Symbols: p0, rho0, T0 pressure [Pa], density [kg/m3], temperature [K] at rest before the nozzle; pb pressure behind it.
 */
final class NozzleTable {

    private static final double LOWEST_K = 220.0;
    private static final double STEP_K = 20.0;
    private static final int TEMPERATURES = 12;
    private static final double STEP_PA = 1e6;
    private static final int PRESSURES = 43;
    /** Stands for vacuum in the first column, where the gas is ideal [Pa]. */
    private static final double NEAR_VACUUM_PA = 1e3;

    private final double[][] psi2 = new double[TEMPERATURES][PRESSURES];
    private final double[][] choking = new double[TEMPERATURES][PRESSURES];

    NozzleTable(CaloricEquation equation) {
        SonicFlow exact = new SonicFlow(equation);
        for (int i = 0; i < TEMPERATURES; i++) {
            double T_K = LOWEST_K + i * STEP_K;
            for (int j = 0; j < PRESSURES; j++) {
                double p_Pa = Math.max(NEAR_VACUUM_PA, j * STEP_PA);
                SonicFlow.Throat throat = exact.throat(p_Pa, T_K);
                double rho_kgPerM3 = exact.stagnationDensity_kgPerM3();
                psi2[i][j] = throat.flux_kgPerM2S() * throat.flux_kgPerM2S() / (p_Pa * rho_kgPerM3);
                choking[i][j] = 1.0 - throat.p_Pa() / p_Pa;
            }
        }
    }

    /**
     * Mass flux [kg/(m2 s)].
     *
     * @param p0_Pa before the nozzle
     * @param rho0_kgPerM3 before the nozzle
     * @param T0_K before the nozzle
     * @param pb_Pa behind it; at or above p0 nothing flows
     */
    double flux_kgPerM2S(double p0_Pa, double rho0_kgPerM3, double T0_K, double pb_Pa) {
        double x = 1.0 - pb_Pa / p0_Pa;
        if (x <= 0.0) {
            return 0.0;
        }
        double xStar = interpolated(choking, p0_Pa, T0_K);
        double psi2Star = interpolated(psi2, p0_Pa, T0_K);
        if (x >= xStar) {
            return Math.sqrt(p0_Pa * rho0_kgPerM3 * psi2Star);
        }
        // A + B = psi2* / (2 x*) - 1 and 2 A + 3 B = -1 with A = a x*, B = b x*^2.
        double sum = psi2Star / (2.0 * xStar) - 1.0;
        double b = -1.0 - 2.0 * sum;
        double a = sum - b;
        double y = x / xStar;
        return Math.sqrt(p0_Pa * rho0_kgPerM3 * 2.0 * x * (1.0 + y * (a + b * y)));
    }

    private static double interpolated(double[][] table, double p_Pa, double T_K) {
        double row = Math.max(0.0, (T_K - LOWEST_K) / STEP_K);
        double column = p_Pa / STEP_PA;
        if (!(row <= TEMPERATURES - 1 && column <= PRESSURES - 1)) {
            throw new LeftRange("valve flow at " + p_Pa + " Pa and " + T_K + " K");
        }
        int i = Math.min(Math.max((int) row - 1, 0), TEMPERATURES - 4);
        int j = Math.min(Math.max((int) column - 1, 0), PRESSURES - 4);
        double y = row - i;
        double x = column - j;
        double x0 = weight0(x);
        double x1 = weight1(x);
        double x2 = weight2(x);
        double x3 = weight3(x);
        double sum = 0.0;
        for (int k = 0; k < 4; k++) {
            double[] line = table[i + k];
            double along = x0 * line[j] + x1 * line[j + 1] + x2 * line[j + 2] + x3 * line[j + 3];
            double weight = k == 0 ? weight0(y) : k == 1 ? weight1(y) : k == 2 ? weight2(y) : weight3(y);
            sum += weight * along;
        }
        return sum;
    }

    /** Cubic Lagrange weights for nodes 0, 1, 2, 3. */
    private static double weight0(double x) {
        return -(x - 1.0) * (x - 2.0) * (x - 3.0) / 6.0;
    }

    private static double weight1(double x) {
        return x * (x - 2.0) * (x - 3.0) / 2.0;
    }

    private static double weight2(double x) {
        return -x * (x - 1.0) * (x - 3.0) / 2.0;
    }

    private static double weight3(double x) {
        return x * (x - 1.0) * (x - 2.0) / 6.0;
    }
}
