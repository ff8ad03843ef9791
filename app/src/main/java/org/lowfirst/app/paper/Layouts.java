package org.lowfirst.app.paper;

/** Lays out each kind of paper. */
final class Layouts {

    private final Lettering lettering;

    Layouts(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(Paper paper) {
        if (paper instanceof SupplyLabels labels) {
            return new SupplyLabelsLayout(lettering).of(labels);
        } else if (paper instanceof BottleTags tags) {
            return new BottleTagsLayout(lettering).of(tags);
        } else if (paper instanceof BenchSheet sheet) {
            return new BenchSheetLayout(lettering).of(sheet);
        } else if (paper instanceof BlankLog log) {
            return new BlankLogLayout(lettering).of(log);
        } else if (paper instanceof FillRecord fill) {
            return new FillRecordLayout(lettering).of(fill);
        } else if (paper instanceof MonthStatement statement) {
            return new MonthStatementLayout(lettering).of(statement);
        } else if (paper instanceof EmergencyCard card) {
            return new EmergencyCardLayout(lettering).of(card);
        }
        throw new AssertionError("unhandled " + paper);
    }
}
