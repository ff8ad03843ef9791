package org.lowfirst.web.bank;

import gg.jte.Content;

/**
 * One supply in the picture of the bank.
 *
 * @param id its id
 * @param rank 1 = lowest pressure
 * @param name its name
 * @param picture the cylinder with its level; the other components say the same
 * @param reading what its gauge should show, without unit
 * @param age when the gauge was last read, and whether gas was drawn since
 * @param old whether the last reading is too old to rely on
 * @param size water volume and service pressure
 */
public record SupplyTile(
        String id, int rank, String name, Content picture, String reading, String age, boolean old, String size) {}
