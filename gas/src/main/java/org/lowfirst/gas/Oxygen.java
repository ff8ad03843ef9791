package org.lowfirst.gas;

import java.net.URL;
import java.util.Objects;
import org.lowfirst.gas.internal.HelmholtzEquation;

/** Oxygen. */
public final class Oxygen {

    private Oxygen() {}

    /**
     * Oxygen by the equation of Schmidt and Wagner; read once, at the first call.
     *
     * <p>Valid: 160 K to 2000 K, 0 to 80 MPa, gas side (above the critical temperature there is no other). Stated uncertainty
     * of density 0.1 % up to 300 K; above 300 K the equation extrapolates.
     *
     * @see "[SchmidtWagner1985], [Stewart1991]"
     */
    public static CaloricEquation schmidtWagner() {
        return Loaded.EQUATION;
    }

    /**
     * Viscosity and thermal conductivity of oxygen by the equations of Lemmon and Jacobsen, in the same range.
     *
     * @see "[LemmonJacobsen2004]"
     */
    public static Transport lemmonJacobsen() {
        return Loaded.EQUATION.findTransport().orElseThrow();
    }

    private static final class Loaded {
        static final HelmholtzEquation EQUATION = HelmholtzEquation.read(file());

        private static URL file() {
            return Objects.requireNonNull(
                    Oxygen.class.getResource("oxygen.helmholtz.txt"), "oxygen.helmholtz.txt is not in the jar");
        }
    }
}
