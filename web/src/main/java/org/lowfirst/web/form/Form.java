package org.lowfirst.web.form;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one form: what stands in each and what is wrong with it. What was typed is kept as it was typed.
 *
 * @param typed field name to text
 * @param faults field name to one sentence, in the order of the form
 */
public record Form(Map<String, String> typed, Map<String, String> faults) {

    /** Set to "yes" when what was refused may be insisted on. */
    public static final String CONFIRMABLE = "confirmable";

    public Form {
        typed = new LinkedHashMap<>(typed);
        faults = new LinkedHashMap<>(faults);
    }

    /** A form filled in beforehand. */
    public static Form with(Map<String, String> typed) {
        return new Form(typed, Map.of());
    }

    /** An empty form. */
    public static Form blank() {
        return with(Map.of());
    }

    /** What stands in a field; empty when nothing does. */
    public String value(String field) {
        return typed.getOrDefault(field, "");
    }

    /** Whether a choice is taken. */
    public boolean chosen(String field, String choice) {
        return value(field).equals(choice);
    }

    public boolean faulty(String field) {
        return faults.containsKey(field);
    }

    /** What is wrong with a field; empty when nothing is. */
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }

    /** Whether a field is the first that was refused; it gets the focus. */
    public boolean first(String field) {
        return !faults.isEmpty() && faults.keySet().iterator().next().equals(field);
    }

    /** Ids of what describes a field, or null when nothing does. */
    public @Nullable String describedBy(String field, boolean hinted) {
        String hint = hinted ? field + "-hint" : "";
        String fault = faulty(field) ? field + "-fault" : "";
        String both = (hint + " " + fault).strip();
        return both.isEmpty() ? null : both;
    }

    public boolean sound() {
        return faults.isEmpty();
    }

    /** The same form with one more fault; an earlier fault of the same field stays. */
    public Form faulting(String field, String fault) {
        Map<String, String> more = new LinkedHashMap<>(faults);
        more.putIfAbsent(field, fault);
        return new Form(typed, more);
    }

    /** The same form with the faults of another. */
    public Form withFaultsOf(Form other) {
        Map<String, String> more = new LinkedHashMap<>(faults);
        other.faults.forEach(more::putIfAbsent);
        return new Form(typed, more);
    }

    /** The same form with another text in one field. */
    public Form filled(String field, String text) {
        Map<String, String> more = new LinkedHashMap<>(typed);
        more.put(field, text);
        return new Form(more, faults);
    }
}
