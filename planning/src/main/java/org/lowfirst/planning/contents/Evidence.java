package org.lowfirst.planning.contents;

import java.time.Instant;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * The numbers behind a verdict.
 *
 * @param since time of the reading it is compared with
 * @param at time of the reading
 * @param expected what the gauge would show now had nothing happened
 * @param shown what it shows
 * @param missing_mol gas missing [mol]; negative when there is too much
 * @param standardDeviation_mol of that amount [mol]
 * @param share leak: share of the contents lost each day; wrong volume: true volume / stated volume - 1; else 0
 * @param near temperature of the reading it is compared with: re-read near it
 */
public record Evidence(
        Instant since,
        Instant at,
        GaugePressure expected,
        GaugePressure shown,
        double missing_mol,
        double standardDeviation_mol,
        double share,
        Temperature near) {}
