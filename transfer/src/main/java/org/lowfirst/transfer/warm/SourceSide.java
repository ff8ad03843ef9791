package org.lowfirst.transfer.warm;

import org.lowfirst.transfer.Hose;

/** The source of a stage while a simulation runs; its part of the array starts at {@code at}. */
interface SourceSide {

    /** Writes the start into the array. */
    void start(double[] y, int at);

    /** Reads the array after {@code moved_mol} has left; the readings below hold until the next call. */
    void evaluate(double moved_mol, double[] y, int at);

    /** Writes the derivatives while {@code flow_molPerS} leaves. */
    void derivatives(double flow_molPerS, double[] yDot, int at);

    /** See {@link Side#tolerances}. */
    void tolerances(double error_K, double reference_molPerM3, double[] tolerance, int at);

    double p_Pa();

    double T_K();

    /** Temperature of the inner layer of the wall [K]. */
    double wall_K();

    double rho_molPerM3();

    double h_JPerMol();

    /** Heat from wall to air, after {@link #derivatives} [W]. */
    double toAir_W();

    /** How the pressure falls with gas given, without heat [Pa/mol]. */
    double pressureSlope_PaPerMol();

    /** Takes gas from the array, without heat; after {@link #evaluate}. */
    void give(double amount_mol, double[] y, int at);

    /** Writes what was evaluated last into the array, from amount and temperatures alone. */
    void rewrite(double moved_mol, double[] y, int at);

    /** Energy of gas and wall that an array holds [J]; 0 for a source that stays as it is. */
    double total_J(double[] y, int at);

    /** The source and its hose once {@code moved_mol} has left. */
    SourceAfter after(double moved_mol, double[] y, int at);

    /** A source and its hose. */
    record SourceAfter(WarmSource source, Hose hose) {}
}
