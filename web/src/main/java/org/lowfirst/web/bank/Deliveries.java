package org.lowfirst.web.bank;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.app.honest.ComparingDelivery.DeliveryNote;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.planning.contents.Delivery.Code;
import org.lowfirst.station.Supply;
import org.lowfirst.web.bank.BankPage.Arrival;
import org.lowfirst.web.bank.DeliveryPage.Sheet;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;

/** Says how a supply came, against a full one. */
record Deliveries(Workplace workplace, BenchNow now) {

    private Outcome<DeliveryNote> compare(Supply supply) {
        return workplace.benches().comparingDelivery().compare(now.id(), supply.id());
    }

    /** What to say on the bank page of a supply just connected: nothing when it came full. */
    Optional<Arrival> arrival(Supply supply) {
        return compare(supply) instanceof Outcome.Given<DeliveryNote> given
                        && given.value().delivery().code() != Code.FULL
                ? Optional.of(new Arrival(
                        title(supply, given.value()),
                        rank(supply),
                        now.place().path("/supplies/" + supply.id() + "/delivery")))
                : Optional.empty();
    }

    /** What to say of any supply of the bank. */
    Sheet sheet(Supply supply) {
        Outcome<DeliveryNote> outcome = compare(supply);
        if (outcome instanceof Outcome.Given<DeliveryNote> given) {
            DeliveryNote note = given.value();
            return new Sheet(title(supply, note), rank(supply), note.note());
        }
        Problem problem = ((Outcome.Declined<DeliveryNote>) outcome).problem();
        return new Sheet(problem.sentence() + " " + problem.advice(), rank(supply), "");
    }

    private String title(Supply supply, DeliveryNote note) {
        String name = supply.details().name();
        String percent = String.format(Figures.LOCALE, "%.0f", Math.abs(note.percent()));
        String reads = now.figures().pressureWithUnit(note.delivery().reading().shown());
        String full = now.figures().pressureWithUnit(note.delivery().fullWouldRead());
        return switch (note.delivery().code()) {
            case SHORT ->
                now.words().of("delivery.short", name, now.figures().gas(note.missing()), percent, reads, full);
            case OVER_FULL -> now.words().of("delivery.over", name, percent, reads, full);
            case FULL -> now.words().of("delivery.full", name, reads, full);
        };
    }

    private String rank(Supply supply) {
        List<SupplyView> bank =
                workplace.benches().keepingTheBank().bank(now.id()).supplies();
        return bank.stream()
                .filter(view -> view.supply().id().equals(supply.id()))
                .map(view -> now.words().of("delivery.rank", view.rank(), bank.size()))
                .findFirst()
                .orElse("");
    }
}
