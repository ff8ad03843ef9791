package org.lowfirst.app.journal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.FillId;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyId;

/** How a supply stands in the bank: how each kind of fact is written. */
final class StandCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "supply.released",
                    1,
                    StandFact.SupplyReleased.class,
                    f -> about(f.supply()),
                    p -> new StandFact.SupplyReleased(supply(p))),
            new FactCodec<>(
                    "supply.held-back",
                    1,
                    StandFact.SupplyHeldBack.class,
                    f -> about(f.supply()).with("reason", f.reason()),
                    p -> new StandFact.SupplyHeldBack(supply(p), p.text("reason"))),
            new FactCodec<>(
                    "supply.tagged-out",
                    1,
                    StandFact.SupplyTaggedOut.class,
                    f -> about(f.supply()).with("reason", f.reason()),
                    p -> new StandFact.SupplyTaggedOut(supply(p), p.text("reason"))),
            new FactCodec<>(
                    "supply.put-first",
                    1,
                    StandFact.SupplyPutFirst.class,
                    f -> about(f.supply()),
                    p -> new StandFact.SupplyPutFirst(supply(p))),
            new FactCodec<>(
                    "supply.delivered",
                    1,
                    StandFact.SupplyDelivered.class,
                    StandCodecs::delivered,
                    p -> new StandFact.SupplyDelivered(supply(p), delivery(p))),
            new FactCodec<>(
                    "supply.placed",
                    1,
                    StandFact.SupplyPlaced.class,
                    f -> about(f.supply()).with("bank", f.bank()),
                    p -> new StandFact.SupplyPlaced(supply(p), p.textOrNull("bank"))),
            new FactCodec<>(
                    "fill.bank-chosen",
                    1,
                    StandFact.BankChosen.class,
                    f -> new Payload().with("fill", f.fill().value()).with("bank", f.bank()),
                    p -> new StandFact.BankChosen(new FillId(p.text("fill")), p.textOrNull("bank"))),
            new FactCodec<>(
                    "exchange.begun",
                    1,
                    StandFact.ExchangeBegun.class,
                    f -> about(f.leaving()),
                    p -> new StandFact.ExchangeBegun(supply(p))),
            new FactCodec<>(
                    "exchange.made",
                    1,
                    StandFact.ExchangeMade.class,
                    f -> new Payload()
                            .with("left", f.left().value())
                            .with("newcomer", f.newcomer().value()),
                    p -> new StandFact.ExchangeMade(new SupplyId(p.text("left")), new SupplyId(p.text("newcomer")))),
            new FactCodec<>(
                    "exchange.broken-off",
                    1,
                    StandFact.ExchangeBrokenOff.class,
                    f -> about(f.leaving()).with("reason", f.reason()),
                    p -> new StandFact.ExchangeBrokenOff(supply(p), p.text("reason"))));

    private StandCodecs() {}

    private static Payload about(SupplyId supply) {
        return new Payload().with("supply", supply.value());
    }

    private static SupplyId supply(Payload p) {
        return new SupplyId(p.text("supply"));
    }

    private static Payload delivered(StandFact.SupplyDelivered f) {
        LocalDate rentFrom = f.delivery().rentFrom();
        return about(f.supply())
                .with("lot", f.delivery().lot())
                .with("rentFrom", rentFrom == null ? null : rentFrom.toString())
                .with("supplier", f.delivery().supplier());
    }

    private static Delivery delivery(Payload p) {
        return new Delivery(p.textOrNull("lot"), day(p.textOrNull("rentFrom")), p.textOrNull("supplier"));
    }

    private static @Nullable LocalDate day(@Nullable String text) {
        try {
            return text == null ? null : LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new JsonFault("the day " + text + " is not like 2026-06-14", 0, e);
        }
    }
}
