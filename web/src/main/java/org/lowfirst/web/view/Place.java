package org.lowfirst.web.view;

import java.util.List;

/**
 * The bench a page is about.
 *
 * @param bench its id
 * @param name its name
 * @param people names to choose from when something is entered
 */
public record Place(String bench, String name, List<String> people) {

    public Place {
        people = List.copyOf(people);
    }

    /** Address of something at this bench, e.g. {@code path("/journal/17")}. */
    public String path(String rest) {
        return "/at/" + bench + rest;
    }
}
