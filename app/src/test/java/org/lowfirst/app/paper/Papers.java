package org.lowfirst.app.paper;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.lowfirst.app.journal.Head;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Standing;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Turn;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.due.DueItem;
import org.lowfirst.station.due.DueKind;

/** One paper of every kind, of an invented bench. */
final class Papers {

    static final Instant MORNING = Instant.parse("2026-11-25T09:30:00Z");
    static final String HASH = "0123456789abcdef".repeat(4);
    static final Heading HEADING = new Heading("Larkmoor Gliders", MORNING, new Head(412, HASH));
    static final String ADDRESS = "http://bench.example:8080/at/larkmoor/bottles/m-03";

    private Papers() {}

    static List<Paper> all() {
        return List.of(labels(3), tags(2), sheet(4), log(), fill(), statement(), card());
    }

    static SupplyLabels labels(int count) {
        return new SupplyLabels(
                HEADING,
                IntStream.rangeClosed(1, count)
                        .mapToObj(rank -> new SupplyLabels.Label(
                                rank,
                                count,
                                "",
                                rank == 3 ? new Standing(Turn.TAGGED_OUT, "valve leaks") : Standing.BY_RANK,
                                String.valueOf((char) ('A' + rank - 1)),
                                rank == 2 ? null : "LM " + 4710 * rank,
                                litres("50"),
                                bar("200")))
                        .toList());
    }

    static BottleTags tags(int count) {
        return new BottleTags(
                HEADING,
                IntStream.rangeClosed(1, count)
                        .mapToObj(i -> new BottleTags.Tag(
                                "M-0" + (i + 2),
                                i == 1 ? "Nora Vale" : "",
                                litres("5"),
                                bar("200"),
                                i == 1 ? bar("150") : null,
                                i == 1
                                        ? new DueItem(DueKind.CYLINDER_TEST, "M-03", LocalDate.of(2028, 6, 30), "stamp")
                                        : null,
                                i == 1 ? ADDRESS : ADDRESS + i))
                        .toList());
    }

    static BenchSheet sheet(int bottles) {
        List<BenchSheet.SupplyRow> supplies =
                List.of(supply(1, "A", "62", "61"), supply(2, "B", "118", "118"), supply(3, "C", "190", "186"));
        return new BenchSheet(
                HEADING,
                Units.METRIC,
                supplies,
                "",
                IntStream.range(0, bottles).mapToObj(Papers::bottle).toList());
    }

    private static BenchSheet.SupplyRow supply(int rank, String name, String read, String expected) {
        Standing standing = rank == 3 ? new Standing(Turn.HELD_BACK, "for the squad") : Standing.BY_RANK;
        return new BenchSheet.SupplyRow("", rank, standing, name, litres("50"), gauge(expected), read(read, rank == 2));
    }

    private static BenchSheet.BottleRow bottle(int number) {
        BenchSheet.NextFill next = new BenchSheet.NextFill(
                bar("150"),
                gauge(number == 1 ? "131" : "150"),
                number != 1,
                List.of(
                        new BenchSheet.PlannedStep("A", gauge("58")),
                        new BenchSheet.PlannedStep("B", gauge("111")),
                        new BenchSheet.PlannedStep("C", gauge(number == 1 ? "131" : "150"))),
                "");
        boolean read = number % 4 != 2;
        return new BenchSheet.BottleRow(
                "M-" + (number + 3),
                number % 2 == 0 ? "Nora Vale" : "",
                litres("5"),
                bar("200"),
                read ? read("40", false) : null,
                read ? next : null);
    }

    static BlankLog log() {
        return new BlankLog(HEADING, Units.METRIC, List.of("A", "B", "C"));
    }

    static FillRecord fill() {
        BottleDetails bottle =
                new BottleDetails("M-03", "Nora Vale", WaterVolume.stamped(litres("5")), bar("200"), null, bar("150"));
        return new FillRecord(
                HEADING,
                bottle,
                bar("150"),
                read("40", false),
                read("151", false),
                FillRecord.Ending.FINISHED,
                List.of(
                        new FillRecord.StageRow("A", read("58", false), read("62", false), read("59", false)),
                        new FillRecord.StageRow("C", read("151", false), null, null)),
                List.of(
                        new FillRecord.EntryRow(409, "Iris Holm", "The fill of M-03 began at 40 bar.", HASH),
                        new FillRecord.EntryRow(412, "Iris Holm", "The bottle ended at 151 bar.", HASH)));
    }

    static MonthStatement statement() {
        Currency euro = Currency.getInstance("EUR");
        return new MonthStatement(
                HEADING,
                "Nora Vale",
                YearMonth.of(2026, 11),
                euro,
                "L",
                List.of(
                        new MonthStatement.Line(
                                LocalDate.of(2026, 11, 3), "M-03", new BigDecimal("560"), Money.of("8.40", "EUR")),
                        new MonthStatement.Line(
                                LocalDate.of(2026, 11, 3),
                                "M-03, taken back: wrong gauge read",
                                new BigDecimal("-560"),
                                Money.of("-8.40", "EUR")),
                        new MonthStatement.Line(
                                LocalDate.of(2026, 11, 3), "M-03", new BigDecimal("515"), Money.of("7.73", "EUR"))));
    }

    static EmergencyCard card() {
        return new EmergencyCard(
                HEADING,
                "Larkmoor airfield, hangar 2, gate on Mill Lane",
                "Wind sock by the gate",
                List.of(
                        new EmergencyCard.LocalNumber("Fire, ambulance", "00 00"),
                        new EmergencyCard.LocalNumber("Gas supplier", "000 555 0100"),
                        new EmergencyCard.LocalNumber("Iris Holm, responsible", "000 555 0101")));
    }

    static Press press(Locale locale) {
        return new Press(locale, java.time.ZoneOffset.UTC);
    }

    static Reading read(String bar, boolean assumed) {
        return new Reading(
                bar(bar),
                MORNING.minusSeconds(5400),
                StatedTemperature.of("18", TemperatureUnit.CELSIUS),
                assumed,
                null);
    }

    private static GaugePressure gauge(String bar) {
        return bar(bar).gauge();
    }

    private static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    private static StatedVolume litres(String value) {
        return StatedVolume.of(value, VolumeUnit.LITRE);
    }
}
