package org.lowfirst.station.rules;

/**
 * Somebody asks to set the refusals of one judgement aside for one fill.
 *
 * @param filler who fills
 * @param second who takes it on, not the filler
 * @param secondMayOverride the second person has the right to
 * @param reason why, for the journal
 */
public record OverrideRequest(String filler, String second, boolean secondMayOverride, String reason) {}
