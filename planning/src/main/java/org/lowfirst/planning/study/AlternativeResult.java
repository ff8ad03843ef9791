package org.lowfirst.planning.study;

import org.jspecify.annotations.Nullable;

/**
 * What a study found about one alternative. What is "per fill" is null when no fill was made.
 *
 * @param alternative which
 * @param costPerFill everything paid over all fills made
 * @param aboveCheapest how much more a fill costs than in the cheapest alternative; the runs are paired; null for the cheapest
 * @param spread how far one run of years lies from another
 * @param parts what the cost per fill is made of
 * @param usage fills, supplies and deliveries
 * @param sentBack gas sent back; null when nothing was
 * @param storage what must be kept and laid out
 * @param limit what no bank of these supplies that finishes the same bottles can better; null when it is not known
 */
public record AlternativeResult(
        Alternative alternative,
        @Nullable Estimate costPerFill,
        @Nullable Estimate aboveCheapest,
        @Nullable CostSpread spread,
        @Nullable CostParts parts,
        Usage usage,
        @Nullable SentBack sentBack,
        Storage storage,
        @Nullable Limit limit) {}
