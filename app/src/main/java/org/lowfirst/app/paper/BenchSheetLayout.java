package org.lowfirst.app.paper;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.paper.BenchSheet.BottleRow;
import org.lowfirst.app.paper.BenchSheet.NextFill;
import org.lowfirst.app.paper.BenchSheet.SupplyRow;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Turn;

/** The bank above, the bottles with their next steps below. */
final class BenchSheetLayout {

    private final Lettering lettering;

    BenchSheetLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(BenchSheet paper) {
        Instant printedAt = paper.heading().printedAt();
        return Sheet.upright(
                "bench-sheet",
                Parts.title(
                        lettering.of("title.bench-sheet"), paper.heading().bench() + ", " + lettering.full(printedAt)),
                Node.of("div", "void")
                        .add(
                                Node.saying("b", lettering.of("sheet.void")),
                                Node.saying("span", " " + lettering.of("sheet.void.why"))),
                Node.saying("h2", lettering.of("sheet.bank")),
                bank(paper),
                Node.saying("h2", lettering.of("sheet.bottles")),
                bottles(paper),
                Node.saying("p", "small", lettering.of("sheet.steps.how") + from(paper)),
                Parts.cautions(lettering));
    }

    private String from(BenchSheet paper) {
        String bank = paper.from().isEmpty() ? lettering.of("bank.unnamed") : paper.from();
        return paper.severalBanks() ? " " + lettering.of("sheet.from", "bank", bank) : "";
    }

    private Node bank(BenchSheet paper) {
        Instant oldest = paper.oldestReading();
        if (oldest == null) {
            return Node.saying("p", lettering.of("sheet.bank.none"));
        }
        PressureUnit unit = paper.units().pressure();
        boolean several = paper.severalBanks();
        List<Node> rows =
                paper.supplies().stream().map(row -> supply(row, unit, several)).toList();
        Node table = Node.of("table", "lines")
                .add(
                        Parts.head(
                                lettering.of("rank"),
                                lettering.of("supply"),
                                lettering.of("expected"),
                                lettering.of("read"),
                                lettering.of("read-at"),
                                lettering.of("temperature"),
                                lettering.of("volume"),
                                lettering.of("now-reads")),
                        Node.of("tbody").addAll(rows));
        return Node.of("div")
                .add(table, Node.saying("p", "small", lettering.of("sheet.oldest", "time", lettering.full(oldest))));
    }

    private Node supply(SupplyRow row, PressureUnit unit, boolean several) {
        Reading reading = row.reading();
        String bank = row.bank().isEmpty() ? lettering.of("bank.unnamed") : row.bank();
        String standing = row.standing().turn() == Turn.BY_RANK ? "" : lettering.standing(row.standing());
        String below = String.join(" ", several ? bank + "." : "", standing).strip();
        return Parts.row(
                Node.of("td", "rank-cell").add(Node.saying("b", Integer.toString(row.rank()))),
                Parts.cell(row.name(), below),
                Node.of("td", "figure").add(Node.saying("b", lettering.pressure(row.expected(), unit))),
                Parts.figure(lettering.asRead(reading)),
                Parts.figure(lettering.full(reading.at())),
                Parts.figure(lettering.temperature(reading)),
                Parts.figure(lettering.asTyped(row.waterVolume())),
                Node.of("td", "write"));
    }

    private Node bottles(BenchSheet paper) {
        if (paper.bottles().isEmpty()) {
            return Node.saying("p", lettering.of("sheet.bottles.none"));
        }
        PressureUnit unit = paper.units().pressure();
        return Node.of("table", "lines")
                .add(
                        Parts.head(
                                lettering.of("bottle"),
                                lettering.of("volume"),
                                lettering.of("marked"),
                                lettering.of("read"),
                                lettering.of("next")),
                        Node.of("tbody")
                                .addAll(paper.bottles().stream()
                                        .map(row -> bottle(row, unit))
                                        .toList()));
    }

    private Node bottle(BottleRow row, PressureUnit unit) {
        Reading reading = row.reading();
        return Parts.row(
                Parts.cell(row.name(), row.owner()),
                Parts.figure(lettering.asTyped(row.waterVolume())),
                Parts.figure(lettering.asTyped(row.servicePressure())),
                reading == null
                        ? Parts.cell(lettering.of("unread"))
                        : Node.of("td")
                                .say(lettering.asRead(reading))
                                .add(Node.of("br"), Node.saying("span", "small", lettering.full(reading.at()))),
                Node.of("td", "steps").addAll(next(row.next(), unit)));
    }

    private List<Node> next(@Nullable NextFill next, PressureUnit unit) {
        if (next == null) {
            return List.of(Node.saying("span", lettering.of("sheet.next.unread")));
        }
        if (!next.refused().isEmpty()) {
            return List.of(Node.saying("span", next.refused()));
        }
        String steps = next.steps().stream()
                .map(step -> lettering.of(
                        "sheet.step",
                        Map.of("supply", step.supply(), "after", lettering.pressureBare(step.bottleAfter(), unit))))
                .collect(Collectors.joining(", "));
        String reached = lettering.pressure(next.reached(), unit);
        String end = next.reaches()
                ? lettering.of("sheet.reaches", "target", lettering.asTyped(next.target()))
                : lettering.of(
                        steps.isEmpty() ? "sheet.stays" : "sheet.short",
                        Map.of("reached", reached, "target", lettering.asTyped(next.target())));
        if (steps.isEmpty() && next.reaches()) {
            return List.of(Node.saying("span", lettering.of("sheet.full", "target", lettering.asTyped(next.target()))));
        }
        return List.of(
                Node.saying("b", steps.isEmpty() ? lettering.of("sheet.nothing") : steps),
                Node.of("br"),
                Node.saying("span", "small", end));
    }
}
