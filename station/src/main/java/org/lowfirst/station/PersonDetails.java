package org.lowfirst.station;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A person of the bench.
 *
 * @param name as it is chosen when something is entered
 * @param roles in the order of {@link Role}
 * @param training null when nobody entered one
 * @param checkOut null when nobody entered one
 */
public record PersonDetails(
        String name,
        Set<Role> roles,
        @Nullable Attest training,
        @Nullable Attest checkOut) {

    public PersonDetails {
        EnumSet<Role> ordered = EnumSet.noneOf(Role.class);
        ordered.addAll(roles);
        roles = Collections.unmodifiableSet(ordered);
    }

    public boolean is(Role role) {
        return roles.contains(role);
    }
}
