package org.lowfirst.transfer.warm;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Temperature;

/** What the gas comes from. */
public sealed interface WarmSource {

    /** A supply, which empties and cools. */
    record FromSupply(WarmState state) implements WarmSource {}

    /** A source that stays as it is whatever is taken from it: a very large bank, or a textbook line. */
    record Constant(AbsolutePressure pressure, Temperature temperature) implements WarmSource {}
}
