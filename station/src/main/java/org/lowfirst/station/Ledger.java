package org.lowfirst.station;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** A bench being folded. Mutable, so that a long journal folds without copying at every entry; never leaves the package. */
final class Ledger {

    private @Nullable BenchId id;
    private @Nullable Settings settings;
    private final Map<SupplyId, Supply> supplies = new LinkedHashMap<>();
    private final Map<BottleId, Bottle> bottles = new LinkedHashMap<>();
    private final Map<FillId, OpenFill> openFills = new LinkedHashMap<>();
    private final Map<String, GaugeDetails> gauges = new LinkedHashMap<>();
    private @Nullable WarmStop warmStop;
    private Areas areas = Areas.NEW;

    Ledger(@Nullable Bench bench) {
        if (bench != null) {
            id = bench.id();
            settings = bench.settings();
            supplies.putAll(bench.supplies());
            bottles.putAll(bench.bottles());
            openFills.putAll(bench.openFills());
            gauges.putAll(bench.gauges());
            warmStop = bench.warmStop();
            areas = bench.areas();
        }
    }

    boolean opened() {
        return settings != null;
    }

    Bench toBench() {
        if (id == null || settings == null) {
            throw new IllegalStateException("The bench was never opened.");
        }
        return new Bench(id, settings, supplies, bottles, openFills, gauges, warmStop, areas);
    }

    /** @return null when the entry was entered, or what about it does not fit; then nothing was changed */
    @Nullable
    Refused enter(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.BenchOpened opened) {
            return open(entry.bench(), opened);
        }
        if (!opened()) {
            return Refused.of(Rule.BENCH_NOT_OPEN, entry.bench().value());
        }
        Refused missing = missing(fact);
        if (missing != null) {
            return missing;
        }
        take(fact, entry);
        return null;
    }

    private @Nullable Refused open(BenchId bench, Fact.BenchOpened opened) {
        if (opened()) {
            return Refused.of(Rule.BENCH_ALREADY_OPEN, opened.settings().name());
        }
        id = bench;
        settings = opened.settings();
        return null;
    }

    private @Nullable Refused missing(Fact fact) {
        for (Need need : Need.of(fact)) {
            Refused refused = need.missingIn(supplies, bottles, openFills);
            if (refused != null) {
                return refused;
            }
        }
        return null;
    }

    private void take(Fact fact, Entry entry) {
        if (fact instanceof Fact.SettingsChanged f) {
            settings = f.settings();
        } else if (fact instanceof Fact.SupplyConnected f) {
            supplies.put(f.supply(), new Supply(f.supply(), f.details(), SupplyStatus.CONNECTED, f.reading()));
            areas = areas.delivered();
        } else if (fact instanceof Fact.SupplyAmended f) {
            supplies.computeIfPresent(f.supply(), (key, supply) -> supply.with(f.details()));
        } else if (fact instanceof Fact.SupplyRemoved f) {
            supplies.computeIfPresent(f.supply(), (key, supply) -> supply.removed());
            read(f.supply(), f.residual());
        } else if (fact instanceof Fact.BottleRegistered f) {
            bottles.put(f.bottle(), new Bottle(f.bottle(), f.details(), BottleStatus.IN_USE, f.reading()));
        } else if (fact instanceof Fact.BottleAmended f) {
            bottles.computeIfPresent(f.bottle(), (key, bottle) -> bottle.with(f.details()));
        } else if (fact instanceof Fact.BottleRetired f) {
            bottles.computeIfPresent(f.bottle(), (key, bottle) -> bottle.retired());
        } else if (fact instanceof Fact.ReadingTaken f) {
            read(f.cylinder(), f.reading());
        } else if (fact instanceof Fact.WarmBottleRead f) {
            read(f.bottle(), f.reading());
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            read(f.first(), f.firstAfter());
            read(f.second(), f.secondAfter());
        } else if (!takeOther(fact)) {
            takeFill(fact, entry);
        }
    }

    private boolean takeOther(Fact fact) {
        if (fact instanceof Fact.GaugeDescribed f) {
            gauges.put(f.gauge().name(), f.gauge());
        } else if (fact instanceof Fact.GaugeRetired f) {
            gauges.remove(f.gauge());
        } else if (fact instanceof Fact.WarmStopAllowed f) {
            warmStop = f.permission();
        } else if (fact instanceof Fact.WarmStopForbidden) {
            warmStop = null;
        } else if (fact instanceof AreaFact f) {
            areas = areas.after(f);
            list(f);
        } else {
            return false;
        }
        return true;
    }

    /** Who is described joins the list of names, who left is gone from it. */
    private void list(AreaFact fact) {
        Settings now = settings;
        if (now == null || !(fact instanceof CrewFact)) {
            return;
        }
        List<String> names = new ArrayList<>(now.people());
        if (fact instanceof CrewFact.PersonDescribed f
                && !names.contains(f.person().name())) {
            names.add(f.person().name());
        } else if (fact instanceof CrewFact.PersonLeft f) {
            names.remove(f.person());
        }
        settings = now.with(names);
    }

    private void takeFill(Fact fact, Entry entry) {
        if (fact instanceof Fact.FillStarted f) {
            openFills.put(
                    f.fill(),
                    new OpenFill(
                            f.fill(), f.bottle(), f.target(), entry.origin().effectiveAt(), f.before(), List.of()));
            read(f.bottle(), f.before());
            areas = areas.with(areas.gate().afterStart(f.bottle()));
            inSession(session -> session.started(f.fill(), f.before()));
        } else if (fact instanceof Fact.StageRecorded f) {
            openFills.computeIfPresent(f.fill(), (key, fill) -> {
                List<Stage> stages = new ArrayList<>(fill.stages());
                stages.add(f.stage());
                return new OpenFill(fill.id(), fill.bottle(), fill.target(), fill.startedAt(), fill.before(), stages);
            });
            takeStage(f.stage());
            inSession(session -> session.staged(f.fill(), f.stage()));
            OpenFill fill = openFills.get(f.fill());
            if (fill != null) {
                read(fill.bottle(), f.stage().bottleAfter());
                countFirstStage(fill);
            }
        } else if (fact instanceof Fact.FillFinished f) {
            OpenFill fill = openFills.remove(f.fill());
            if (fill != null) {
                read(fill.bottle(), f.after());
            }
            inSession(session -> session.finished(f.fill()));
        } else if (fact instanceof Fact.FillAbandoned f) {
            openFills.remove(f.fill());
            inSession(session -> session.leftOut(f.fill(), f.reason()));
        } else if (fact instanceof Fact.FillRecorded f) {
            f.stages().forEach(this::takeStage);
            read(f.bottle(), f.after());
            areas = areas.with(areas.gate().afterFill(f.bottle()));
        } else {
            throw new AssertionError("unhandled " + fact);
        }
    }

    private void inSession(UnaryOperator<OpenSession> step) {
        areas = areas.with(areas.sessions().with(step));
    }

    /** However many stages a fill has, and however it ends, it is one. */
    private void countFirstStage(OpenFill fill) {
        if (fill.stages().size() == 1) {
            areas = areas.with(areas.gate().afterFill(fill.bottle()));
        }
    }

    private void takeStage(Stage stage) {
        read(stage.supply(), stage.supplyBefore());
        read(stage.supply(), stage.supplyAfter());
    }

    private void read(CylinderId cylinder, @Nullable Reading reading) {
        if (reading == null) {
            return;
        }
        if (cylinder instanceof SupplyId supply) {
            supplies.computeIfPresent(supply, (key, known) -> known.with(reading));
        } else if (cylinder instanceof BottleId bottle) {
            bottles.computeIfPresent(bottle, (key, known) -> known.with(reading));
        }
    }
}
