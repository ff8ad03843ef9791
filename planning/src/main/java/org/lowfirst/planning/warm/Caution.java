package org.lowfirst.planning.warm;

/** What has to be said with a plan; the sentence is for people, the name is stable. */
public enum Caution {
    /** Always. */
    FOLLOW_MARKING_AND_LOCAL_RULES(
            "The cylinder's marking, the maker's instructions, local codes and licensed practice come first."),
    /** Always. */
    OPEN_SLOWLY("Open valves slowly: gas that is let in at once heats up where it is stopped."),
    /** Whenever temperatures of the gas come in. */
    COMPUTED_TEMPERATURE("The gas temperature is an estimate. A gauge and a thermometer come before it."),
    /** The wall was sized, not weighed. */
    ASSUMED_WALL("The mass of the wall is assumed from service pressure and volume; weigh the bottle to replace it."),
    /** Warm-stop compensation is on. */
    COMPENSATION_ON(
            "The gauge will show more than the marked service pressure while the gas is warm. The bench's responsible"
                    + " person has turned this on and named the rule that is followed."),
    /** The bottle reads more than its marking allows. */
    ABOVE_SERVICE_PRESSURE("The gauge shows more than the marked service pressure. Shut the valve and let it settle.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}
