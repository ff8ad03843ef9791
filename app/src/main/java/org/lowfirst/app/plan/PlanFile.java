package org.lowfirst.app.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Place;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;

/**
 * A plan file that can be planned.
 *
 * @param conditions gas, temperatures and hose
 * @param rules whose reference temperature counts
 * @param units the units the file uses, in which the sheet answers
 * @param supplies the bank in the order of the file
 * @param bottles the bottles in the order of the file
 * @param readingPlaces where the reading of each bottle stands, by its name
 */
public record PlanFile(
        Conditions conditions,
        ReferenceRule rules,
        ShownUnits units,
        List<SupplyState> supplies,
        List<BottleToFill> bottles,
        Map<String, Place> readingPlaces) {

    public PlanFile {
        supplies = List.copyOf(supplies);
        bottles = List.copyOf(bottles);
        readingPlaces = Map.copyOf(readingPlaces);
    }

    /** The condition at which an amount of gas is stated as litres. */
    public ReferenceCondition standard() {
        return rules == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    /** Litres of gas at {@link #standard()}. */
    public double standardLitres(Amount amount) {
        return conditions.gas().freeVolume(amount, standard()).toLitres();
    }

    Optional<Place> findReadingPlace(String bottle) {
        return Optional.ofNullable(readingPlaces.get(bottle));
    }
}
