package org.lowfirst.app.bench;

import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.FillsLeft;

/**
 * What it would mean to exchange one supply.
 *
 * @param leaving the supply as it stands
 * @param advised true for the one to send back: the lowest, which returns the least gas that was paid for
 * @param now fills of the usual bottle as the bank stands; null without bottles
 * @param withFull the same with a full supply in its place; null without bottles
 */
public record ExchangeOffer(
        SupplyView leaving,
        boolean advised,
        @Nullable FillsLeft now,
        @Nullable FillsLeft withFull) {}
