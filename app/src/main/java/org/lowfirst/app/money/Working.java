package org.lowfirst.app.money;

import org.lowfirst.station.charges.Charge;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.Tariff;

/**
 * How a line was worked out.
 *
 * @param tariff the tariff it was charged by; of a reversal, that of the line reversed
 * @param entry number of the entry that brought it about; of a first charge, that of the fill's end
 */
public record Working(Tariff tariff, long entry) {

    /** The charge with its steps; of a reversal, that of the line reversed. */
    public Charge charge(ChargeLine line) {
        return tariff.charge(line.fill().quantity(), line.fill().guest());
    }
}
