package org.lowfirst.app.gas;

import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.lowfirst.gas.GasState;
import org.lowfirst.gas.Transport;

/** One row of a table of properties, with all digits. */
final class StateLine {

    static final String HEADER =
            "T_K,p_Pa,rho_kg_m3,Z,u_J_kg,h_J_kg,s_J_kgK,cv_J_kgK,cp_J_kgK,w_m_s,viscosity_Pa_s," + "conductivity_W_mK";

    private StateLine() {}

    static String of(double T_K, double p_Pa, GasState state, double molarMass_kgPerMol, Transport.Values transport) {
        return DoubleStream.of(
                        T_K,
                        p_Pa,
                        state.density().molesPerCubicMetre() * molarMass_kgPerMol,
                        state.compressibility(),
                        state.internalEnergy_JPerKg(),
                        state.enthalpy_JPerKg(),
                        state.entropy_JPerKgK(),
                        state.cv_JPerKgK(),
                        state.cp_JPerKgK(),
                        state.soundSpeed_mPerS(),
                        transport.viscosity_PaS(),
                        transport.conductivity_WPerMK())
                .mapToObj(Double::toString)
                .collect(Collectors.joining(","));
    }
}
