package org.lowfirst.app.money;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.MoneyFact.RentBilled;
import org.lowfirst.station.charges.RentFinding;

/**
 * A line of rent on a bill and what the check says of it.
 *
 * @param fact as entered
 * @param finding null while no rent was agreed, or when the line cannot be checked
 * @param entry number of its entry
 */
public record Billed(RentBilled fact, @Nullable RentFinding finding, long entry) {}
