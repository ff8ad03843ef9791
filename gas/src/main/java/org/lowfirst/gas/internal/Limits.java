package org.lowfirst.gas.internal;

/** What a kernel says when its caller did not check the range. */
final class Limits {

    private Limits() {}

    static IllegalArgumentException pressure(double p_Pa, double highest_Pa) {
        return new IllegalArgumentException("The pressure (" + p_Pa + " Pa absolute) must be 0 to " + highest_Pa
                + " Pa.\nMaybe check it against highestPressure_Pa() first.");
    }

    static IllegalArgumentException density(double rho_molPerM3, double highest_molPerM3) {
        return new IllegalArgumentException("The density (" + rho_molPerM3 + " mol/m3) must be 0 to " + highest_molPerM3
                + " mol/m3.\nMaybe check the pressure against the range first.");
    }
}
