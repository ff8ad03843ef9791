package org.lowfirst.station;

/** The areas of a bench beside its cylinders and fills, each with a state of its own. Immutable. */
public record Areas(Gate gate, Crew crew, Accounts accounts, Care care, Stand stand) {

    static final Areas NEW = new Areas(Gate.NEW, Crew.NEW, Accounts.NEW, Care.NEW, Stand.NEW);

    Areas after(AreaFact fact) {
        if (fact instanceof GateFact f) {
            return new Areas(gate.after(f), crew, accounts, care, stand);
        } else if (fact instanceof CrewFact f) {
            return new Areas(gate, crew.after(f), accounts, care, stand);
        } else if (fact instanceof MoneyFact f) {
            return new Areas(gate, crew, accounts.after(f), care, stand);
        } else if (fact instanceof CareFact f) {
            return new Areas(gate, crew, accounts, care.after(f), stand);
        } else if (fact instanceof StandFact f) {
            return new Areas(gate, crew, accounts, care, stand.after(f));
        }
        throw new AssertionError("unhandled " + fact);
    }

    Areas with(Gate changed) {
        return new Areas(changed, crew, accounts, care, stand);
    }
}
