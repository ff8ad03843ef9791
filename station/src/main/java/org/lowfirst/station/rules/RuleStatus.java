package org.lowfirst.station.rules;

/** How well the text behind a rule is known. */
public enum RuleStatus {
    /** The text itself was read. */
    READ("read"),
    /** A quotation of the text was read. */
    READ_QUOTED("read, quoted"),
    /** Recalled, not read again: a lead, not a proof. */
    FROM_MEMORY("from memory"),
    /** Usual in the trade, no source. */
    COMMON_PRACTICE("common practice"),
    /** Set by the responsible person of the bench. */
    BENCH("bench");

    private final String word;

    RuleStatus(String word) {
        this.word = word;
    }

    /** As written in a rule file. */
    public String word() {
        return word;
    }
}
