package org.lowfirst.web.people;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The people of a bench.
 *
 * @param place the bench
 * @param everybody whether everybody answers for the bench because nobody is described so
 * @param people in the order of the list
 */
public record PeoplePage(Place place, boolean everybody, List<Line> people) implements Page {

    public PeoplePage {
        people = List.copyOf(people);
    }

    /**
     * @param name the person
     * @param link page to describe them
     * @param roles what they do; empty when nobody said
     * @param attests training and check-out, each with its day and who says so
     * @param warnings what is past or soon will be, and why they fill with a second person
     */
    public record Line(String name, String link, List<String> roles, List<String> attests, List<String> warnings) {

        public Line {
            roles = List.copyOf(roles);
            attests = List.copyOf(attests);
            warnings = List.copyOf(warnings);
        }
    }

    @Override
    public String template() {
        return "people";
    }

    @Override
    public String title(Words words) {
        return words.of("people.title");
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
