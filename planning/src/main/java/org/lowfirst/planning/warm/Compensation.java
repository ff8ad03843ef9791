package org.lowfirst.planning.warm;

/** Whether the valve may be left open beyond the service pressure while the gas is warm. */
public sealed interface Compensation {

    /** It may not; the default. */
    record Off() implements Compensation {}

    /**
     * The bench's responsible person has turned it on.
     *
     * @param rule the published table or rule that is followed, in words; must not be blank
     * @param by who turned it on; must not be blank
     */
    record On(String rule, String by) implements Compensation {}

    Compensation OFF = new Off();
}
