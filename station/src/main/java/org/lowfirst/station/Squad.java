package org.lowfirst.station;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.readiness.Place;

/**
 * Bottles kept ready. Immutable.
 *
 * @param groups by name, in the order first described
 * @param assigned what the bottles of groups are meant for
 * @param shift when the shift began; null while none has
 */
public record Squad(
        Map<String, GroupDetails> groups,
        Map<BottleId, Assignment> assigned,
        @Nullable Instant shift) {

    static final Squad NONE = new Squad(Map.of(), Map.of(), null);

    public Squad {
        groups = Collections.unmodifiableMap(new LinkedHashMap<>(groups));
        assigned = Collections.unmodifiableMap(new LinkedHashMap<>(assigned));
    }

    Squad with(GroupDetails group) {
        Map<String, GroupDetails> more = new LinkedHashMap<>(groups);
        more.put(group.name(), group);
        return new Squad(more, assigned, shift);
    }

    Squad without(String group) {
        Map<String, GroupDetails> fewer = new LinkedHashMap<>(groups);
        fewer.remove(group);
        Map<BottleId, Assignment> left = new LinkedHashMap<>(assigned);
        left.values().removeIf(assignment -> assignment.group().equals(group));
        return new Squad(fewer, left, shift);
    }

    Squad assigning(BottleId bottle, @Nullable String group, Place place) {
        Map<BottleId, Assignment> more = new LinkedHashMap<>(assigned);
        if (group == null) {
            more.remove(bottle);
        } else {
            more.put(bottle, new Assignment(group, place));
        }
        return new Squad(groups, more, shift);
    }

    Squad swapping(BottleId out, BottleId in) {
        Map<BottleId, Assignment> swapped = new LinkedHashMap<>(assigned);
        swapped.computeIfPresent(out, (bottle, assignment) -> assignment.at(Place.SPARE));
        swapped.computeIfPresent(in, (bottle, assignment) -> assignment.at(Place.IN_SERVICE));
        return new Squad(groups, swapped, shift);
    }

    Squad starting(Instant at) {
        return new Squad(groups, assigned, at);
    }
}
