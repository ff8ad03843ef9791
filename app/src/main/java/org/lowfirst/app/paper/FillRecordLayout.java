package org.lowfirst.app.paper;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.paper.FillRecord.EntryRow;
import org.lowfirst.app.paper.FillRecord.StageRow;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;

/** What was filled, how, by whom, and the entries that say so. */
final class FillRecordLayout {

    private final Lettering lettering;

    FillRecordLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(FillRecord paper) {
        BottleDetails bottle = paper.bottle();
        Reading before = paper.before();
        StatedPressure target = paper.target();
        String ending = paper.ending().name().toLowerCase(Locale.ROOT);
        Node facts = Node.of("table", "facts")
                .add(
                        fact("bottle", bottle.name()),
                        fact("owner", bottle.owner().isEmpty() ? lettering.of("nobody-said") : bottle.owner()),
                        fact("volume", lettering.asTyped(bottle.waterVolume().stated())),
                        fact("marked", lettering.asTyped(bottle.servicePressure())),
                        fact("target", target == null ? lettering.of("nobody-said") : lettering.asTyped(target)),
                        fact("record.before", said(before)),
                        fact("record.after", said(paper.after())),
                        fact("record.ending", lettering.of("record.ending." + ending)));
        return Sheet.upright(
                "fill-record",
                Parts.title(
                        lettering.of("title.fill-record"),
                        bottle.name() + ", " + lettering.day(before.at()) + ", "
                                + paper.heading().bench()),
                facts,
                Node.saying("h2", lettering.of("record.stages")),
                stages(paper.stages()),
                Node.saying("h2", lettering.of("record.entries")),
                entries(paper.entries()),
                Node.saying("p", "small", lettering.of("record.only")),
                Node.of("div", "signing")
                        .add(
                                Parts.lineFor(lettering.of("record.sign.filler")),
                                Parts.lineFor(lettering.of("record.sign.second"))));
    }

    private Node fact(String key, String value) {
        return Node.of("tr").add(Node.saying("th", lettering.of(key)), Node.saying("td", value));
    }

    private String said(@Nullable Reading reading) {
        return reading == null
                ? lettering.of("unread")
                : lettering.asRead(reading) + ", " + lettering.temperature(reading) + ", "
                        + lettering.full(reading.at());
    }

    private Node stages(List<StageRow> stages) {
        if (stages.isEmpty()) {
            return Node.saying("p", lettering.of("record.stages.none"));
        }
        Node body = Node.of("tbody");
        int number = 1;
        for (StageRow stage : stages) {
            body.add(Parts.row(
                    Parts.figure(Integer.toString(number++)),
                    Parts.strong(stage.supply()),
                    Parts.figure(lettering.asRead(stage.supplyBefore())),
                    Parts.figure(lettering.asRead(stage.supplyAfter())),
                    Parts.figure(lettering.asRead(stage.bottleAfter())),
                    Parts.cell(lettering.clock(stage.bottleAfter().at()))));
        }
        return Node.of("table", "lines")
                .add(
                        Parts.head(
                                lettering.of("record.stage"),
                                lettering.of("supply"),
                                lettering.of("record.supply-before"),
                                lettering.of("record.supply-after"),
                                lettering.of("record.bottle-after"),
                                lettering.of("log.clock")),
                        body);
    }

    private Node entries(List<EntryRow> entries) {
        Node body = Node.of("tbody");
        entries.forEach(entry -> body.add(Parts.row(
                Parts.figure(Long.toString(entry.seq())),
                Node.of("td")
                        .say(entry.said())
                        .add(Node.of("br"), Node.saying("span", "hash", Lettering.grouped(entry.hash()))),
                Parts.cell(entry.author()))));
        return Node.of("table", "lines")
                .add(Parts.head(lettering.of("entry"), lettering.of("record.said"), lettering.of("author")), body);
    }
}
