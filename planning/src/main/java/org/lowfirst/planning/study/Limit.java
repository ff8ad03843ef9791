package org.lowfirst.planning.study;

/**
 * What an endless bank would do: every supply gives all its gas above what the bottles come with, each bit of it at the lowest
 * pressure that still moves. It finishes every bottle that a full bank of the alternative's size can finish. A bank that leaves
 * the bottles unfinished that take most gas, or lives on gas from before the counted years, may do with less per fill.
 *
 * @param fillsPerSupply most fills that one delivered supply can make
 * @param costPerFill what a fill would then cost at the rent and purchases of the alternative
 */
public record Limit(double fillsPerSupply, double costPerFill) {}
