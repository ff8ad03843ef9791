package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;

/** Prices, who pays, and what the supplier takes: how each kind of fact is written. */
final class MoneyCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "fill.billed",
                    1,
                    MoneyFact.FillBilled.class,
                    f -> new Payload()
                            .with("fill", f.fill().value())
                            .with("payer", f.payer())
                            .with("guest", f.guest()),
                    p -> new MoneyFact.FillBilled(new FillId(p.text("fill")), p.text("payer"), p.truth("guest"))),
            new FactCodec<>(
                    "tariff.set",
                    1,
                    MoneyFact.TariffSet.class,
                    f -> new Payload().with("from", f.from().toString()).with("tariff", MoneyParts.write(f.tariff())),
                    p -> new MoneyFact.TariffSet(Parts.day(p.text("from")), p.part("tariff", MoneyParts::tariff))),
            new FactCodec<>(
                    "cost.entered",
                    1,
                    MoneyFact.CostEntered.class,
                    f -> MoneyParts.write(f.cost()),
                    p -> new MoneyFact.CostEntered(MoneyParts.cost(p))),
            new FactCodec<>(
                    "rent.agreed",
                    1,
                    MoneyFact.RentAgreed.class,
                    f -> new Payload().with("from", f.from().toString()).with("rent", MoneyParts.write(f.rent())),
                    p -> new MoneyFact.RentAgreed(Parts.day(p.text("from")), p.part("rent", MoneyParts::rent))),
            new FactCodec<>(
                    "rent.billed",
                    1,
                    MoneyFact.RentBilled.class,
                    f -> new Payload()
                            .with("bill", f.bill())
                            .with("billedOn", f.billedOn().toString())
                            .with("line", MoneyParts.write(f.line())),
                    p -> new MoneyFact.RentBilled(
                            p.text("bill"), Parts.day(p.text("billedOn")), p.part("line", MoneyParts::billedStay))),
            new FactCodec<>(
                    "month.closed",
                    1,
                    MoneyFact.MonthClosed.class,
                    f -> new Payload().with("month", f.month().toString()).with("by", f.by()),
                    p -> new MoneyFact.MonthClosed(MoneyParts.month(p.text("month")), p.text("by"))));

    private MoneyCodecs() {}
}
