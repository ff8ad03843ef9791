package org.lowfirst.planning.ahead;

/**
 * How supplies are ordered.
 *
 * @param leadDays days from the order to the delivery
 * @param reserveFills fills that should still be in the bank when the delivery comes
 */
public record Ordering(int leadDays, int reserveFills) {}
