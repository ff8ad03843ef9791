package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WarmStop;

class WordingTest {

    private static final FillId FILL = new FillId("fill-1");

    @TempDir
    private Path directory;

    @Test
    void everyFactIsSaidInASentence() {
        try (Station station = Station.at(directory, "20")) {
            SupplyId a = station.supply("A", "62");
            BottleId m03 = station.bottle("M-03", "5", "40");
            Bench bench =
                    station.benches.openingABench().findBench(Station.BENCH).orElseThrow();
            FactSentences sentences =
                    new FactSentences(Wording.of(GuidingAFill.class, Locale.ENGLISH), bench, Map.of(FILL, m03));
            List<Fact> facts = facts(station, bench, a, m03);
            Map<Fact, String> areas = AreaSaid.all(a, m03);
            Set<String> said = new HashSet<>();
            areas.keySet().forEach(fact -> said.add(fact.getClass().getName()));
            facts.forEach(fact -> said.add(fact.getClass().getName()));
            assertThat(said)
                    .containsExactlyInAnyOrderElementsOf(
                            kinds(Fact.class).map(Class::getName).toList());
            assertThat(facts.stream().map(sentences::of))
                    .containsExactly(
                            "Bench Bench opened.",
                            "Settings changed.",
                            "Supply A connected at 62 bar.",
                            "Details of supply A amended.",
                            "Supply A removed at 44 bar: leaks.",
                            "Supply A removed, gauge not read: leaks.",
                            "Supplies A and A were open together; afterwards 90 bar and not read.",
                            "Bottle M-03 registered, reading 40 bar.",
                            "Bottle M-03 registered.",
                            "Details of bottle M-03 amended.",
                            "Bottle M-03 retired: dented.",
                            "Supply A read 61.50 bar.",
                            "Bottle M-03 read 40 bar.",
                            "Bottle M-03 read 200 bar with its gas at 58 C.",
                            "Fill of M-03 begun at 40 bar, to 150 bar.",
                            "From supply A to 60 bar; the supply then read 59 bar.",
                            "From supply A to 60 bar.",
                            "Fill of M-03 finished at 150 bar.",
                            "Fill of M-03 broken off: called away.",
                            "M-03 filled from 40 bar to 150 bar.",
                            "Gauge left, scale to 250 bar, described.",
                            "Gauge left taken out of use: dropped.",
                            "Ida lets warm fills stop above the marked pressure, following table 4.",
                            "Ida lets no fill stop above its marked pressure.",
                            "Entry 7 corrected, slip. It is now: Supply A read 62 bar.",
                            "Entry 7 taken back: never happened.");
            areas.forEach((fact, sentence) -> assertThat(sentences.of(fact)).isEqualTo(sentence));
        }
    }

    private static Stream<Class<?>> kinds(Class<?> type) {
        return type.isSealed()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(WordingTest::kinds)
                : Stream.of(type);
    }

    private static List<Fact> facts(Station station, Bench bench, SupplyId a, BottleId m03) {
        SupplyDetails supply = bench.getSupply(a).details();
        return List.of(
                new Fact.BenchOpened(station.settings()),
                new Fact.SettingsChanged(station.settings()),
                new Fact.SupplyConnected(a, supply, station.reads("62")),
                new Fact.SupplyAmended(a, supply),
                new Fact.SupplyRemoved(a, station.reads("44"), "leaks"),
                new Fact.SupplyRemoved(a, null, "leaks"),
                new Fact.TwoOpenedTogether(a, a, station.reads("90"), null),
                new Fact.BottleRegistered(m03, bench.getBottle(m03).details(), station.reads("40")),
                new Fact.BottleRegistered(m03, bench.getBottle(m03).details(), null),
                new Fact.BottleAmended(m03, bench.getBottle(m03).details()),
                new Fact.BottleRetired(m03, "dented"),
                new Fact.ReadingTaken(a, station.reads("61.50")),
                new Fact.ReadingTaken(m03, station.reads("40")),
                new Fact.WarmBottleRead(m03, station.reads("200"), StatedTemperature.of("58", TemperatureUnit.CELSIUS)),
                new Fact.FillStarted(FILL, m03, Station.bar("150"), station.reads("40")),
                new Fact.StageRecorded(FILL, new Stage(a, station.reads("60"), null, station.reads("59"))),
                new Fact.StageRecorded(FILL, new Stage(a, station.reads("60"), null, null)),
                new Fact.FillFinished(FILL, station.reads("150")),
                new Fact.FillAbandoned(FILL, "called away"),
                new Fact.FillRecorded(FILL, m03, null, station.reads("40"), station.reads("150"), List.of()),
                new Fact.GaugeDescribed(new GaugeDetails(
                        "left", GaugeUse.SUPPLIES, Station.bar("250"), Station.bar("5"), null, null, null)),
                new Fact.GaugeRetired("left", "dropped"),
                new Fact.WarmStopAllowed(new WarmStop("Ida", "table 4")),
                new Fact.WarmStopForbidden("Ida"),
                new Fact.EntryCorrected(7, "slip", new Fact.ReadingTaken(a, station.reads("62"))),
                new Fact.EntryCorrected(7, "never happened", null));
    }

    @Test
    void apostrophesAndBracesInNamesStayAsTheyAre() {
        Wording wording = Wording.of(GuidingAFill.class, Locale.ENGLISH);
        assertThat(wording.text("bench.opened", Map.of("name", "Ida's {old} bench")))
                .isEqualTo("Bench Ida's {old} bench opened.");
    }

    @Test
    void aMissingValueIsAProgrammersError() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wording.of(GuidingAFill.class, Locale.ENGLISH).text("bench.opened", Map.of()))
                .withMessageContaining("needs a value for name");
    }
}
