package org.lowfirst.station;

import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.RuleBookReading;
import org.lowfirst.station.rules.RuleBookText;

/**
 * What decides whether a bottle may be filled. Immutable.
 *
 * @param ruleBook text of the rule book adopted; null while the built-in one of the rule set holds
 * @param adopted the same, read; null while the built-in one holds
 * @param papers what is known of each bottle; bottles nothing was entered of and that were never filled are not in it
 */
public record Gate(@Nullable String ruleBook, @Nullable RuleBook adopted, Map<BottleId, BottlePapers> papers) {

    static final Gate NEW = new Gate(null, null, Map.of());

    /** Read when first asked for. */
    private static final class BuiltIn {

        private static final RuleBook US = BuiltInBooks.us();
        private static final RuleBook EU = BuiltInBooks.eu();
    }

    public Gate {
        papers = Map.copyOf(papers);
    }

    /** What is known of a bottle; nothing when nothing was entered. */
    public BottlePapers papersOf(BottleId bottle) {
        return papers.getOrDefault(bottle, BottlePapers.NONE);
    }

    /** The book in force. */
    public RuleBook book(RuleSet rules) {
        if (adopted != null) {
            return adopted;
        }
        return rules == RuleSet.US ? BuiltIn.US : BuiltIn.EU;
    }

    /** A text that does not read as a book can only come by an import; the book before it stays in force. */
    private Gate adopting(String text) {
        return RuleBookText.read("rule book", text) instanceof RuleBookReading.Read read
                ? new Gate(text, read.book(), papers)
                : this;
    }

    Gate after(GateFact fact) {
        if (fact instanceof GateFact.RuleBookAdopted f) {
            return adopting(f.text());
        } else if (fact instanceof GateFact.BottleMarked f) {
            return changed(f.bottle(), known -> known.with(f.marking()));
        } else if (fact instanceof GateFact.PlusRatingEntered f) {
            return changed(f.bottle(), known -> known.withPlus(f.entry()));
        } else if (fact instanceof GateFact.PlusRatingWithdrawn f) {
            return changed(f.bottle(), known -> known.withPlus(null));
        } else if (fact instanceof GateFact.RefusalsSetAside f) {
            return changed(f.bottle(), known -> known.settingAside(f));
        }
        return afterCheck(fact);
    }

    private Gate afterCheck(GateFact fact) {
        if (fact instanceof GateFact.ConditionAnswered f) {
            return changed(f.bottle(), known -> known.with(known.checks().answered(f)));
        } else if (fact instanceof GateFact.BottleFoundOpen f) {
            return changed(f.bottle(), known -> known.with(known.checks().open(f.day())));
        } else if (fact instanceof GateFact.EmptyBottleInspected f) {
            return changed(f.bottle(), known -> known.with(known.checks().inspected(f.day())));
        } else if (fact instanceof GateFact.HammerTested f) {
            return changed(f.bottle(), known -> known.with(known.checks().hammered(f.day())));
        }
        throw new AssertionError("unhandled " + fact);
    }

    /** A fill has begun: what was set aside was for this one. */
    Gate afterStart(BottleId bottle) {
        return papersOf(bottle).setAside() == null ? this : changed(bottle, known -> known.settingAside(null));
    }

    /** Gas went into a bottle. */
    Gate afterFill(BottleId bottle) {
        return changed(bottle, BottlePapers::filled);
    }

    private Gate changed(BottleId bottle, UnaryOperator<BottlePapers> change) {
        Map<BottleId, BottlePapers> changed = new HashMap<>(papers);
        changed.put(bottle, change.apply(papersOf(bottle)));
        return new Gate(ruleBook, adopted, changed);
    }
}
