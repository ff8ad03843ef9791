package org.lowfirst.station;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The people of the bench. Immutable.
 *
 * @param described what is known of people, by name, in the order first described
 * @param signed who signed an entry, by its number
 */
public record Crew(Map<String, PersonDetails> described, Map<Long, List<String>> signed) {

    static final Crew NEW = new Crew(Map.of(), Map.of());

    public Crew {
        described = Collections.unmodifiableMap(described);
        signed = Collections.unmodifiableMap(signed);
    }

    /** Who signed an entry, the first to sign first. */
    public List<String> signers(long entry) {
        return signed.getOrDefault(entry, List.of());
    }

    Crew after(CrewFact fact) {
        if (fact instanceof CrewFact.PersonDescribed f) {
            Map<String, PersonDetails> more = new LinkedHashMap<>(described);
            more.put(f.person().name(), f.person());
            return new Crew(more, signed);
        } else if (fact instanceof CrewFact.PersonLeft f) {
            Map<String, PersonDetails> fewer = new LinkedHashMap<>(described);
            fewer.remove(f.person());
            return new Crew(fewer, signed);
        } else if (fact instanceof CrewFact.EntrySigned f) {
            return signedBy(f);
        } else if (fact instanceof CrewFact.SecondPersonNamed) {
            return this;
        }
        throw new AssertionError("unhandled " + fact);
    }

    private Crew signedBy(CrewFact.EntrySigned f) {
        Map<Long, List<String>> more = new LinkedHashMap<>(signed);
        List<String> names = new ArrayList<>(signers(f.entry()));
        names.add(f.signer());
        more.put(f.entry(), List.copyOf(names));
        return new Crew(described, more);
    }
}
