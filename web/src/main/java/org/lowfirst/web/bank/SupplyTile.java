package org.lowfirst.web.bank;

import gg.jte.Content;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.stand.TurnMark;
import org.lowfirst.web.verdict.VerdictBadge;

/**
 * One supply in the picture of the bank.
 *
 * @param id its id
 * @param rank 1 = lowest pressure
 * @param name its name
 * @param picture the cylinder with its level; the other components say the same
 * @param reading what its gauge should show, without unit
 * @param within how far the reading may be off, e.g. "within 3"; empty when not known
 * @param verdict what its readings come to; null before there is anything to compare
 * @param turn when it is opened; null when simply by its rank
 * @param age when the gauge was last read, and whether gas was drawn since
 * @param old whether the last reading is too old to rely on
 * @param size water volume and service pressure
 */
public record SupplyTile(
        String id,
        int rank,
        String name,
        Content picture,
        String reading,
        String within,
        @Nullable VerdictBadge verdict,
        @Nullable TurnMark turn,
        String age,
        boolean old,
        String size) {}
