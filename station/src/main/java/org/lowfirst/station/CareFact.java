package org.lowfirst.station;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.station.readiness.Place;

/** Equipment that is looked after, groups of bottles kept ready, local numbers. */
public sealed interface CareFact extends AreaFact {

    /** A piece of equipment as it is looked after from now on; its name says which. */
    record UpkeepDescribed(Upkeep upkeep) implements CareFact {}

    /** It was replaced, tested or calibrated, so its interval begins anew. */
    record UpkeepDone(String equipment, LocalDate day) implements CareFact {}

    /** A piece of equipment is no longer looked after here. */
    record UpkeepEnded(String equipment, String reason) implements CareFact {}

    /** A group of bottles as it is from now on; its name says which. */
    record GroupDescribed(GroupDetails group) implements CareFact {}

    /** The group is no longer; its bottles belong to none. */
    record GroupEnded(String group) implements CareFact {}

    /**
     * Which group a bottle belongs to, and where it is meant to be.
     *
     * @param group null for none
     */
    record BottleAssigned(BottleId bottle, @Nullable String group, Place place) implements CareFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(bottle);
        }
    }

    /** One bottle came out of service and became a spare, a spare of the same group went in. */
    record BottlesSwapped(BottleId out, BottleId in) implements CareFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(out, in);
        }
    }

    /** Readings from this moment on count for the check of the shift. */
    record ShiftStarted(Instant at) implements CareFact {}

    /** All the emergency card says of the place, as it is from now on. */
    record EmergencyCardSet(LocalHelp help) implements CareFact {}

    /** Under which address other machines reach the program: it goes into the codes of tags. */
    record AddressSet(String address) implements CareFact {}
}
