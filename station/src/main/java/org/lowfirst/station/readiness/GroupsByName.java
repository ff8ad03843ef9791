package org.lowfirst.station.readiness;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds the group a bottle names. */
final class GroupsByName {

    private final Map<String, Group> groups;

    GroupsByName(List<Group> groups) {
        this.groups = groups.stream().collect(Collectors.toMap(Group::name, Function.identity()));
    }

    /**
     * The group of a bottle.
     *
     * @throws IllegalArgumentException when there is none of that name
     */
    Group of(GroupBottle bottle) {
        Group group = groups.get(bottle.group());
        if (group == null) {
            throw new IllegalArgumentException("The group of " + bottle.name() + " (" + bottle.group()
                    + ") must be one of " + groups.keySet() + ".");
        }
        return group;
    }
}
