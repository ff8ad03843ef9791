package org.lowfirst.app.plan;

import java.util.List;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.planning.PlansInOrder;

/**
 * A file that was planned.
 *
 * @param source the file
 * @param file what it says
 * @param plans one plan per bottle
 * @param warnings what a person should know about the file
 */
public record PlannedFile(SourceText source, PlanFile file, PlansInOrder plans, List<Problem> warnings)
        implements FilePlan {

    public PlannedFile {
        warnings = List.copyOf(warnings);
    }

    /** Whether every bottle comes to its stop. */
    public boolean reachesAll() {
        return plans.reachesAll();
    }

    /** What a reader of the numbers has to know, in sentences. */
    public List<String> notes() {
        return PlanNotes.of(this);
    }
}
