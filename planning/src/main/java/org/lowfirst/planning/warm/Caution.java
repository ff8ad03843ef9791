package org.lowfirst.planning.warm;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.planning.words.Phrases;

/** What has to be said with a plan; the sentence is for people, the name is stable. */
public enum Caution {
    /** Always. */
    FOLLOW_MARKING_AND_LOCAL_RULES,
    /** Always. */
    OPEN_SLOWLY,
    /** Whenever temperatures of the gas come in. */
    COMPUTED_TEMPERATURE,
    /** The wall was sized, not weighed. */
    ASSUMED_WALL,
    /** Warm-stop compensation is on. */
    COMPENSATION_ON,
    /** The bottle reads more than its marking allows. */
    ABOVE_SERVICE_PRESSURE;

    public String sentence(Locale language) {
        return Phrases.in(language)
                .text("caution." + name().toLowerCase(Locale.ROOT).replace('_', '-'), Map.of());
    }
}
