package org.lowfirst.station.rules;

/** Holds an answer against the one that lets a cylinder pass. */
final class Answers {

    private Answers() {}

    /**
     * The opposite answer refuses and cannot be set aside; "not sure" refuses as the rule says.
     *
     * @param passes the answer that passes, {@link Answer#YES} or {@link Answer#NO}
     */
    static Finding judge(RuleHeading rule, Answer given, Answer passes, Advice opposite, Advice notSure) {
        Measure measured = new Measure.OfWord(RuleSettings.word(given));
        Measure limit = new Measure.OfWord(RuleSettings.word(passes));
        if (given == passes) {
            return Finding.allow(rule, measured, limit);
        }
        return given == Answer.NOT_SURE
                ? Finding.refuse(rule, notSure, measured, limit)
                : Finding.refuse(rule, opposite, measured, limit).withoutOverride();
    }
}
