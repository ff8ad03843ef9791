package org.lowfirst.app.journal;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.Happening;
import org.lowfirst.station.OutlookFact;

/** What the bench looks ahead with: how each kind of fact is written. */
final class OutlookCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "figures.kept",
                    1,
                    OutlookFact.FiguresKept.class,
                    f -> new Payload().with("figures", write(f.figures())),
                    p -> new OutlookFact.FiguresKept(p.part("figures", OutlookCodecs::figures))),
            new FactCodec<>(
                    "happening.planned",
                    1,
                    OutlookFact.HappeningPlanned.class,
                    f -> write(f.happening()),
                    p -> new OutlookFact.HappeningPlanned(happening(p))),
            new FactCodec<>(
                    "happening.dropped",
                    1,
                    OutlookFact.HappeningDropped.class,
                    f -> new Payload()
                            .with("name", f.name())
                            .with("from", f.from().toString()),
                    p -> new OutlookFact.HappeningDropped(p.text("name"), Parts.day(p.text("from")))),
            new FactCodec<>(
                    "supplies.ordered",
                    1,
                    OutlookFact.SuppliesOrdered.class,
                    f -> new Payload().with("expected", f.expected().toString()),
                    p -> new OutlookFact.SuppliesOrdered(Parts.day(p.text("expected")))));

    private OutlookCodecs() {}

    private static Payload write(Map<AheadFigure, BigDecimal> figures) {
        Payload payload = new Payload();
        figures.forEach((figure, value) -> payload.with(figure.key(), value.toPlainString()));
        return payload;
    }

    private static Map<AheadFigure, BigDecimal> figures(Payload p) {
        Map<AheadFigure, BigDecimal> figures = new EnumMap<>(AheadFigure.class);
        for (String key : p.members().keySet()) {
            figures.put(Parts.choice(AheadFigure.class, key.replace('-', '_')), Parts.decimal(p, key));
        }
        return figures;
    }

    private static Payload write(Happening happening) {
        return new Payload()
                .with("name", happening.name())
                .with("from", happening.from().toString())
                .with("days", (long) happening.days())
                .with("fills", happening.fills().toPlainString());
    }

    private static Happening happening(Payload p) {
        long days = p.number("days");
        if (days != (int) days) {
            throw new JsonFault("the number " + days + " is too large", 0);
        }
        return new Happening(p.text("name"), Parts.day(p.text("from")), (int) days, Parts.decimal(p, "fills"));
    }
}
