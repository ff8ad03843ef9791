package org.lowfirst.planning.warm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.RiseRate;

/** What is known of the gas in a bottle that is being filled. */
public sealed interface GasNow {

    /**
     * Somebody says how warm it is.
     *
     * @param reading what the gauge shows now
     * @param gas temperature of the gas
     * @param wall temperature of the wall; null when unknown, then it is taken to be that of the gas, which gives the longest wait
     */
    record Stated(
            GaugePressure reading,
            Temperature gas,
            @Nullable Temperature wall) implements GasNow {

        public Stated(GaugePressure reading, Temperature gas) {
            this(reading, gas, null);
        }
    }

    /**
     * The readings since the valve was opened on a settled bottle; the temperature is computed.
     *
     * @param readings at least two, the first settled at the bench's temperature, each later and none lower than the one before
     */
    record Filling(List<TimedReading> readings) implements GasNow {

        public Filling {
            readings = List.copyOf(readings);
        }
    }

    /**
     * A settled bottle that is about to be filled; the temperature is computed.
     *
     * @param reading what the gauge shows, settled at the bench's temperature
     * @param rate how fast the gauge will rise
     */
    record Opening(GaugePressure reading, RiseRate rate) implements GasNow {}

    /**
     * A reading with its time.
     *
     * @param seconds since any fixed moment
     * @param reading what the gauge showed
     */
    record TimedReading(double seconds, GaugePressure reading) {}
}
