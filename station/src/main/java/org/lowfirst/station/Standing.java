package org.lowfirst.station;

/**
 * When a supply is opened, and why not by its rank.
 *
 * @param reason why it is held back or tagged out; empty otherwise
 */
public record Standing(Turn turn, String reason) {

    /** As every supply stands about which nobody said anything. */
    public static final Standing BY_RANK = new Standing(Turn.BY_RANK, "");
}
