package org.lowfirst.app.money;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.Timeline;

/**
 * Tells one fill from the entries that have to do with it. What went in is what the bottle held at the end less what it held at
 * the start, by its own gauge and the temperatures noted.
 */
final class FillTeller {

    private final GasMeter meter;
    private final ZoneId zone;

    FillTeller(GasMeter meter, ZoneId zone) {
        this.meter = meter;
        this.zone = zone;
    }

    /** @param entries whatever has to do with it: its own, its bottles', settings, tariffs; corrections among them */
    FillTold tell(FillId fill, List<Entry> entries) {
        Course course = new Course(fill);
        Timeline.of(entries).forEach(course::take);
        return course.told();
    }

    private final class Course {

        private final FillId fill;
        private final Map<BottleId, BottleDetails> bottles = new HashMap<>();
        private final TreeMap<LocalDate, StatedTariff> tariffs = new TreeMap<>();
        private AbsolutePressure ambient = StandardAtmosphere.PRESSURE;
        private @Nullable BottleDetails bottle;
        private @Nullable BottleId id;
        private @Nullable Reading before;
        private @Nullable Reading after;
        private @Nullable Instant endedAt;
        private @Nullable Double entered;
        private MoneyFact.@Nullable FillBilled billed;

        Course(FillId fill) {
            this.fill = fill;
        }

        void take(Entry entry) {
            Fact fact = entry.fact();
            if (fact instanceof Fact.BenchOpened f) {
                settings(f.settings());
            } else if (fact instanceof Fact.SettingsChanged f) {
                settings(f.settings());
            } else if (fact instanceof Fact.BottleRegistered f) {
                bottles.put(f.bottle(), f.details());
            } else if (fact instanceof Fact.BottleAmended f) {
                bottles.put(f.bottle(), f.details());
            } else if (fact instanceof MoneyFact.TariffSet f) {
                tariffs.put(f.from(), f.tariff());
            } else if (fact instanceof MoneyFact.FillBilled f) {
                billed = f;
            } else {
                takeFill(fact, entry.origin().effectiveAt());
            }
        }

        private void takeFill(Fact fact, Instant at) {
            if (fact instanceof Fact.FillStarted f) {
                begin(f.bottle(), f.before());
            } else if (fact instanceof Fact.StageRecorded f) {
                after = f.stage().bottleAfter();
            } else if (fact instanceof Fact.FillFinished f) {
                after = f.after();
                end(at);
            } else if (fact instanceof Fact.FillAbandoned) {
                end(at);
            } else if (fact instanceof Fact.FillRecorded f) {
                begin(f.bottle(), f.before());
                after = f.after();
                end(at);
            }
        }

        private void settings(Settings settings) {
            ambient = settings.surroundings().ambient().absolute();
        }

        private void begin(BottleId of, Reading reading) {
            id = of;
            before = reading;
            after = reading;
        }

        /** With the bottle as it was known then; what becomes of it later changes nothing. */
        private void end(Instant at) {
            bottle = id == null ? null : bottles.get(id);
            if (bottle == null || before == null || after == null) {
                return;
            }
            endedAt = at;
            Volume water = bottle.waterVolume().stated().volume();
            Double first = moles(water, before);
            Double last = moles(water, after);
            entered = first == null || last == null ? null : last - first;
        }

        private @Nullable Double moles(Volume water, Reading reading) {
            return meter.findContents(water, reading, ambient)
                    .map(Amount::moles)
                    .orElse(null);
        }

        FillTold told() {
            LocalDate day = endedAt == null ? null : LocalDate.ofInstant(endedAt, zone);
            Map.Entry<LocalDate, StatedTariff> force = day == null ? null : tariffs.floorEntry(day);
            BottleDetails named = bottle == null && id != null ? bottles.get(id) : bottle;
            return new FillTold(
                    fill,
                    id != null,
                    named == null ? "" : named.name(),
                    endedAt,
                    day,
                    entered,
                    payer(),
                    force == null ? null : force.getValue().findTariff().orElse(null));
        }

        private FillTold.Payer payer() {
            if (billed != null) {
                return new FillTold.Payer(billed.payer().strip(), billed.guest());
            }
            return new FillTold.Payer(bottle == null ? "" : bottle.owner().strip(), false);
        }
    }
}
