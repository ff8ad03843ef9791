package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** Which entries can be corrected, and by what. Whether later entries can do without is found by folding anew. */
final class CorrectionRules {

    private CorrectionRules() {}

    static @Nullable Refused check(Bench bench, Command.CorrectEntry correct, Circumstances circumstances) {
        String subject = Long.toString(correct.entry().seq());
        Fact counted = Corrections.counting(correct.entry()).map(Entry::fact).orElse(null);
        if (counted == null || counted instanceof Fact.BenchOpened) {
            return Refused.of(Rule.ENTRY_NOT_CORRECTABLE, subject);
        }
        if (counted instanceof MoneyFact money) {
            Refused settled = MoneyRules.settled(bench.areas().accounts(), money);
            if (settled == null && !(money instanceof MoneyFact.FillBilled)) {
                settled = MoneyRules.byKeeper(bench, circumstances);
            }
            if (settled != null) {
                return settled;
            }
        }
        if (correct.reason().isBlank()) {
            return Refused.of(Rule.REASON_EMPTY, subject);
        }
        Fact replacement = correct.replacement();
        if (replacement == null) {
            return null;
        }
        if (!replacement.getClass().equals(counted.getClass())) {
            return Refused.of(Rule.REPLACEMENT_OF_OTHER_KIND, subject);
        }
        for (Need need : Need.of(replacement)) {
            Refused missing = need instanceof Need.Known
                    ? need.missingIn(bench.supplies(), bench.bottles(), bench.openFills())
                    : null;
            if (missing != null) {
                return missing;
            }
        }
        return FactRules.check(bench, replacement, circumstances);
    }
}
