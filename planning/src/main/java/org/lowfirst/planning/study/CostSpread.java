package org.lowfirst.planning.study;

/**
 * Cost per fill of single runs, each within half a percent.
 *
 * @param low 5 % of the runs cost no more
 * @param middle half of them
 * @param high 95 % of them
 */
public record CostSpread(double low, double middle, double high) {}
