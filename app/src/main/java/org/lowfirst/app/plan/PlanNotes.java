package org.lowfirst.app.plan;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.planning.FillPlan;

/** The sentences that go with the numbers of a plan. */
final class PlanNotes {

    private PlanNotes() {}

    static List<String> of(PlannedFile planned) {
        PlanFile file = planned.file();
        PlanWords words = new PlanWords(file);
        List<String> notes = new ArrayList<>();
        notes.add("Readings are settled at " + words.bench() + "; gauges are read in surroundings of "
                + StandardAtmosphere.PRESSURE.toBar() + " bar absolute.");
        notes.add("Litres are litres of gas at " + file.standard().label() + ".");
        notes.add("The list of supplies is the bank after the last bottle.");
        for (FillPlan plan : planned.plans().plans()) {
            notes.addAll(words.ofBottle(plan));
        }
        notes.add("The cylinder's marking, local codes and the makers' instructions come before this plan.");
        return List.copyOf(notes);
    }
}
