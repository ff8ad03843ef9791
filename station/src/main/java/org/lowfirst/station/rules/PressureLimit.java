package org.lowfirst.station.rules;

/** A pressure the settled contents may not exceed, and the rule that says so. */
public record PressureLimit(RuleHeading rule, PressureAt most) {}
