package org.lowfirst.station.rules;

/** What one rule says, mildest first. */
public enum Verdict {
    ALLOW,
    ALLOW_WITH_WARNING,
    REFUSE;

    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
