package org.lowfirst.planning.contents;

import org.lowfirst.gas.GaugePressure;

/** How far a working gauge may be off, as its dial or its certificate says. */
public sealed interface GaugeAccuracy {

    /**
     * Largest error the statement allows.
     *
     * @param fullScale highest value of the scale
     */
    GaugePressure limit(GaugePressure fullScale);

    /**
     * An accuracy class: the largest error anywhere on the scale in per cent of full scale (EN 837-1; the usual classes 0.1,
     * 0.25, 0.6, 1, 1.6, 2.5 and 4 are from memory, any other per cent up to 10 is taken as well).
     *
     * @param percent largest error, per cent of full scale, above 0, at most 10
     */
    record OfFullScale(double percent) implements GaugeAccuracy {
        public OfFullScale {
            if (!(percent > 0.0 && percent <= 10.0)) {
                throw new IllegalArgumentException(
                        "The accuracy class (" + percent + " % of full scale) must be above 0 and at most 10.");
            }
        }

        @Override
        public GaugePressure limit(GaugePressure fullScale) {
            return new GaugePressure(fullScale.pascals() * percent / 100.0);
        }
    }

    /**
     * A stated error, the same over the whole scale.
     *
     * @param error largest error, above 0
     */
    record Stated(GaugePressure error) implements GaugeAccuracy {
        public Stated {
            if (!(error.pascals() > 0.0)) {
                throw new IllegalArgumentException("The stated error (" + error.pascals() + " Pa) must be above 0.");
            }
        }

        @Override
        public GaugePressure limit(GaugePressure fullScale) {
            return error;
        }
    }
}
