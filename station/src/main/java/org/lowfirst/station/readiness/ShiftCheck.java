package org.lowfirst.station.readiness;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * The check at the start of a shift: every bottle in service, what to do with it, and which spare to take instead.
 *
 * @param lines by priority of the group, then most urgent first, then name
 * @param spares spares that are not needed for a swap, and hold less than the wish or were not read: fill them
 */
public record ShiftCheck(List<ShiftLine> lines, List<GroupBottle> spares) {

    public ShiftCheck {
        lines = List.copyOf(lines);
        spares = List.copyOf(spares);
    }

    /**
     * Checks all groups.
     *
     * @param start readings before it do not count
     * @throws IllegalArgumentException when a bottle names a group that is not there
     */
    public static ShiftCheck of(List<Group> groups, List<GroupBottle> bottles, Instant start) {
        GroupsByName byName = new GroupsByName(groups);
        List<GroupBottle> shelf = bottles.stream()
                .filter(bottle -> bottle.place() == Place.SPARE)
                .sorted(Comparator.comparing(GroupBottle::name))
                .collect(Collectors.toCollection(ArrayList::new));
        List<ShiftLine> lines = bottles.stream()
                .filter(bottle -> bottle.place() == Place.IN_SERVICE)
                .map(bottle -> {
                    Group group = byName.of(bottle);
                    return new ShiftLine(bottle, group, state(bottle, group, start), null);
                })
                .sorted(Comparator.<ShiftLine>comparingInt(line -> line.group().priority())
                        .thenComparing(line -> line.group().name())
                        .thenComparing(ShiftLine::state)
                        .thenComparing(line -> line.bottle().name()))
                .map(line -> line.state() == ShiftState.SWAP
                        ? new ShiftLine(
                                line.bottle(), line.group(), line.state(), takeSpare(shelf, line.group(), start))
                        : line)
                .toList();
        shelf.removeIf(spare -> holdsWish(spare, byName.of(spare), start));
        return new ShiftCheck(lines, shelf);
    }

    static ShiftState state(GroupBottle bottle, Group group, Instant start) {
        GaugePressure reading = bottle.readingSince(start);
        if (reading == null) {
            return ShiftState.READ;
        }
        if (reading.compareTo(group.floor()) < 0) {
            return ShiftState.SWAP;
        }
        return reading.compareTo(group.wish()) < 0 ? ShiftState.REFILL : ShiftState.READY;
    }

    /** Bottles ready now, of all in service in a group. */
    public long ready(Group group) {
        return lines.stream()
                .filter(line -> line.group().equals(group) && line.state() == ShiftState.READY)
                .count();
    }

    private static @Nullable String takeSpare(List<GroupBottle> shelf, Group group, Instant start) {
        for (GroupBottle spare : shelf) {
            if (spare.group().equals(group.name()) && holdsWish(spare, group, start)) {
                shelf.remove(spare);
                return spare.name();
            }
        }
        return null;
    }

    private static boolean holdsWish(GroupBottle bottle, Group group, Instant start) {
        return state(bottle, group, start) == ShiftState.READY;
    }
}
