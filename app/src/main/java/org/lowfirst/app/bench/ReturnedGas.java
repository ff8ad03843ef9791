package org.lowfirst.app.bench;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.station.charges.Money;

/**
 * What goes back to the supplier in a supply that leaves.
 *
 * @param gas gas inside, by its latest reading
 * @param paid what was paid for that gas; null when the price of a filling was never entered
 */
public record ReturnedGas(Amount gas, @Nullable Money paid) {}
