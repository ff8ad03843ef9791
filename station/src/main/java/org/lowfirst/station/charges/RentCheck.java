package org.lowfirst.station.charges;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/** Checks a supplier's rent by serial number and day. */
public final class RentCheck {

    private final NavigableMap<LocalDate, RentTerms> agreed;
    private final Map<String, Set<LocalDate>> chargeable = new HashMap<>();
    private final Map<String, Set<LocalDate>> charged = new HashMap<>();

    private RentCheck(List<RentStay> stays, NavigableMap<LocalDate, RentTerms> agreed, LocalDate today) {
        this.agreed = agreed;
        for (RentStay stay : stays) {
            chargeable
                    .computeIfAbsent(stay.serial(), serial -> new HashSet<>())
                    .addAll(stay.chargeableDays(at(agreed, stay.arrived()), today));
        }
    }

    /**
     * Holds each line against the stays, in order.
     *
     * @param today days after it are not charged yet
     */
    public static List<RentFinding> check(
            List<RentStay> stays, RentTerms terms, List<RentLine> lines, LocalDate today) {
        return check(stays, always(terms), lines, today);
    }

    /**
     * Holds each line against the stays, in order. A stay is counted by what was agreed when it began, a line priced by what was
     * agreed on its first day.
     *
     * @param agreed terms by their first day, at least one; the first ones hold before it too
     * @param today days after it are not charged yet
     */
    public static List<RentFinding> check(
            List<RentStay> stays, NavigableMap<LocalDate, RentTerms> agreed, List<RentLine> lines, LocalDate today) {
        RentCheck check = new RentCheck(stays, agreed, today);
        return lines.stream().map(check::finding).toList();
    }

    private static NavigableMap<LocalDate, RentTerms> always(RentTerms terms) {
        return new TreeMap<>(Map.of(LocalDate.MIN, terms));
    }

    private static RentTerms at(NavigableMap<LocalDate, RentTerms> agreed, LocalDate day) {
        Map.Entry<LocalDate, RentTerms> found = agreed.floorEntry(day);
        return found == null ? agreed.firstEntry().getValue() : found.getValue();
    }

    /** What a supplier may charge for one serial number between two days, both included. */
    public static Money expected(
            List<RentStay> stays,
            NavigableMap<LocalDate, RentTerms> agreed,
            String serial,
            LocalDate from,
            LocalDate to) {
        return at(agreed, from).rent(countDays(stays, agreed, serial, from, to));
    }

    /** As above, with the same terms throughout. */
    public static Money expected(List<RentStay> stays, RentTerms terms, String serial, LocalDate from, LocalDate to) {
        return expected(stays, always(terms), serial, from, to);
    }

    /** Days of rent of one serial number between two days, both included. */
    public static long countDays(
            List<RentStay> stays,
            NavigableMap<LocalDate, RentTerms> agreed,
            String serial,
            LocalDate from,
            LocalDate to) {
        Set<LocalDate> days = new HashSet<>();
        stays.stream()
                .filter(stay -> stay.serial().equals(serial))
                .forEach(stay -> days.addAll(stay.chargeableDays(at(agreed, stay.arrived()), to)));
        return days.stream().filter(day -> !day.isBefore(from)).count();
    }

    private RentFinding finding(RentLine line) {
        RentTerms terms = at(agreed, line.from());
        Set<LocalDate> here = chargeable.getOrDefault(line.serial(), Set.of());
        Set<LocalDate> before = charged.computeIfAbsent(line.serial(), serial -> new HashSet<>());
        List<LocalDate> notHere = new ArrayList<>();
        List<LocalDate> again = new ArrayList<>();
        int payable = 0;
        for (LocalDate day = line.from(); !day.isAfter(line.to()); day = day.plusDays(1)) {
            if (!here.contains(day)) {
                notHere.add(day);
            } else if (before.add(day)) {
                payable++;
            } else {
                again.add(day);
            }
        }
        Set<RentFinding.Problem> problems = EnumSet.noneOf(RentFinding.Problem.class);
        if (!chargeable.containsKey(line.serial())) {
            problems.add(RentFinding.Problem.SERIAL_NEVER_HERE);
        } else if (!notHere.isEmpty()) {
            problems.add(RentFinding.Problem.DAYS_NOT_HERE);
        }
        if (!again.isEmpty()) {
            problems.add(RentFinding.Problem.CHARGED_TWICE);
        }
        if (line.days() != ChronoUnit.DAYS.between(line.from(), line.to()) + 1) {
            problems.add(RentFinding.Problem.DAYS_MISCOUNTED);
        }
        if (line.perDay().compareTo(terms.perDay()) != 0) {
            problems.add(RentFinding.Problem.OTHER_RATE);
        }
        if (!terms.rent(line.days(), line.perDay()).equals(line.amount())) {
            problems.add(RentFinding.Problem.WRONG_SUM);
        }
        return new RentFinding(line, problems, payable, terms.rent(payable), notHere, again);
    }
}
