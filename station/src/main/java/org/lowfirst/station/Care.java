package org.lowfirst.station;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lowfirst.station.due.Upkeep;

/**
 * Equipment that is looked after, groups of bottles kept ready, local numbers. Immutable.
 *
 * @param upkeep equipment by name, in the order first described
 * @param squad bottles kept ready
 * @param help what the emergency card says of the place
 * @param address under which other machines reach the program; empty when nobody said
 */
public record Care(Map<String, Upkeep> upkeep, Squad squad, LocalHelp help, String address) {

    static final Care NEW = new Care(Map.of(), Squad.NONE, LocalHelp.NONE, "");

    public Care {
        upkeep = Collections.unmodifiableMap(new LinkedHashMap<>(upkeep));
    }

    Care after(CareFact fact) {
        if (fact instanceof CareFact.UpkeepDescribed f) {
            Map<String, Upkeep> more = new LinkedHashMap<>(upkeep);
            more.put(f.upkeep().name(), f.upkeep());
            return new Care(more, squad, help, address);
        } else if (fact instanceof CareFact.UpkeepDone f) {
            Map<String, Upkeep> done = new LinkedHashMap<>(upkeep);
            done.computeIfPresent(f.equipment(), (name, piece) -> piece.doneOn(f.day()));
            return new Care(done, squad, help, address);
        } else if (fact instanceof CareFact.UpkeepEnded f) {
            Map<String, Upkeep> fewer = new LinkedHashMap<>(upkeep);
            fewer.remove(f.equipment());
            return new Care(fewer, squad, help, address);
        } else if (fact instanceof CareFact.EmergencyCardSet f) {
            return new Care(upkeep, squad, f.help(), address);
        } else if (fact instanceof CareFact.AddressSet f) {
            return new Care(upkeep, squad, help, f.address());
        }
        return new Care(upkeep, squadAfter(fact), help, address);
    }

    private Squad squadAfter(CareFact fact) {
        if (fact instanceof CareFact.GroupDescribed f) {
            return squad.with(f.group());
        } else if (fact instanceof CareFact.GroupEnded f) {
            return squad.without(f.group());
        } else if (fact instanceof CareFact.BottleAssigned f) {
            return squad.assigning(f.bottle(), f.group(), f.place());
        } else if (fact instanceof CareFact.BottlesSwapped f) {
            return squad.swapping(f.out(), f.in());
        } else if (fact instanceof CareFact.ShiftStarted f) {
            return squad.starting(f.at());
        }
        throw new AssertionError("unhandled " + fact);
    }
}
