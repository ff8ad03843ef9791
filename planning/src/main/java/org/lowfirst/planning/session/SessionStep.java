package org.lowfirst.planning.session;

import org.lowfirst.gas.Amount;
import org.lowfirst.planning.Change;
import org.lowfirst.transfer.Ending;

/**
 * One stage of a session.
 *
 * @param bottle the bottle on the hose
 * @param supply the supply to open
 * @param bottleReading the bottle's reading before and after
 * @param supplyReading the supply's reading before and after
 * @param moved what the bottle gains
 * @param ends equal pressures or the bottle's stop
 * @param changes what is changed before it
 * @param start_s when it begins, counted from the start of the session [s]
 */
public record SessionStep(
        String bottle,
        String supply,
        Change bottleReading,
        Change supplyReading,
        Amount moved,
        Ending ends,
        Changes changes,
        double start_s) {

    /**
     * @param hose whether another bottle goes on the hose
     * @param supply whether another supply is opened
     */
    public record Changes(boolean hose, boolean supply) {

        int count() {
            return (hose ? 1 : 0) + (supply ? 1 : 0);
        }
    }
}
