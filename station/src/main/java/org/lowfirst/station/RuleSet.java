package org.lowfirst.station;

/** Which country's rules a bench follows. The figures are in the resource file rule-sets.csv. */
public enum RuleSet {
    US,
    EU;

    public RuleFigures figures() {
        return RuleFigures.of(this);
    }
}
