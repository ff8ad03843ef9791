package org.lowfirst.app.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Head;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Accounts;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Origin;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedPrices;
import org.lowfirst.station.StatedRounding;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.charges.GasUnit;

/** A bench with seeded random tariffs, fills, slips, payers and closes, and a gas that is ideal so that it counts fast. */
final class RandomBench {

    static final YearMonth MONTH = YearMonth.of(2026, 6);
    private static final BenchId BENCH = new BenchId("random");
    private static final StatedTemperature AT = StatedTemperature.of("15", TemperatureUnit.CELSIUS);

    private final Random random;
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Long, Fact> fills = new HashMap<>();
    private final List<Long> standing = new ArrayList<>();
    private Instant now = Instant.parse("2026-05-28T08:00:00Z");
    private @Nullable YearMonth closed;
    private GasUnit unit = GasUnit.STANDARD_LITRE;

    RandomBench(long seed, String owner) {
        this(seed, owner, GasUnit.STANDARD_LITRE);
    }

    /** @param later unit of gas in every tariff but the first */
    RandomBench(long seed, String owner, GasUnit later) {
        this.random = new Random(seed);
        enter(new Fact.BenchOpened(settings()));
        enter(tariff(LocalDate.of(2026, 5, 1)));
        for (String bottle : List.of("b-0", "b-1", "b-2")) {
            enter(new Fact.BottleRegistered(
                    new BottleId(bottle),
                    new BottleDetails(
                            bottle,
                            bottle.equals("b-0") ? owner : "Owner of " + bottle,
                            WaterVolume.stamped(StatedVolume.of("5", VolumeUnit.LITRE)),
                            bar("200"),
                            null,
                            null),
                    null));
        }
        int steps = 15 + random.nextInt(15);
        unit = later;
        for (int i = 0; i < steps; i++) {
            now = now.plus(Duration.ofHours(12 + random.nextInt(48)));
            step(i);
        }
    }

    private void step(int i) {
        int chance = random.nextInt(10);
        if (chance < 6 || standing.isEmpty()) {
            Fact fill = fill("f-" + i);
            fills.put(enter(fill), fill);
            standing.add((long) entries.size());
        } else if (chance < 8) {
            int which = random.nextInt(standing.size());
            long seq = standing.get(which);
            Fact.FillRecorded old = recorded(seq);
            Fact replacement = random.nextInt(4) == 0 ? null : fill(old.fill().value());
            Instant at = entries.get((int) seq - 1).origin().effectiveAt();
            long correction = enter(new Fact.EntryCorrected(seq, "slip " + i, replacement), at);
            standing.remove(which);
            if (replacement != null) {
                fills.put(correction, replacement);
                standing.add(correction);
            }
        } else if (chance < 9) {
            Fact.FillRecorded fill = recorded(standing.get(random.nextInt(standing.size())));
            enter(new MoneyFact.FillBilled(fill.fill(), "Payer " + random.nextInt(3), random.nextBoolean()));
        } else if (random.nextBoolean()) {
            YearMonth before =
                    YearMonth.from(LocalDate.ofInstant(now, ZoneOffset.UTC)).minusMonths(1);
            if (closed == null || before.isAfter(closed)) {
                closed = before;
                enter(new MoneyFact.MonthClosed(before, "Ida"));
            }
        } else {
            LocalDate from = LocalDate.ofInstant(now, ZoneOffset.UTC).minusDays(random.nextInt(3));
            if (closed == null || YearMonth.from(from).isAfter(closed)) {
                enter(tariff(from));
            }
        }
    }

    private Fact.FillRecorded recorded(long seq) {
        return (Fact.FillRecorded) Objects.requireNonNull(fills.get(seq));
    }

    List<Entry> entries() {
        return entries;
    }

    Books books() {
        return books(entries.size());
    }

    /** The accounts after so many entries. */
    Books books(int count) {
        return new Bookkeeping(new IdealGas(), ZoneOffset.UTC, Locale.ENGLISH)
                .books(
                        new Head(count, "hash"),
                        entries.subList(0, count),
                        new Accounts(List.of(), List.of(), null, "EUR"),
                        now);
    }

    private MoneyFact.TariffSet tariff(LocalDate from) {
        StatedPrices prices = new StatedPrices(decimal(50, 4), decimal(300, 2), decimal(400, 2), decimal(500, 1));
        BigDecimal step = new BigDecimal(List.of("0.01", "0.05", "0.10").get(random.nextInt(3)));
        StatedRounding.Way way =
                List.of(StatedRounding.Way.values()).get(random.nextInt(StatedRounding.Way.values().length));
        return new MoneyFact.TariffSet(
                from,
                new StatedTariff(
                        "EUR",
                        unit,
                        ReferenceCondition.ISO_15C_1ATM,
                        random.nextInt(4),
                        prices,
                        new StatedRounding(way, step)));
    }

    private BigDecimal decimal(int most, int digits) {
        return BigDecimal.valueOf(random.nextInt(most), digits);
    }

    private Fact.FillRecorded fill(String id) {
        int before = 10 + random.nextInt(100);
        int after = before + random.nextInt(90);
        return new Fact.FillRecorded(
                new FillId(id), new BottleId("b-" + random.nextInt(3)), null, reads(before), reads(after), List.of());
    }

    private Reading reads(int bar) {
        return new Reading(bar(Integer.toString(bar)), now, AT, false, null);
    }

    private static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    private long enter(Fact fact) {
        return enter(fact, now);
    }

    private long enter(Fact fact, Instant at) {
        long seq = entries.size() + 1L;
        entries.add(new Entry(BENCH, seq, new Origin(new EntryKey("k-" + seq), now, at, "Ida"), fact));
        return seq;
    }

    private static Settings settings() {
        Surroundings surroundings =
                new Surroundings(AT, StatedAbsolutePressure.STANDARD, StatedVolume.of("0", VolumeUnit.LITRE));
        return new Settings("Random", Units.METRIC, RuleSet.EU, surroundings, bar("200"), List.of("Ida"));
    }

    private static final class IdealGas implements GasMeter {

        private static final double RT = 8.314462618 * 288.15;

        @Override
        public Optional<Amount> findContents(Volume water, Reading reading, AbsolutePressure ambient) {
            double p_Pa = reading.pressure().gauge().pascals() + ambient.pascals();
            return Optional.of(new Amount(p_Pa * water.cubicMetres() / RT));
        }

        @Override
        public Volume free(Amount amount, ReferenceCondition condition) {
            return Volume.ofLitres(BigDecimal.valueOf(
                            amount.moles() * RT / condition.pressure().pascals() * 1000.0)
                    .setScale(9, RoundingMode.HALF_EVEN)
                    .doubleValue());
        }
    }
}
