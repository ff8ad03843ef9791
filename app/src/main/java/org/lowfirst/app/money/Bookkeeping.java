package org.lowfirst.app.money;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Accounts;
import org.lowfirst.station.Currencies;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Timeline;

/** Works the accounts out from a journal. Immutable. */
public final class Bookkeeping {

    /** Stands in while nothing was entered in any currency; then there is no amount either. */
    private static final Currency NONE_YET = Currency.getInstance("EUR");

    private final GasMeter meter;
    private final ZoneId zone;
    private final Causes causes;

    /**
     * @param zone where the bench stands, which tells what day it is
     * @param locale language of the reasons that nobody typed
     */
    public Bookkeeping(GasMeter meter, ZoneId zone, Locale locale) {
        this.meter = meter;
        this.zone = zone;
        this.causes = new Causes(Wording.of(Bookkeeping.class, locale));
    }

    /**
     * @param entries all entries up to the head, by number
     * @param now days after it are not charged rent yet
     */
    public Books books(Head head, List<Entry> entries, Accounts accounts, Instant now) {
        Currency currency = currency(accounts.currency());
        BookWriter writer = new BookWriter(entries, meter, zone, currency, causes);
        Outgoings outgoings = new Outgoings(Timeline.of(entries), zone, currency);
        return new Books(
                head,
                writer.book(),
                writer.workings(),
                writer.uncharged(),
                outgoings.paid(),
                outgoings.bills(LocalDate.ofInstant(now, zone)),
                outgoings.terms(),
                outgoings.stays());
    }

    private static Currency currency(@Nullable String code) {
        return code == null ? NONE_YET : Currencies.find(code).orElse(NONE_YET);
    }
}
