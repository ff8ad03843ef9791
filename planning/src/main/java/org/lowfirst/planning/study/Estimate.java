package org.lowfirst.planning.study;

/**
 * A mean over the runs and the interval in which the true mean lies with a confidence of 95 %.
 *
 * @param mean the estimate
 * @param low lower end of the interval
 * @param high upper end
 */
public record Estimate(double mean, double low, double high) {}
