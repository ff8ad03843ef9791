package org.lowfirst.app.money;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.charges.RentCheck;
import org.lowfirst.station.charges.RentFinding;
import org.lowfirst.station.charges.RentLine;
import org.lowfirst.station.charges.RentStay;
import org.lowfirst.station.charges.RentTerms;

/** What was paid to the supplier, what was agreed, and how long supplies were here. Used once. */
final class Outgoings {

    private final ZoneId zone;
    private final Currency currency;
    private final List<Paid> paid = new ArrayList<>();
    private final List<Entry> billed = new ArrayList<>();
    private final NavigableMap<LocalDate, RentTerms> terms = new TreeMap<>();
    private final Map<SupplyId, Stay> stays = new LinkedHashMap<>();

    /** @param rentFrom first day of rent by the supplier's paper; null when that says nothing */
    private record Stay(
            SupplyDetails details,
            LocalDate connected,
            @Nullable LocalDate rentFrom,
            @Nullable LocalDate left) {}

    /** @param entries those that count, in the order they count */
    Outgoings(List<Entry> entries, ZoneId zone, Currency currency) {
        this.zone = zone;
        this.currency = currency;
        entries.forEach(this::take);
        paid.sort(Comparator.comparing((Paid one) -> one.stated().day()).thenComparingLong(Paid::entry));
        billed.sort(Comparator.comparingLong(Entry::seq));
    }

    private void take(Entry entry) {
        Fact fact = entry.fact();
        LocalDate day = LocalDate.ofInstant(entry.origin().effectiveAt(), zone);
        if (fact instanceof MoneyFact.CostEntered f) {
            f.cost()
                    .findCost()
                    .filter(cost -> cost.amount().currency().equals(currency))
                    .ifPresent(cost -> paid.add(new Paid(f.cost(), cost, entry.seq())));
        } else if (fact instanceof MoneyFact.RentBilled) {
            billed.add(entry);
        } else if (fact instanceof MoneyFact.RentAgreed f) {
            f.rent().findTerms().ifPresent(found -> terms.put(f.from(), found));
        } else if (fact instanceof Fact.SupplyConnected f) {
            stays.put(f.supply(), new Stay(f.details(), day, null, null));
        } else if (fact instanceof Fact.SupplyAmended f) {
            stays.computeIfPresent(
                    f.supply(), (id, stay) -> new Stay(f.details(), stay.connected(), stay.rentFrom(), stay.left()));
        } else if (fact instanceof StandFact.SupplyDelivered f) {
            stays.computeIfPresent(
                    f.supply(),
                    (id, stay) -> new Stay(
                            stay.details(), stay.connected(), f.delivery().rentFrom(), stay.left()));
        } else if (fact instanceof Fact.SupplyRemoved f) {
            stays.computeIfPresent(
                    f.supply(), (id, stay) -> new Stay(stay.details(), stay.connected(), stay.rentFrom(), day));
        }
    }

    List<Paid> paid() {
        return paid;
    }

    NavigableMap<LocalDate, RentTerms> terms() {
        return terms;
    }

    Stays stays() {
        List<RentStay> known = new ArrayList<>();
        List<String> unnamed = new ArrayList<>();
        for (Stay stay : stays.values()) {
            String serial = stay.details().serial();
            if (serial == null || serial.isBlank()) {
                unnamed.add(stay.details().name());
            } else {
                known.add(new RentStay(serial.strip(), arrived(stay), stay.left()));
            }
        }
        known.sort(Comparator.comparing(RentStay::arrived).thenComparing(RentStay::serial));
        return new Stays(known, unnamed);
    }

    /** Paper that has the rent begin after the supply left cannot be right. */
    private static LocalDate arrived(Stay stay) {
        LocalDate from = stay.rentFrom();
        boolean believed = from != null && (stay.left() == null || !from.isAfter(stay.left()));
        return from != null && believed ? from : stay.connected();
    }

    /** @param today days after it are not charged yet */
    List<Billed> bills(LocalDate today) {
        Map<Long, RentLine> lines = new LinkedHashMap<>();
        for (Entry entry : billed) {
            MoneyFact.RentBilled fact = (MoneyFact.RentBilled) entry.fact();
            findLine(fact).ifPresent(line -> lines.put(entry.seq(), line));
        }
        List<RentFinding> findings = terms.isEmpty()
                ? List.of()
                : RentCheck.check(stays().known(), terms, List.copyOf(lines.values()), today);
        List<Long> checked = List.copyOf(lines.keySet());
        return billed.stream()
                .map(entry -> {
                    int at = findings.isEmpty() ? -1 : checked.indexOf(entry.seq());
                    return new Billed(
                            (MoneyFact.RentBilled) entry.fact(), at < 0 ? null : findings.get(at), entry.seq());
                })
                .toList();
    }

    private Optional<RentLine> findLine(MoneyFact.RentBilled fact) {
        return fact.line()
                .findLine(fact.bill())
                .filter(line -> line.amount().currency().equals(currency))
                .map(line -> new RentLine(
                        line.reference(),
                        known(line.serial()),
                        line.from(),
                        line.to(),
                        line.days(),
                        line.perDay(),
                        line.amount()));
    }

    /** A serial number as it was read from the supply, should the bill write it with other blanks, dashes or letters. */
    private String known(String billed) {
        return stays.values().stream()
                .map(stay -> stay.details().serial())
                .flatMap(serial -> Optional.ofNullable(serial).stream())
                .map(String::strip)
                .filter(serial -> plain(serial).equals(plain(billed)))
                .findFirst()
                .orElse(billed);
    }

    private static String plain(String serial) {
        return serial.replaceAll("[\\s./-]", "").toUpperCase(Locale.ROOT);
    }
}
