package org.lowfirst.web.people;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One person, to be described or to leave.
 *
 * @param place the bench
 * @param name who; empty for somebody new
 * @param roles what a person can do at a bench
 * @param form what was typed
 * @param key key of the form
 */
public record PersonPage(Place place, String name, List<RoleChoice> roles, Form form, String key) implements Page {

    public PersonPage {
        roles = List.copyOf(roles);
    }

    /**
     * @param field name of the box
     * @param what the role and what comes with it
     */
    public record RoleChoice(String field, String what) {}

    public boolean fresh() {
        return name.isEmpty();
    }

    @Override
    public String template() {
        return "person";
    }

    @Override
    public String title(Words words) {
        return fresh() ? words.of("person.new.title") : name;
    }

    @Override
    public Section section() {
        return Section.BENCH;
    }

    @Override
    public Place at() {
        return place;
    }
}
