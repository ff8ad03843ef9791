package org.lowfirst.app.money;

import java.util.Optional;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.Reading;

/** Counts gas by what gauges showed. */
public interface GasMeter {

    /** Gas in a cylinder whose gauge showed this; empty when no gas can have shown it. */
    Optional<Amount> findContents(Volume waterVolume, Reading reading, AbsolutePressure ambient);

    /** Volume an amount takes at a reference condition. */
    Volume free(Amount amount, ReferenceCondition condition);
}
