package org.lowfirst.planning;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/**
 * What an input can be meant to be. Wider than any station, narrower than a slipped decimal point or a wrong unit.
 *
 * <p>All of these: common practice, no source.
 */
final class Limits {

    static final int SUPPLIES = 64;
    static final int BOTTLES = 200;
    static final Volume SMALLEST_VESSEL = Volume.ofLitres(0.05);
    static final Volume LARGEST_BOTTLE = Volume.ofLitres(300.0);
    static final Volume LARGEST_SUPPLY = Volume.ofLitres(3_000.0);
    static final Volume NO_HOSE = new Volume(0.0);
    static final Volume LARGEST_HOSE = Volume.ofLitres(10.0);
    static final GaugePressure HIGHEST_READING = GaugePressure.ofBar(400.0);
    static final AbsolutePressure LOWEST_AMBIENT = AbsolutePressure.ofBar(0.5);
    static final AbsolutePressure HIGHEST_AMBIENT = AbsolutePressure.ofBar(1.1);

    private Limits() {}
}
