package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.app.bench.Station.BENCH;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Stage;
import org.lowfirst.station.SupplyId;

/**
 * The guide goes on from what gauges show, and gauges are read to a bar.
 *
 * <p>Bank 62, 118, 190 bar of 50 L, bottle 5 L from 40 to 150 bar at 20 C: the stages end at 60.0, 112.8 and 150 (real oxygen,
 * CoolProp 8.0.0).
 */
final class RestOfAFillTest {

    private static final FillId FILL = new FillId("fill");

    @ParameterizedTest(name = "read {0}: open {1}")
    @CsvSource({
        "60 113 150, A B C end",
        "60 112 150, A B C end",
        "60 112 149.5, A B C end",
        "59.5 113 151, A B C end",
        "52 60 113 150, A A B C end",
        "60 113 140 150, A B C C end"
    })
    void eachSupplyComesOnceUnlessItCanStillGive(String readings, String opened, @TempDir Path directory) {
        try (Station station = Station.at(directory, "20")) {
            station.supply("A", "62");
            station.supply("B", "118");
            station.supply("C", "190");
            BottleId bottle = station.bottle("M-03", "5", "40");
            GuidingAFill guiding = station.benches.guidingAFill();
            station.recorded(guiding.start(
                    BENCH, new StartFill(FILL, bottle, Station.bar("150"), station.reads("40")), station.submission()));
            List<String> order = new ArrayList<>();
            for (String reading : readings.split(" ")) {
                SupplyId supply = Objects.requireNonNull(next(guiding, order.size() + 1));
                order.add(name(supply));
                station.recorded(guiding.recordStage(
                        BENCH,
                        new RecordStage(FILL, new Stage(supply, station.reads(reading), null, null)),
                        station.submission()));
            }
            order.add(next(guiding, order.size() + 1) == null ? "end" : "more");
            assertThat(String.join(" ", order)).isEqualTo(opened);
        }
    }

    /** The supplies' gauge shows 4 bar more than the bottle's, so A seems to have gas to give when it has none. */
    @Test
    void aSupplyThatGaveNothingIsNotOpenedAgain(@TempDir Path directory) {
        try (Station station = Station.at(directory, "20")) {
            SupplyId a = station.supply("A", "66");
            station.supply("B", "118");
            BottleId bottle = station.bottle("M-03", "5", "40");
            GuidingAFill guiding = station.benches.guidingAFill();
            station.recorded(guiding.start(
                    BENCH, new StartFill(FILL, bottle, Station.bar("110"), station.reads("40")), station.submission()));
            List<String> order = new ArrayList<>();
            for (int stage = 1; stage <= 2; stage++) {
                order.add(name(Objects.requireNonNull(next(guiding, stage))));
                station.recorded(guiding.recordStage(
                        BENCH,
                        new RecordStage(FILL, new Stage(a, station.reads("60"), null, station.reads("64"))),
                        station.submission()));
            }
            order.add(name(Objects.requireNonNull(next(guiding, 3))));
            assertThat(order).containsExactly("A", "A", "B");
        }
    }

    private static @Nullable SupplyId next(GuidingAFill guiding, int stage) {
        Guide.Step step = (Guide.Step) guiding.guide(BENCH, new Position(stage, Phase.OPEN_SUPPLY, null));
        return step.position().supply();
    }

    private static String name(SupplyId supply) {
        return supply.value().replace("supply-", "");
    }
}
