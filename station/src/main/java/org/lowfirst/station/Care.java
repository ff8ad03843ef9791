package org.lowfirst.station;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Equipment that is looked after, groups of bottles kept ready, local numbers. Immutable.
 *
 * @param ended names of equipment no longer looked after
 * @param help what the emergency card says of the place
 */
public record Care(Set<String> ended, LocalHelp help) {

    static final Care NEW = new Care(Set.of(), LocalHelp.NONE);

    public Care {
        ended = Set.copyOf(ended);
    }

    Care after(CareFact fact) {
        if (fact instanceof CareFact.UpkeepEnded f) {
            Set<String> more = new LinkedHashSet<>(ended);
            more.add(f.equipment());
            return new Care(more, help);
        }
        if (fact instanceof CareFact.EmergencyCardSet f) {
            return new Care(ended, f.help());
        }
        throw new AssertionError("unhandled " + fact);
    }
}
