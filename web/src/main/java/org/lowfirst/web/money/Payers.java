package org.lowfirst.web.money;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.money.Books;
import org.lowfirst.app.money.Uncharged;
import org.lowfirst.app.money.Working;
import org.lowfirst.station.FillId;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;

/** Says who pays for a fill and offers another payer. */
public final class Payers {

    /** Leads back to the page of the fill. */
    public static final String DONE = "done";

    private final Workplace workplace;

    public Payers(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * Who pays for a fill; null when the bench charges nothing, or the fill costs nothing and never will.
     *
     * @param back where to go on to: {@link #DONE}, or a month
     */
    public @Nullable PayerPart findPart(BenchNow now, FillId fill, String back) {
        if (now.bench().areas().accounts().tariffs().isEmpty()) {
            return null;
        }
        Books books = workplace.benches().keepingAccounts().books(now.id());
        Map<String, String> fields = new HashMap<>();
        books.findLine(fill).ifPresent(line -> {
            fields.put("payer", line.fill().person());
            fields.put("guest", line.fill().guest() ? "yes" : "");
        });
        return find(now, books, fill, back, Form.with(fields));
    }

    /** The same with what was typed. */
    @Nullable
    PayerPart find(BenchNow now, Books books, FillId fill, String back, Form form) {
        Words words = now.words();
        MoneyWriter writer = new MoneyWriter(words);
        Optional<ChargeLine> line = books.findLine(fill);
        Optional<Uncharged> uncharged = books.findUncharged(fill);
        if (line.isEmpty() && uncharged.isEmpty()) {
            return null;
        }
        String charge = line.map(one -> words.of(
                        one.fill().guest() ? "payer.charge.guest" : "payer.charge",
                        writer.money(one.amount()),
                        one.fill().person()))
                .orElseGet(() -> words.of(
                        "payer.uncharged",
                        uncharged
                                .map(one ->
                                        words.of("uncharged." + one.why().name().toLowerCase(Locale.ROOT)))
                                .orElse("")));
        String working = line.map(one -> {
                    Working how = books.working(one.id());
                    return writer.working(how.charge(one), how.tariff());
                })
                .orElse("");
        return new PayerPart(
                now.place().path("/fill/" + fill + "/payer"),
                back,
                charge,
                working,
                people(now, books),
                form,
                workplace.ids().next());
    }

    /** Owners, those at the bench, and whoever paid before. */
    private static List<String> people(BenchNow now, Books books) {
        TreeSet<String> names = new TreeSet<>(now.place().people());
        now.bench()
                .listBottles()
                .forEach(bottle -> names.add(bottle.details().owner().strip()));
        books.book().lines().forEach(line -> names.add(line.fill().person()));
        names.remove("");
        return List.copyOf(names);
    }

    /** What a fill was, e.g. "14 Jun 2026, M-11"; the id when the journal has no charge of it. */
    static String told(Books books, FillId fill, Words words) {
        MoneyWriter writer = new MoneyWriter(words);
        return books.findLine(fill)
                .map(line -> writer.day(line.fill().day()) + ", " + line.fill().bottle())
                .or(() -> books.findUncharged(fill)
                        .map(one -> one.day() == null ? one.bottle() : writer.day(one.day()) + ", " + one.bottle()))
                .orElse(fill.value());
    }
}
