package org.lowfirst.gas.internal;

/** The single numbers of an equation of state in the Helmholtz energy. */
record EquationConstants(
        double molarMass_kgPerMol,
        double gasConstant_JPerMolK,
        double reducingTemperature_K,
        double reducingDensity_molPerM3,
        double highestDensity_molPerM3) {

    static EquationConstants of(SubstanceFile file) {
        return new EquationConstants(
                file.quantity("molar-mass", "kg/mol", 1e-3, 1.0),
                file.quantity("gas-constant", "J/(mol K)", 8.31, 8.32),
                file.quantity("reducing-temperature", "K", 1.0, 2000.0),
                file.quantity("reducing-density", "mol/m3", 100.0, 1e5),
                file.quantity("highest-density", "mol/m3", 100.0, 2e5));
    }
}
