package org.lowfirst.app.honest;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.BenchHistory.RefusedFact;
import org.lowfirst.planning.contents.ContentsEstimate;
import org.lowfirst.planning.contents.GaugeOffset;
import org.lowfirst.planning.contents.GaugeReading;
import org.lowfirst.planning.contents.Verdict;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.SupplyId;

/** Puts what the readings come to into people's names, units and words. */
final class HistoryReport {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC);

    /** An offset is told once its spread is below this share of what the class alone says. */
    private static final double WORTH_A_WORD = 0.9;

    private final BenchSource.Standing standing;
    private final Bench bench;
    private final Reconciled reconciled;
    private final EquationOfState gas;
    private final Wording wording;
    private final ShownUnits units;
    private final ReferenceCondition free;
    private final VerdictSentences sentences;

    HistoryReport(BenchSource.Standing standing, Reconciled reconciled, EquationOfState gas, Wording wording) {
        this.standing = standing;
        this.bench = standing.bench();
        this.reconciled = reconciled;
        this.gas = gas;
        this.wording = wording;
        this.units = BenchUnits.shown(bench.settings());
        this.free = BenchUnits.free(bench.settings());
        this.sentences = new VerdictSentences(wording, units, gas, free, this::nameOf);
    }

    ReadingHistory history() {
        List<CylinderNow> cylinders = new ArrayList<>();
        reconciled.history().contents().forEach((key, estimate) -> cylinders.add(cylinder(key, estimate)));
        cylinders.sort(Comparator.comparing((CylinderNow c) -> c.id() instanceof BottleId)
                .thenComparing(c -> !c.inUse())
                .thenComparing(CylinderNow::name));
        List<GaugeNow> gauges = new ArrayList<>();
        reconciled.gauges().forEach((key, shelved) -> gauges.add(gauge(key, shelved)));
        gauges.sort(Comparator.comparing((GaugeNow g) -> !g.inUse()).thenComparing(g -> !g.assumed()));
        return new ReadingHistory(
                standing.head(),
                cylinders,
                gauges,
                reconciled.history().refused().stream().map(this::refused).toList(),
                Math.max(0, standing.head().seq() - JournalAssumptions.STANDARD.mostEntries()),
                gauges.stream()
                        .filter(GaugeNow::assumed)
                        .map(GaugeNow::sentence)
                        .toList(),
                reconciled.history());
    }

    private CylinderNow cylinder(String key, ContentsEstimate estimate) {
        CylinderId id = id(key);
        Verdict verdict = compared(reconciled.history().standing().get(key));
        GaugePressure shows = shows(key, Math.max(0.0, estimate.mean_mol()));
        GaugePressure more = shows(key, Math.max(0.0, estimate.mean_mol()) + estimate.halfWidth95_mol());
        return new CylinderNow(
                id,
                nameOf(key),
                inUse(id),
                estimate,
                FreeVolumes.of(Math.max(0.0, estimate.mean_mol()), gas, free),
                FreeVolumes.of(estimate.halfWidth95_mol(), gas, free),
                more == null ? null : shows,
                shows == null || more == null ? null : new GaugePressure(more.pascals() - shows.pascals()),
                verdict == null ? null : sentences.of(verdict));
    }

    /** Null when there is one reading only, which nothing can be said against. */
    private static @Nullable Verdict compared(@Nullable Verdict verdict) {
        if (verdict == null || verdict.code() != VerdictCode.INSIDE_GAUGE_UNCERTAINTY) {
            return verdict;
        }
        return verdict.evidence().since().equals(verdict.evidence().at()) ? null : verdict;
    }

    /** Null when so much gas is outside the equation. */
    private @Nullable GaugePressure shows(String key, double amount_mol) {
        Volume water = reconciled.cylinder(key).waterVolume();
        Temperature usual = bench.settings().surroundings().usualTemperature().temperature();
        Evaluated<GaugePressure> shown = gas.pressure(new Density(amount_mol / water.cubicMetres()), usual)
                .map(p -> p.toGauge(bench.settings().surroundings().ambient().absolute()));
        if (!(shown instanceof Evaluated.Value<GaugePressure> found)) {
            return null;
        }
        return found.value().compareTo(GaugePressure.ZERO) < 0 ? GaugePressure.ZERO : found.value();
    }

    private CylinderId id(String key) {
        CylinderId id = reconciled.ids().get(key);
        if (id == null) {
            throw new IllegalStateException("The cylinder " + key + " is not of this bench.");
        }
        return id;
    }

    private boolean inUse(CylinderId id) {
        if (id instanceof SupplyId supply) {
            return bench.getSupply(supply).connected();
        }
        return bench.getBottle((BottleId) id).inUse();
    }

    /** What people call a cylinder or gauge with this key. */
    private String nameOf(String key) {
        CylinderId id = reconciled.ids().get(key);
        if (id instanceof SupplyId supply) {
            return wording.text(
                    "name.supply",
                    Map.of("name", bench.getSupply(supply).details().name()));
        } else if (id instanceof BottleId bottle) {
            return wording.text(
                    "name.bottle",
                    Map.of("name", bench.getBottle(bottle).details().name()));
        }
        GaugeShelf.Shelved shelved = reconciled.gauges().get(key);
        return shelved == null ? key : gaugeName(shelved);
    }

    private String gaugeName(GaugeShelf.Shelved shelved) {
        return shelved.details() == null
                ? wording.text(
                        "gauge.assumed." + VerdictSentences.key(shelved.use().name()), Map.of())
                : shelved.name();
    }

    private GaugeNow gauge(String key, GaugeShelf.Shelved shelved) {
        GaugeOffset learned = learned(key, shelved);
        return new GaugeNow(
                gaugeName(shelved),
                shelved.use(),
                shelved.details(),
                reconciled.current().contains(key),
                shelved.gauge(),
                learned,
                gaugeSentence(shelved, learned));
    }

    /** Null while the journal says hardly more than the class does. */
    private @Nullable GaugeOffset learned(String key, GaugeShelf.Shelved shelved) {
        GaugeOffset offset = reconciled.history().offsets().get(key);
        double untaught_Pa = shelved.gauge().limit().pascals() / Math.sqrt(3.0);
        return offset == null || offset.standardDeviation().pascals() > WORTH_A_WORD * untaught_Pa ? null : offset;
    }

    private String gaugeSentence(GaugeShelf.Shelved shelved, @Nullable GaugeOffset learned) {
        Map<String, String> values = Map.of(
                "gauge", gaugeName(shelved),
                "fullScale", units.show(shelved.gauge().scale().fullScale()),
                "limit", units.show(shelved.gauge().limit()));
        String what =
                wording.text(shelved.details() == null ? "gauge.assumed.sentence" : "gauge.described.sentence", values);
        if (learned == null) {
            return what;
        }
        double high_Pa = learned.tooHigh().pascals();
        return what + " "
                + wording.text(
                        high_Pa >= 0.0 ? "gauge.learned.high" : "gauge.learned.low",
                        Map.of(
                                "by",
                                units.show(new GaugePressure(Math.abs(high_Pa))),
                                "within",
                                units.show(new GaugePressure(
                                        2.0 * learned.standardDeviation().pascals()))));
    }

    private RefusedReading refused(RefusedFact refused) {
        GaugeReading reading = refused.why().reading();
        String what = reading == null ? "" : nameOf(reading.cylinder());
        String day = DAY.format(refused.fact().at());
        return new RefusedReading(
                refused.fact().at(),
                refused.fact(),
                new Problems(wording).of(refused.why(), wording.text("reading.of", Map.of("what", what, "day", day))));
    }
}
