package org.lowfirst.app.honest;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.Happening.Loosened;
import org.lowfirst.app.honest.Happening.Moved;
import org.lowfirst.app.honest.Happening.Read;
import org.lowfirst.app.honest.Happening.Shown;
import org.lowfirst.app.honest.Happening.Since;
import org.lowfirst.app.honest.Happening.Unsaid;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.Stand;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;

/** Goes through the entries of a bench and lists what they say of contents, in order of time. Used once. */
final class Happenings {

    private final GaugeShelf gauges;
    private final List<Happening> list = new ArrayList<>();
    private final Set<SupplyId> bank = new LinkedHashSet<>();
    private final Map<FillId, Course> open = new HashMap<>();
    /** The latest reading of each cylinder, so that a residual entered twice counts once. */
    private final Map<CylinderId, Reading> latest = new HashMap<>();

    private Stand stand = Stand.NEW;

    /** A fill as it goes: time never runs back in it. */
    private static final class Course {
        final FillId fill;
        final BottleId bottle;
        final @Nullable GaugePressure target;
        Instant latest;

        Course(FillId fill, BottleId bottle, @Nullable StatedPressure target, Instant begun) {
            this.fill = fill;
            this.bottle = bottle;
            this.target = target == null ? null : target.gauge();
            this.latest = begun;
        }

        Instant notBefore(Instant at) {
            latest = at.isBefore(latest) ? latest : at;
            return latest;
        }
    }

    private Happenings(GaugeShelf gauges) {
        this.gauges = gauges;
    }

    /**
     * @param bench the bench after the last of them
     * @param entries entries that count, in the order they count; the oldest may be missing
     * @param gauges knows every gauge described in them; follows them
     */
    static List<Happening> of(Bench bench, List<Entry> entries, GaugeShelf gauges) {
        Happenings happenings = new Happenings(gauges);
        happenings.bank.addAll(connectedBefore(bench, entries));
        entries.forEach(happenings::take);
        happenings.list.sort(Comparator.comparing(Happening::at));
        return happenings.list;
    }

    /** Supplies whose connecting is older than the entries gone through, and that were still there when these begin. */
    private static Set<SupplyId> connectedBefore(Bench bench, List<Entry> entries) {
        Set<SupplyId> before = new LinkedHashSet<>();
        bench.bank().forEach(supply -> before.add(supply.id()));
        Set<SupplyId> came = new HashSet<>();
        for (Entry entry : entries) {
            if (entry.fact() instanceof Fact.SupplyConnected f) {
                came.add(f.supply());
            } else if (entry.fact() instanceof Fact.SupplyRemoved f) {
                before.add(f.supply());
            }
        }
        before.removeAll(came);
        return before;
    }

    private void take(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.GaugeDescribed f) {
            gauges.describe(f.gauge());
        } else if (fact instanceof Fact.GaugeRetired f) {
            gauges.retire(f.gauge());
        } else if (fact instanceof Fact.SupplyConnected f) {
            bank.add(f.supply());
            read(f.supply(), f.reading(), Since.ANEW);
        } else if (fact instanceof Fact.SupplyRemoved f) {
            bank.remove(f.supply());
            if (!Objects.equals(f.residual(), latest.get(f.supply()))) {
                read(f.supply(), f.residual(), Since.AT_BENCH);
            }
        } else if (fact instanceof Fact.BottleRegistered f) {
            read(f.bottle(), f.reading(), Since.ANEW);
        } else if (fact instanceof Fact.ReadingTaken f) {
            read(f.cylinder(), f.reading(), f.cylinder() instanceof SupplyId ? Since.AT_BENCH : Since.LOOKED_AT);
        } else if (fact instanceof Fact.WarmBottleRead f) {
            Reading reading = f.reading();
            list.add(new Read(
                    reading.at(),
                    f.bottle(),
                    shown(f.bottle(), reading),
                    Since.AT_BENCH,
                    null,
                    f.gas().temperature()));
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            Instant at = entry.origin().effectiveAt();
            together(f.first(), f.firstAfter(), at);
            together(f.second(), f.secondAfter(), at);
        } else if (fact instanceof StandFact f) {
            stand = stand.after(f);
        } else {
            takeFill(fact);
        }
    }

    private void takeFill(Fact fact) {
        if (fact instanceof Fact.FillStarted f) {
            begin(f.fill(), f.bottle(), f.target(), f.before());
        } else if (fact instanceof Fact.StageRecorded f) {
            Course course = open.get(f.fill());
            if (course != null) {
                stage(course, f.stage());
            }
        } else if (fact instanceof Fact.FillFinished f) {
            Course course = open.remove(f.fill());
            if (course != null) {
                end(course, f.after());
            }
        } else if (fact instanceof Fact.FillAbandoned f) {
            open.remove(f.fill());
        } else if (fact instanceof Fact.FillRecorded f) {
            Course course = begin(f.fill(), f.bottle(), f.target(), f.before());
            open.remove(f.fill());
            f.stages().forEach(stage -> stage(course, stage));
            if (f.stages().isEmpty()) {
                list.add(new Unsaid(
                        course.notBefore(f.after().at()),
                        f.fill(),
                        f.bottle(),
                        shown(f.bottle(), f.before()),
                        shown(f.bottle(), f.after()),
                        stand.givers(f.fill(), bank)));
            }
            end(course, f.after());
        }
    }

    private Course begin(FillId fill, BottleId bottle, @Nullable StatedPressure target, Reading before) {
        Course course = new Course(fill, bottle, target, before.at());
        open.put(fill, course);
        list.add(new Read(before.at(), bottle, shown(bottle, before), Since.ANEW, fill));
        return course;
    }

    private void stage(Course course, Stage stage) {
        Reading before = stage.supplyBefore();
        Reading after = stage.supplyAfter();
        if (before != null) {
            Instant at = course.notBefore(before.at());
            list.add(new Read(at, stage.supply(), shown(stage.supply(), before), Since.AT_BENCH, course.fill));
        }
        Instant ended = course.notBefore(stage.bottleAfter().at());
        list.add(new Moved(
                ended,
                course.fill,
                stage.supply(),
                course.bottle,
                shown(course.bottle, stage.bottleAfter()),
                after == null ? null : shown(stage.supply(), after),
                course.target));
    }

    private void end(Course course, Reading after) {
        Instant at = course.notBefore(after.at());
        list.add(new Read(at, course.bottle, shown(course.bottle, after), Since.AT_BENCH, course.fill));
    }

    private void together(SupplyId supply, @Nullable Reading after, Instant at) {
        if (after == null) {
            list.add(new Loosened(at, supply));
        } else {
            read(supply, after, Since.ANEW);
        }
    }

    private void read(CylinderId cylinder, @Nullable Reading reading, Since since) {
        if (reading != null) {
            latest.put(cylinder, reading);
            list.add(new Read(reading.at(), cylinder, shown(cylinder, reading), since, null));
        }
    }

    private Shown shown(CylinderId cylinder, Reading reading) {
        return new Shown(reading, gauges.key(cylinder, reading));
    }
}
