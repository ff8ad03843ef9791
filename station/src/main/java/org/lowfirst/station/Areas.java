package org.lowfirst.station;

/** The areas of a bench beside its cylinders and fills, each with a state of its own. Immutable. */
public record Areas(
        Gate gate, Crew crew, Accounts accounts, Care care, Stand stand, Sessions sessions, Outlook outlook) {

    static final Areas NEW =
            new Areas(Gate.NEW, Crew.NEW, Accounts.NEW, Care.NEW, Stand.NEW, Sessions.NEW, Outlook.NEW);

    Areas after(AreaFact fact) {
        if (fact instanceof GateFact f) {
            return with(gate.after(f));
        } else if (fact instanceof CrewFact f) {
            return new Areas(gate, crew.after(f), accounts, care, stand, sessions, outlook);
        } else if (fact instanceof MoneyFact f) {
            return new Areas(gate, crew, accounts.after(f), care, stand, sessions, outlook);
        } else if (fact instanceof CareFact f) {
            return new Areas(gate, crew, accounts, care.after(f), stand, sessions, outlook);
        } else if (fact instanceof StandFact f) {
            return new Areas(gate, crew, accounts, care, stand.after(f), sessions, outlook);
        } else if (fact instanceof SessionFact f) {
            return with(sessions.after(f));
        } else if (fact instanceof OutlookFact f) {
            return with(outlook.after(f));
        }
        throw new AssertionError("unhandled " + fact);
    }

    Areas with(Gate changed) {
        return new Areas(changed, crew, accounts, care, stand, sessions, outlook);
    }

    Areas with(Sessions changed) {
        return new Areas(gate, crew, accounts, care, stand, changed, outlook);
    }

    private Areas with(Outlook changed) {
        return new Areas(gate, crew, accounts, care, stand, sessions, changed);
    }

    /** A supply has come. */
    Areas delivered() {
        return with(outlook.delivered());
    }
}
