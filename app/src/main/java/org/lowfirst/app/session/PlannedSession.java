package org.lowfirst.app.session;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.planning.session.SessionPlan;

/** A session that was planned from a file. */
public final class PlannedSession {

    private final SessionFile file;
    private final SessionPlan plan;

    PlannedSession(SessionFile file, SessionPlan plan) {
        this.file = file;
        this.plan = plan;
    }

    /** Whether every bottle ends ready. */
    public boolean allReady() {
        return plan.score().ready() == plan.request().bottles().size();
    }

    SessionFile file() {
        return file;
    }

    SessionPlan plan() {
        return plan;
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        List<String> notes = new ArrayList<>(plan.notes(file.bank().units()));
        notes.add("Readings are settled at the bench's temperature; gauges are read in surroundings of "
                + StandardAtmosphere.PRESSURE.toBar() + " bar absolute.");
        notes.add("Litres are litres of gas at " + file.bank().standard().label() + ".");
        notes.add("Times count a steady rise, changes and rests; a warm bottle is left to cool before it is opened"
                + " again. While it is warm its gauge shows more than it will settle to.");
        notes.add("The cylinder's marking, local codes and the makers' instructions come before this plan.");
        return List.copyOf(notes);
    }
}
