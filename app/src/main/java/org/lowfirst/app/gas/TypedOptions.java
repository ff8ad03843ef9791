package org.lowfirst.app.gas;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.gas.RefusedQuestion.Objection;
import org.lowfirst.gas.Parsed;
import org.lowfirst.planning.ReferenceRule;

/** Reads quantities that were typed as options, and collects what is wrong with them. */
final class TypedOptions {

    private static final Map<String, ReferenceRule> RULES = Map.of("us", ReferenceRule.US, "eu", ReferenceRule.EU);

    private final List<Objection> objections = new ArrayList<>();

    <T> Optional<Parsed.Read<T>> read(String option, String text, Function<String, Parsed<T>> reader) {
        Parsed<T> parsed = reader.apply(text);
        if (parsed instanceof Parsed.Unreadable<T> unreadable) {
            objections.add(new Objection((option + " " + text.strip()).strip(), unreadable.problem()));
            return Optional.empty();
        }
        return Optional.of((Parsed.Read<T>) parsed);
    }

    ReferenceRule rules(@Nullable String text) {
        if (text == null) {
            return ReferenceRule.US;
        }
        ReferenceRule rules = RULES.get(text.strip().toLowerCase(Locale.ROOT));
        if (rules == null) {
            objections.add(new Objection(
                    "--rules " + text,
                    "This rule set is not known. Write us (marked pressures count at 70 F) or eu (at 15 C)."));
            return ReferenceRule.US;
        }
        return rules;
    }

    boolean haveObjections() {
        return !objections.isEmpty();
    }

    RefusedQuestion refused() {
        return new RefusedQuestion(objections);
    }
}
