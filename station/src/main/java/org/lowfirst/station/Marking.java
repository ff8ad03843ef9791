package org.lowfirst.station;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.PermitTerms;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;

/**
 * What is marked on a bottle and known of its past: typed from its stamp, completed by hand, confirmed by a person.
 *
 * @param stamp the line typed; null when there was nothing to type
 * @param lastTest latest test marked; null when none can be read
 * @param service what it is for and has held
 * @param fillsBefore fills before the first in this journal, 0 or more; null when not known
 * @param permit terms of its permit; null when it needs none or they were not entered
 */
public record Marking(
        @Nullable StampLine stamp,
        MarkedPlate plate,
        @Nullable TestMark lastTest,
        Service service,
        @Nullable Integer fillsBefore,
        @Nullable PermitTerms permit) {}
