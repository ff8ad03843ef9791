package org.lowfirst.app.honest;

import java.util.List;
import org.lowfirst.planning.contents.BankBalance.Balance;

/**
 * What left the supplies against what entered bottles.
 *
 * @param balance the numbers
 * @param name the verdict in words
 * @param sentence the numbers in words
 * @param possible what can be behind a difference, likeliest first; empty when inside gauge uncertainty
 * @param leftOut supplies that were not read before and after, in people's names
 */
public record BalanceReport(
        Balance balance, String name, String sentence, List<String> possible, List<String> leftOut) {

    public BalanceReport {
        possible = List.copyOf(possible);
        leftOut = List.copyOf(leftOut);
    }
}
