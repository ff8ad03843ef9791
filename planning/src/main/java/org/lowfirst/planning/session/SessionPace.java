package org.lowfirst.planning.session;

/**
 * How long things take at a bench.
 *
 * @param hoseChange_s taking one bottle off and the next on [s]
 * @param supplyChange_s shutting one supply and opening the next [s]
 * @param rise_PaPerS how fast the bottle's pressure is let rise [Pa/s], above 0
 * @param rest_s how long a bottle cools after a stage before it is opened again [s]
 */
public record SessionPace(double hoseChange_s, double supplyChange_s, double rise_PaPerS, double rest_s) {

    /**
     * Two minutes for the hose, half a minute for a supply, ten minutes of rest: common practice, no source. Rise 200 psi a
     * minute (TM 55-1510-220-10, read).
     */
    public static final SessionPace UNHURRIED = new SessionPace(120, 30, 200 * 6894.757293168 / 60, 600);

    public SessionPace {
        if (!(hoseChange_s >= 0) || !(supplyChange_s >= 0) || !(rest_s >= 0) || !(rise_PaPerS > 0)) {
            throw new IllegalArgumentException("The times of a pace (" + hoseChange_s + ", " + supplyChange_s + ", "
                    + rest_s + " s) must not be below 0 and its rise (" + rise_PaPerS + " Pa/s) must be above 0.");
        }
    }
}
