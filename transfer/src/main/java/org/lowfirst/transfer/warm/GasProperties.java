package org.lowfirst.transfer.warm;

import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Transport;

/**
 * The gas as the warm model sees it. Immutable.
 *
 * @param equation caloric equation of state
 * @param transport viscosity and conductivity
 */
record GasProperties(CaloricEquation equation, Transport transport) {

    static GasProperties oxygen() {
        return new GasProperties(Oxygen.schmidtWagner(), Oxygen.lemmonJacobsen());
    }
}
