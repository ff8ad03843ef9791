package org.lowfirst.app.flight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lowfirst.app.file.NearestKey;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.ReferenceRule;

/** The rule sets a flight file can name. */
enum RuleChoice {
    US_91("us-91", "14 CFR 91.211", ReferenceRule.US),
    US_135("us-135", "14 CFR 135.89 and 135.157", ReferenceRule.US),
    EU_NCO("eu-nco", "NCO.OP.190", ReferenceRule.EU);

    private final String set;
    private final String text;
    private final ReferenceRule reference;

    RuleChoice(String set, String text, ReferenceRule reference) {
        this.set = set;
        this.text = text;
        this.reference = reference;
    }

    /** Its name in the file and among the rule texts. */
    String set() {
        return set;
    }

    /** The paragraphs it is from. */
    String text() {
        return text;
    }

    /** Where service pressures count. */
    ReferenceRule reference() {
        return reference;
    }

    /** The condition at which litres count unless the file says otherwise. */
    ReferenceCondition litres() {
        return reference == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    static Optional<RuleChoice> find(String typed) {
        String lower = typed.toLowerCase(Locale.ROOT);
        for (RuleChoice choice : values()) {
            if (choice.set.equals(lower)) {
                return Optional.of(choice);
            }
        }
        return Optional.empty();
    }

    /** What to say to somebody who typed something else. */
    static String unknown(String typed) {
        List<String> sets = List.of(US_91.set, US_135.set, EU_NCO.set);
        String maybe = NearestKey.find(typed, sets)
                .map(set -> " Maybe " + set + " was meant.")
                .orElse("");
        return "The rule set \"" + typed + "\" is not known. Write us-91 (" + US_91.text + "), us-135 (" + US_135.text
                + ") or eu-nco (" + EU_NCO.text + ")." + maybe;
    }
}
