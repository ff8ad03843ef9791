package org.lowfirst.planning;

import org.lowfirst.planning.PlanRefused.AmbientOutOfRange;
import org.lowfirst.planning.PlanRefused.BottleAboveLimit;
import org.lowfirst.planning.PlanRefused.DuplicateName;
import org.lowfirst.planning.PlanRefused.EmptyBank;
import org.lowfirst.planning.PlanRefused.FloorAboveStop;
import org.lowfirst.planning.PlanRefused.NameMissing;
import org.lowfirst.planning.PlanRefused.NoAnswer;
import org.lowfirst.planning.PlanRefused.PressureOutOfRange;
import org.lowfirst.planning.PlanRefused.ServicePressureMissing;
import org.lowfirst.planning.PlanRefused.SupplyUnknown;
import org.lowfirst.planning.PlanRefused.TemperatureOutOfRange;
import org.lowfirst.planning.PlanRefused.TooMany;
import org.lowfirst.planning.PlanRefused.VolumeOutOfRange;

/** Refusals as sentences. */
final class RefusalWords {

    private RefusalWords() {}

    static String of(PlanRefused refused, ShownUnits units) {
        if (refused instanceof EmptyBank) {
            return "The bank has no supply. Please add at least one supply with its water volume and reading.";
        }
        if (refused instanceof TooMany r) {
            return "There are %s %s; at most %s can be planned together. Please leave some out."
                    .formatted(r.measured(), r.what(), r.limit());
        }
        if (refused instanceof NameMissing r) {
            return "The %s in place %s has no name. Please give it the name on its label."
                    .formatted(r.what(), r.place());
        }
        if (refused instanceof DuplicateName r) {
            return "The name \"%s\" is given to more than one %s. Please give each its own name."
                    .formatted(r.name(), r.what());
        }
        if (refused instanceof SupplyUnknown r) {
            return "There is no supply \"%s\" in the bank. Please choose from its supplies.".formatted(r.name());
        }
        if (refused instanceof ServicePressureMissing r) {
            return "The service pressure of bottle %s is not known. Please read it from the stamp on its shoulder."
                    .formatted(r.bottle());
        }
        if (refused instanceof BottleAboveLimit r) {
            return ("Bottle %s reads %s; at this temperature it must not read more than %s (service pressure %s)."
                            + " Please let it settle and read it again; if it still reads more, do not fill it.")
                    .formatted(
                            r.bottle(),
                            units.show(r.measured()),
                            units.show(r.limit()),
                            units.show(r.servicePressure()));
        }
        if (refused instanceof FloorAboveStop r) {
            return "The floor of bottle %s (%s) is above its stop of %s. Please lower the floor or raise the target."
                    .formatted(r.bottle(), units.show(r.measured()), units.show(r.stop()));
        }
        return rangeWords(refused, units);
    }

    private static String rangeWords(PlanRefused refused, ShownUnits units) {
        if (refused instanceof VolumeOutOfRange r) {
            return "The %s (%s) must be %s to %s. Please check the number and its unit."
                    .formatted(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refused instanceof PressureOutOfRange r) {
            return "The %s (%s) must be %s to %s. Please check the number and its unit."
                    .formatted(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refused instanceof AmbientOutOfRange r) {
            return "The pressure of the surroundings (%s) must be %s to %s. Please check the number and its unit."
                    .formatted(units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refused instanceof TemperatureOutOfRange r) {
            return "The %s temperature (%s) must be %s to %s. Please check the number and its unit."
                    .formatted(r.what(), units.show(r.measured()), units.show(r.lowest()), units.show(r.highest()));
        }
        if (refused instanceof NoAnswer r) {
            return "The properties of the gas could not be computed (" + r.reason()
                    + "). Please check temperature and pressures.";
        }
        throw new AssertionError("unhandled " + refused);
    }
}
