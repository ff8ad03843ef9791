package org.lowfirst.web.money;

import java.util.List;
import org.lowfirst.web.form.Form;

/**
 * Who pays for a fill, and how to make it somebody else.
 *
 * @param action where the form is sent
 * @param back where to go on to, as it is sent
 * @param charge what it costs and whom, or why it costs nothing yet
 * @param working how that was worked out; empty for nothing
 * @param people names to choose from
 * @param form what was typed
 * @param key key of the form
 */
public record PayerPart(
        String action, String back, String charge, String working, List<String> people, Form form, String key) {

    public PayerPart {
        people = List.copyOf(people);
    }
}
