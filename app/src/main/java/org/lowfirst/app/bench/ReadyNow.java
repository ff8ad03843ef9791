package org.lowfirst.app.bench;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.readiness.Group;
import org.lowfirst.station.readiness.RefillList;
import org.lowfirst.station.readiness.ShiftCheck;

/**
 * Whether the bottles of a bench are ready to go.
 *
 * @param shift when the shift began; null while none has, then the latest reading of a bottle counts whatever its age
 * @param groups by priority, then name
 * @param check bottles in service and what to do with each
 * @param refill what to fill after a call
 * @param ids ids of the bottles in groups, by name
 */
public record ReadyNow(
        @Nullable Instant shift, List<Group> groups, ShiftCheck check, RefillList refill, Map<String, BottleId> ids) {

    public ReadyNow {
        groups = List.copyOf(groups);
        ids = Map.copyOf(ids);
    }

    /** @throws NoSuchElementException when no bottle of a group has that name */
    public BottleId getId(String bottle) {
        BottleId id = ids.get(bottle);
        if (id == null) {
            throw new NoSuchElementException("No group has a bottle " + bottle + ".");
        }
        return id;
    }
}
