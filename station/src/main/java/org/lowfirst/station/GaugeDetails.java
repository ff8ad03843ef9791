package org.lowfirst.station;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a gauge. Either its class or a stated error is given.
 *
 * @param name how people at the bench call it; one gauge a name
 * @param use where it is usually read
 * @param fullScale highest value of its scale
 * @param division smallest difference a person reads off it
 * @param classPercent accuracy class, per cent of full scale, when it has one
 * @param error largest error its certificate states, when it has one
 * @param calibrated day it was last compared with a standard, when known
 */
public record GaugeDetails(
        String name,
        GaugeUse use,
        StatedPressure fullScale,
        StatedPressure division,
        @Nullable BigDecimal classPercent,
        @Nullable StatedPressure error,
        @Nullable LocalDate calibrated) {}
