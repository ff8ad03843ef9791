package org.lowfirst.station.readiness;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.lowfirst.gas.GaugePressure;

/**
 * What to refill after a call.
 *
 * @param refill below the floor first, then by priority of the group, then what lacks most, then name
 * @param unfit below the wish, but not to be filled today
 * @param unread without a reading: read first
 */
public record RefillList(List<RefillLine> refill, List<GroupBottle> unfit, List<GroupBottle> unread) {

    public RefillList {
        refill = List.copyOf(refill);
        unfit = List.copyOf(unfit);
        unread = List.copyOf(unread);
    }

    /**
     * Lists the bottles that are here and hold less than their group's wish.
     *
     * @throws IllegalArgumentException when a bottle names a group that is not there
     */
    public static RefillList of(List<Group> groups, List<GroupBottle> bottles) {
        GroupsByName byName = new GroupsByName(groups);
        List<GroupBottle> here = bottles.stream()
                .filter(bottle -> bottle.place() != Place.AWAY)
                .sorted(Comparator.comparing(GroupBottle::name))
                .toList();
        List<RefillLine> low = here.stream()
                .flatMap(bottle -> lines(bottle, byName.of(bottle)))
                .sorted(Comparator.comparing(RefillLine::belowFloor)
                        .reversed()
                        .thenComparing(line -> line.group().priority())
                        .thenComparing(RefillLine::missing, Comparator.reverseOrder())
                        .thenComparing(line -> line.bottle().name()))
                .toList();
        return new RefillList(
                low.stream().filter(line -> line.bottle().fit()).toList(),
                low.stream()
                        .map(RefillLine::bottle)
                        .filter(bottle -> !bottle.fit())
                        .toList(),
                here.stream().filter(bottle -> bottle.reading() == null).toList());
    }

    private static Stream<RefillLine> lines(GroupBottle bottle, Group group) {
        GaugePressure reading = bottle.reading();
        if (reading == null || reading.compareTo(group.wish()) >= 0) {
            return Stream.of();
        }
        GaugePressure missing = new GaugePressure(group.wish().pascals() - reading.pascals());
        return Stream.of(new RefillLine(bottle, group, missing, reading.compareTo(group.floor()) < 0));
    }
}
