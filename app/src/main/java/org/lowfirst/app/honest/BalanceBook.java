package org.lowfirst.app.honest;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.FactWriter.Noted;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.BankBalance;
import org.lowfirst.planning.contents.BankBalance.Balance;
import org.lowfirst.planning.contents.BankBalance.SupplyAllowance;
import org.lowfirst.planning.contents.BankBalance.SupplyDrop;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.ContentsEstimate;
import org.lowfirst.planning.contents.ContentsMeasurement;
import org.lowfirst.planning.contents.GaugeReading;
import org.lowfirst.planning.contents.MeteredCylinder;
import org.lowfirst.planning.contents.ReadingCheck;
import org.lowfirst.planning.contents.ReadingOutcome;
import org.lowfirst.station.Bench;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.SupplyId;

/** Compares what left supplies with what entered bottles, by the readings of a journal. */
final class BalanceBook {

    private final Reconciled reconciled;
    private final Bench bench;
    private final EquationOfState gas;
    private final Wording wording;
    private final ContentsAssumptions assumptions = ContentsAssumptions.standard();
    private final ReadingCheck check;
    private final List<String> leftOut = new ArrayList<>();

    BalanceBook(Reconciled reconciled, Bench bench, BenchSource source, Wording wording) {
        this.reconciled = reconciled;
        this.bench = bench;
        this.gas = source.gas();
        this.wording = wording;
        this.check = new ReadingCheck(Reconciled.surroundings(bench, source), assumptions);
    }

    Outcome<BalanceReport> ofFill(FillId fill) {
        List<Noted> noted = reconciled.noted();
        Set<SupplyId> used = new LinkedHashSet<>();
        for (Noted line : noted) {
            if (fill.equals(line.fill()) && line.cylinder() instanceof SupplyId supply && line.reading() == null) {
                used.add(supply);
            }
        }
        List<SupplyDrop> drops = new ArrayList<>();
        for (SupplyId supply : used) {
            SupplyDrop drop = drop(supply, fill);
            if (drop == null) {
                return Outcome.declined(
                        new Problems(wording).stated("supply-not-read", Map.of("supply", name(supply))));
            }
            drops.add(drop);
        }
        return report(drops, entered(FillParts.of(noted, (id, line) -> fill.equals(line.fill()))));
    }

    /** From the reading a supply's loss is counted from to the one it is counted to: what it gave then counts, and nothing else. */
    private record Span(Instant from, Instant to) {

        boolean holds(Instant at) {
            return at.isAfter(from) && !at.isAfter(to);
        }
    }

    Outcome<BalanceReport> between(Instant from, Instant to) {
        List<SupplyDrop> drops = new ArrayList<>();
        Map<CylinderId, Span> spans = new HashMap<>();
        for (SupplyId supply : bench.supplies().keySet()) {
            GaugeReading before = null;
            GaugeReading after = null;
            for (Noted line : reconciled.noted()) {
                if (line.cylinder().equals(supply)
                        && line.reading() != null
                        && !line.at().isAfter(to)) {
                    before = before == null || !line.at().isAfter(from) ? line.reading() : before;
                    after = line.reading();
                }
            }
            SupplyDrop drop = before == null || after == null || before.at().equals(after.at())
                    ? null
                    : drop(supply, before, after);
            if (drop == null) {
                leftOut.add(name(supply));
            } else {
                drops.add(drop);
                spans.put(
                        supply,
                        new Span(
                                drop.before().reading().at(),
                                drop.after().reading().at()));
            }
        }
        return report(drops, entered(FillParts.of(reconciled.noted(), (supply, line) -> {
            Span span = spans.get(supply);
            return span != null && span.holds(line.at());
        })));
    }

    /** The readings next to a fill's draws from one supply; null when another fill drew in between. */
    private @Nullable SupplyDrop drop(SupplyId supply, FillId fill) {
        GaugeReading before = null;
        GaugeReading after = null;
        boolean drawn = false;
        for (Noted line : reconciled.noted()) {
            if (!line.cylinder().equals(supply)) {
                continue;
            }
            boolean own = fill.equals(line.fill());
            if (line.reading() == null) {
                if (!own && drawn && after == null) {
                    return null;
                }
                before = own || drawn ? before : null;
                drawn = drawn || own;
                after = own ? null : after;
            } else if (!drawn) {
                before = line.reading();
            } else if (after == null) {
                after = line.reading();
            }
        }
        return before == null || after == null ? null : drop(supply, before, after);
    }

    private @Nullable SupplyDrop drop(SupplyId supply, GaugeReading before, GaugeReading after) {
        ContentsMeasurement first = measure(before);
        ContentsMeasurement last = measure(after);
        return first == null || last == null
                ? null
                : new SupplyDrop(reconciled.cylinder(FactWriter.name(supply)), first, last);
    }

    private @Nullable ContentsMeasurement measure(GaugeReading reading) {
        GaugeShelf.Shelved gauge = reconciled.gauges().get(reading.gauge());
        MeteredCylinder cylinder = reconciled.cylinders().get(reading.cylinder());
        if (gauge == null || cylinder == null) {
            return null;
        }
        return check.check(reading, cylinder, gauge.gauge()) instanceof ReadingOutcome.Accepted accepted
                ? accepted.measurement()
                : null;
    }

    /**
     * What entered bottles. How warm the gas was at the end of a fill is a habit of the bench, so over several fills it does not
     * average out: those parts are added as they are, the others in quadrature.
     */
    private ContentsEstimate entered(List<FillParts.Part> parts) {
        double amount_mol = 0.0;
        double variance_mol2 = 0.0;
        double warmth_mol = 0.0;
        for (FillParts.Part part : parts) {
            ContentsMeasurement before = measure(part.before());
            ContentsMeasurement after = measure(part.after());
            if (before != null && after != null) {
                double entered_mol = after.amount_mol() - before.amount_mol();
                amount_mol += entered_mol;
                variance_mol2 += variance(before, after, entered_mol);
                warmth_mol += Math.abs(temperature(after));
            }
        }
        return new ContentsEstimate(amount_mol, Math.hypot(Math.sqrt(variance_mol2), warmth_mol));
    }

    private double variance(ContentsMeasurement before, ContentsMeasurement after, double entered_mol) {
        MeteredCylinder bottle = reconciled.cylinder(after.reading().cylinder());
        double volume_mol = entered_mol * assumptions.volumes().share(bottle.volume());
        double along_mol = after.molesPerPascal()
                * after.gauge().slope()
                * (after.shown().pascals() - before.shown().pascals());
        double before_mol = temperature(before);
        return repeat(before)
                + repeat(after)
                + before_mol * before_mol
                + volume_mol * volume_mol
                + along_mol * along_mol;
    }

    private static double repeat(ContentsMeasurement m) {
        double repeat_mol = m.molesPerPascal() * m.gauge().repeat_Pa();
        return repeat_mol * repeat_mol;
    }

    private static double temperature(ContentsMeasurement m) {
        return m.molesPerKelvin() * m.reading().temperature().standardDeviation_K();
    }

    private Outcome<BalanceReport> report(List<SupplyDrop> drops, ContentsEstimate entered) {
        if (drops.isEmpty()) {
            return Outcome.declined(new Problems(wording).stated("nothing-to-compare", Map.of()));
        }
        Balance balance = new BankBalance(assumptions).compare(drops, entered);
        ShownUnits units = BenchUnits.shown(bench.settings());
        ReferenceCondition free = BenchUnits.free(bench.settings());
        double largest_mol = balance.supplies().stream()
                .mapToDouble(SupplyAllowance::limit_mol)
                .max()
                .orElse(0.0);
        Map<String, String> values = new TreeMap<>();
        values.put("left", FreeVolumes.words(balance.left_mol(), gas, free, units));
        values.put("entered", FreeVolumes.words(balance.entered_mol(), gas, free, units));
        values.put("difference", FreeVolumes.words(Math.abs(balance.difference_mol()), gas, free, units));
        values.put("within", FreeVolumes.words(2.0 * balance.standardDeviation_mol(), gas, free, units));
        values.put("limit", FreeVolumes.words(largest_mol, gas, free, units));
        values.put("chance", VerdictSentences.chance(balance.chanceOfNoise(), wording));
        String code = VerdictSentences.key(balance.code().name());
        return Outcome.of(new BalanceReport(
                balance,
                wording.text("verdict." + code, Map.of()),
                wording.text("balance." + code, values),
                balance.possible().stream()
                        .map(cause -> wording.text("name." + VerdictSentences.key(cause.name()), Map.of()))
                        .toList(),
                leftOut));
    }

    private String name(CylinderId id) {
        SupplyId supply = (SupplyId) Objects.requireNonNull(id);
        return wording.text(
                "name.supply", Map.of("name", bench.getSupply(supply).details().name()));
    }
}
