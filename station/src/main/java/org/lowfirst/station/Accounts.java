package org.lowfirst.station;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the bench charges by, what was agreed with the supplier, and how far its months are closed. Charges and costs are
 * not kept here: they are worked out from the journal. Immutable.
 *
 * @param tariffs in order of their first day
 * @param rents in order of their first day
 * @param closed the last month closed; null before the first
 * @param currency the one currency of the accounts; null before anything was entered in one
 */
public record Accounts(
        List<MoneyFact.TariffSet> tariffs,
        List<MoneyFact.RentAgreed> rents,
        @Nullable YearMonth closed,
        @Nullable String currency) {

    static final Accounts NEW = new Accounts(List.of(), List.of(), null, null);

    public Accounts {
        tariffs = List.copyOf(tariffs);
        rents = List.copyOf(rents);
    }

    /** The tariff in force on a day; empty before the first. */
    public Optional<MoneyFact.TariffSet> findTariff(LocalDate day) {
        return tariffs.stream().filter(tariff -> !tariff.from().isAfter(day)).reduce((earlier, later) -> later);
    }

    /** Whether the month of a day is closed. */
    public boolean closed(LocalDate day) {
        return closed != null && !YearMonth.from(day).isAfter(closed);
    }

    Accounts after(MoneyFact fact) {
        if (fact instanceof MoneyFact.FillBilled) {
            return this;
        } else if (fact instanceof MoneyFact.TariffSet f) {
            List<MoneyFact.TariffSet> more = new ArrayList<>(tariffs);
            more.removeIf(tariff -> tariff.from().equals(f.from()));
            more.add(f);
            more.sort(Comparator.comparing(MoneyFact.TariffSet::from));
            return new Accounts(more, rents, closed, either(f.tariff().currency()));
        } else if (fact instanceof MoneyFact.CostEntered f) {
            return in(f.cost().amount().currency());
        } else if (fact instanceof MoneyFact.RentAgreed f) {
            List<MoneyFact.RentAgreed> more = new ArrayList<>(rents);
            more.removeIf(rent -> rent.from().equals(f.from()));
            more.add(f);
            more.sort(Comparator.comparing(MoneyFact.RentAgreed::from));
            return new Accounts(tariffs, more, closed, either(f.rent().perDay().currency()));
        } else if (fact instanceof MoneyFact.RentBilled f) {
            return in(f.line().amount().currency());
        } else if (fact instanceof MoneyFact.MonthClosed f) {
            YearMonth last = closed == null || f.month().isAfter(closed) ? f.month() : closed;
            return new Accounts(tariffs, rents, last, currency);
        }
        throw new AssertionError("unhandled " + fact);
    }

    private Accounts in(String code) {
        return currency == null ? new Accounts(tariffs, rents, closed, code) : this;
    }

    private String either(String code) {
        return currency == null ? code : currency;
    }
}
