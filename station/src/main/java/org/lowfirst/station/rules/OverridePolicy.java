package org.lowfirst.station.rules;

/** Whether a refusal may be set aside for one fill. */
public enum OverridePolicy {
    NEVER("never"),
    /** A second person with the right to, and a reason, both written to the journal. */
    SECOND_PERSON("second person");

    private final String word;

    OverridePolicy(String word) {
        this.word = word;
    }

    /** As written in a rule file. */
    public String word() {
        return word;
    }
}
