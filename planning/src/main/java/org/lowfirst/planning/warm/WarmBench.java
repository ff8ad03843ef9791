package org.lowfirst.planning.warm;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.transfer.warm.Surroundings;
import org.lowfirst.transfer.warm.WarmModel;

/**
 * What holds for every warm question at a bench today.
 *
 * @param model the gas and how heat passes
 * @param temperature of the bench: the air around supplies and bottle
 * @param ambient pressure of the surroundings, the zero of every gauge
 * @param rule at which temperature service pressures count
 */
public record WarmBench(WarmModel model, Temperature temperature, AbsolutePressure ambient, ReferenceRule rule) {

    /** Oxygen, standard atmosphere. */
    public static WarmBench oxygen(Temperature temperature, ReferenceRule rule) {
        return new WarmBench(WarmModel.oxygen(), temperature, StandardAtmosphere.PRESSURE, rule);
    }

    public Surroundings surroundings() {
        return new Surroundings(temperature, ambient);
    }

    CaloricEquation gas() {
        return model.equation();
    }
}
