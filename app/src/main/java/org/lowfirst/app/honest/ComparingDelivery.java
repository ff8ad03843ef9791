package org.lowfirst.app.honest;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.ContentsMeasurement;
import org.lowfirst.planning.contents.Delivery;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;

/** Compares a supply as it was delivered with a full one, and words a note for the supplier. Records nothing. */
public final class ComparingDelivery {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC);
    private static final double PER_CENT = 100.0;

    private final BenchSource source;
    private final JudgingReadings judging;
    private final Wording wording;

    public ComparingDelivery(BenchSource source, JudgingReadings judging, Locale locale) {
        this.source = source;
        this.judging = judging;
        this.wording = Wording.of(ComparingDelivery.class, locale);
    }

    /**
     * A supply as it came.
     *
     * @param delivery the numbers
     * @param missing free gas missing at the reference condition; zero when nothing is missing
     * @param percent of a full one that is missing; negative when there is too much [%]
     * @param condition reference condition of the free gas
     * @param note the comparison in a text that can be sent to the supplier
     */
    public record DeliveryNote(
            Delivery delivery, Volume missing, double percent, ReferenceCondition condition, String note) {}

    /**
     * By the reading the supply was connected with.
     *
     * @throws java.util.NoSuchElementException when there is no such bench or supply
     */
    public Outcome<DeliveryNote> compare(BenchId id, SupplyId supply) {
        BenchSource.Standing standing = source.getStanding(id);
        Bench bench = standing.bench();
        Supply known = bench.getSupply(supply);
        Reading reading = source.listEntries(id, standing.head()).stream()
                .map(Entry::fact)
                .filter(Fact.SupplyConnected.class::isInstance)
                .map(Fact.SupplyConnected.class::cast)
                .filter(connected -> connected.supply().equals(supply))
                .map(Fact.SupplyConnected::reading)
                .findFirst()
                .orElse(known.latest());
        ReadingDesk desk = new ReadingDesk(bench, source, judging.history(id), wording);
        return desk.measure(supply, reading).then(measured -> compare(bench, known, reading, measured, desk));
    }

    private Outcome<DeliveryNote> compare(
            Bench bench, Supply supply, Reading reading, ContentsMeasurement measured, ReadingDesk desk) {
        Temperature reference = BenchUnits.rule(bench.settings()).temperature();
        Evaluated<Delivery> delivery = Delivery.assess(
                desk.cylinder(supply.id()),
                measured,
                bench.settings().fullSupply().gauge(),
                reference,
                desk.surroundings(),
                ContentsAssumptions.standard().verdicts());
        if (!(delivery instanceof Evaluated.Value<Delivery> found)) {
            return Outcome.declined(new Problems(wording)
                    .stated(
                            "full-supply-outside",
                            Map.of(
                                    "measured",
                                    desk.units()
                                            .show(bench.settings().fullSupply().gauge()))));
        }
        return Outcome.of(note(bench, supply, reading, found.value(), desk));
    }

    private DeliveryNote note(Bench bench, Supply supply, Reading reading, Delivery delivery, ReadingDesk desk) {
        ShownUnits units = desk.units();
        ReferenceCondition free = BenchUnits.free(bench.settings());
        double percent = PER_CENT * delivery.missingShare();
        Volume missing = FreeVolumes.of(Math.max(0.0, delivery.missing_mol()), source.gas(), free);
        String serial = supply.details().serial();
        Map<String, String> values = new TreeMap<>();
        values.put("bench", bench.settings().name());
        values.put("supply", supply.details().name());
        values.put("serial", serial == null ? wording.text("delivery.no-serial", Map.of()) : serial);
        values.put("day", DAY.format(reading.at()));
        values.put("reading", units.show(delivery.reading().shown()));
        values.put("temperature", units.show(reading.temperature().temperature()));
        values.put("full", units.show(delivery.fullWouldRead()));
        values.put("missing", FreeVolumes.words(Math.abs(delivery.missing_mol()), source.gas(), free, units));
        values.put("within", FreeVolumes.words(2.0 * delivery.standardDeviation_mol(), source.gas(), free, units));
        values.put("percent", String.format(Locale.ROOT, "%.0f", Math.abs(percent)));
        values.put("reference", units.show(free.temperature()));
        values.put("gauge", desk.gauge(supply.id(), reading).sentence());
        String note =
                wording.text("delivery." + VerdictSentences.key(delivery.code().name()), values);
        return new DeliveryNote(delivery, missing, percent, free, note);
    }
}
