package org.lowfirst.app.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillsLeft;

/** Says in sentences what the plans of one file mean, in its units. */
final class PlanWords {

    private final PlanFile file;
    private final ShownReadings shown;

    PlanWords(PlanFile file) {
        this.file = file;
        this.shown = new ShownReadings(file.units().pressure());
    }

    /** What to know about one bottle besides its steps. */
    List<String> ofBottle(FillPlan plan) {
        List<String> sentences = new ArrayList<>();
        GaugePressure reading = plan.request().bottle().reading();
        if (reading.pascals() <= 0.0) {
            sentences.add(
                    plan.request().bottle().name()
                            + " reads nothing. A bottle found empty may hold air or moisture: have it inspected before it is filled.");
        }
        FillsLeft left = plan.fillsLeft();
        if (left.complete() > 0) {
            sentences.add("Such fills for " + plan.request().bottle().name() + " in this bank: "
                    + left.inWords(file.units()) + ".");
        }
        sentences.addAll(plan.notes(file.units()));
        return sentences;
    }

    /** What the highest reading comes from. */
    String whyNeverAbove(FillPlan plan) {
        GaugePressure service = plan.request().bottle().servicePressure();
        if (service == null || service.equals(plan.stop().neverAbove())) {
            return "(its marked service pressure)";
        }
        return "(its marked " + shown.withUnit(shown.given(service)) + " at " + reference() + ")";
    }

    /** The temperature at which marked pressures count, as its rule set states it. */
    String reference() {
        return switch (file.rules()) {
            case US -> "70 F";
            case EU -> "15 C";
        };
    }

    /** The bench's temperature in the unit of the file. */
    String bench() {
        Temperature bench = file.conditions().bench();
        return String.format(
                Locale.ROOT,
                "%.0f %s",
                bench.to(file.units().temperature()),
                file.units().temperature().symbol());
    }
}
