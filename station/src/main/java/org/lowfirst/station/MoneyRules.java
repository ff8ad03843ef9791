package org.lowfirst.station;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What can be entered about money. A bill is never a reason to refuse a fill. */
final class MoneyRules {

    /** Nobody keeps such a bench's accounts further back or plans further ahead (common practice, no source). */
    private static final LocalDate FIRST_DAY = LocalDate.of(1990, 1, 1);

    private static final int YEARS_AHEAD = 2;

    private MoneyRules() {}

    static @Nullable Refused check(Bench bench, MoneyFact fact, Circumstances circumstances) {
        Refused wrong = check(bench.areas().accounts(), fact, circumstances);
        boolean anybody = fact instanceof MoneyFact.FillBilled;
        return wrong != null || anybody ? wrong : byKeeper(bench, circumstances);
    }

    /** What only those enter who keep the charges. */
    static @Nullable Refused byKeeper(Bench bench, Circumstances circumstances) {
        return bench.roster().keepsCharges(circumstances.author())
                ? null
                : Refused.of(Rule.NOT_TREASURER, circumstances.author());
    }

    private static @Nullable Refused check(Accounts accounts, MoneyFact fact, Circumstances circumstances) {
        LocalDate today = LocalDate.ofInstant(circumstances.now(), circumstances.zone());
        if (fact instanceof MoneyFact.FillBilled f) {
            return f.payer().isBlank() ? Refused.of(Rule.NAME_EMPTY, "person") : null;
        } else if (fact instanceof MoneyFact.TariffSet f) {
            Refused wrong = TariffRules.check(f.tariff());
            wrong = wrong == null ? oneCurrency(accounts, f.tariff().currency()) : wrong;
            return wrong == null ? day(accounts, f.from(), today.plusYears(YEARS_AHEAD)) : wrong;
        } else if (fact instanceof MoneyFact.CostEntered f) {
            Refused wrong = cost(f.cost(), circumstances.confirmed());
            wrong = wrong == null ? oneCurrency(accounts, f.cost().amount().currency()) : wrong;
            return wrong == null ? day(accounts, f.cost().day(), today) : wrong;
        } else if (fact instanceof MoneyFact.RentAgreed f) {
            Refused wrong = RentRules.check(f.rent());
            wrong = wrong == null ? oneCurrency(accounts, f.rent().perDay().currency()) : wrong;
            return wrong == null ? range(f.from(), today.plusYears(YEARS_AHEAD)) : wrong;
        } else if (fact instanceof MoneyFact.RentBilled f) {
            Refused wrong = RentRules.check(f.line());
            wrong = wrong == null ? oneCurrency(accounts, f.line().amount().currency()) : wrong;
            return wrong == null ? day(accounts, f.billedOn(), today) : wrong;
        } else if (fact instanceof MoneyFact.MonthClosed f) {
            return close(accounts, f, today);
        }
        throw new AssertionError("unhandled " + fact);
    }

    /** Whether the fact belongs to a month that is closed, so that it stays as it is. */
    static @Nullable Refused settled(Accounts accounts, MoneyFact fact) {
        LocalDate day = null;
        if (fact instanceof MoneyFact.MonthClosed f) {
            return Refused.of(Rule.MONTH_STAYS_CLOSED, f.month().toString());
        } else if (fact instanceof MoneyFact.TariffSet f) {
            day = f.from();
        } else if (fact instanceof MoneyFact.CostEntered f) {
            day = f.cost().day();
        } else if (fact instanceof MoneyFact.RentBilled f) {
            day = f.billedOn();
        }
        return day == null ? null : open(accounts, day);
    }

    private static @Nullable Refused open(Accounts accounts, LocalDate day) {
        return accounts.closed(day) ? Refused.of(Rule.DAY_IN_CLOSED_MONTH, day.toString()) : null;
    }

    private static @Nullable Refused day(Accounts accounts, LocalDate day, LocalDate last) {
        Refused outside = range(day, last);
        return outside == null ? open(accounts, day) : outside;
    }

    private static @Nullable Refused range(LocalDate day, LocalDate last) {
        return day.isBefore(FIRST_DAY) || day.isAfter(last) ? Refused.of(Rule.DAY_OUT_OF_RANGE, day.toString()) : null;
    }

    private static @Nullable Refused oneCurrency(Accounts accounts, String currency) {
        String kept = accounts.currency();
        return kept == null || kept.equals(currency)
                ? null
                : Refused.of(Rule.CURRENCY_OTHER, currency + " (" + kept + ")");
    }

    private static @Nullable Refused cost(StatedCost cost, boolean confirmed) {
        if (cost.kind().ofOneSupply() && (cost.serial() == null || cost.serial().isBlank())) {
            return Refused.of(Rule.SERIAL_EMPTY, "");
        }
        StatedMoney amount = cost.amount();
        if (amount.value().signum() == 0) {
            return Refused.of(Rule.AMOUNT_ZERO, "");
        }
        if (amount.value().signum() < 0 && !confirmed) {
            return new Refused(Rule.AMOUNT_BELOW_ZERO, "", amount, null);
        }
        return payable(amount);
    }

    /** In a currency there is, and no finer than it can be paid. */
    static @Nullable Refused payable(StatedMoney amount) {
        if (Currencies.find(amount.currency()).isEmpty()) {
            return Refused.of(Rule.CURRENCY_UNKNOWN, amount.currency());
        }
        return amount.findMoney().isEmpty() ? new Refused(Rule.AMOUNT_TOO_FINE, "", amount, null) : null;
    }

    private static @Nullable Refused close(Accounts accounts, MoneyFact.MonthClosed f, LocalDate today) {
        if (f.by().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "person");
        }
        if (accounts.closed(f.month().atDay(1))) {
            return Refused.of(Rule.MONTH_ALREADY_CLOSED, f.month().toString());
        }
        Refused outside = range(f.month().atDay(1), today);
        if (outside != null) {
            return outside;
        }
        return today.isAfter(f.month().atEndOfMonth())
                ? null
                : Refused.of(Rule.MONTH_NOT_OVER, f.month().toString());
    }
}
