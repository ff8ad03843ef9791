package org.lowfirst.planning.flight;

/**
 * What a device takes from the bottle, as its maker or user states it.
 *
 * <p>Flows are free-gas litres a minute at the reference condition of the request.
 */
public sealed interface Flow {

    /**
     * Flow [L/min] at an altitude.
     *
     * @param altitude_m pressure altitude [m]
     */
    double litresPerMinuteAt(double altitude_m);

    /** The same flow at every altitude. */
    record Constant(double litresPerMinute) implements Flow {
        public Constant {
            requireFlow(litresPerMinute, "flow", "L/min");
        }

        @Override
        public double litresPerMinuteAt(double altitude_m) {
            return litresPerMinute;
        }
    }

    /**
     * A flow that grows evenly with altitude. One litre a minute for every 10,000 ft is common practice, no source.
     *
     * @param litresPerMinutePer10000ft at least 0
     */
    record ByAltitude(double litresPerMinutePer10000ft) implements Flow {

        private static final double TEN_THOUSAND_FEET_M = 3048.0;

        public ByAltitude {
            requireFlow(litresPerMinutePer10000ft, "flow per 10,000 ft", "L/min");
        }

        @Override
        public double litresPerMinuteAt(double altitude_m) {
            return litresPerMinutePer10000ft * Math.max(0.0, altitude_m) / TEN_THOUSAND_FEET_M;
        }
    }

    /**
     * A pulse device: it takes a share of what the continuous flow would take.
     *
     * @param savingFactor how many times less it uses, at least 1, as the user states it
     */
    record Pulse(Flow continuous, double savingFactor) implements Flow {
        public Pulse {
            if (!(savingFactor >= 1.0) || Double.isInfinite(savingFactor)) {
                throw new IllegalArgumentException("The saving factor (" + savingFactor + ") must be at least 1.");
            }
        }

        @Override
        public double litresPerMinuteAt(double altitude_m) {
            return continuous.litresPerMinuteAt(altitude_m) / savingFactor;
        }
    }

    private static void requireFlow(double value, String name, String unit) {
        if (!(value >= 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + name + " (" + value + " " + unit + ") must be at least 0.");
        }
    }
}
