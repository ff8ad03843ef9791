package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
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
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Refusal;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WarmStop;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PlusEntry;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

class WordingTest {

    private static final FillId FILL = new FillId("fill-1");

    private static final List<String> SENTENCES = List.of(
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
            "Rule book changed.",
            "Marking of M-03 entered, stamped PH 300.",
            "Marking of M-03 entered by hand.",
            "Ida entered a plus-rating for M-03 by report 7.",
            "Plus-rating of M-03 withdrawn: not its report.",
            "Ida looked at M-03: none of 1 questions answered yes.",
            "Ida looked at M-03: 1 of 2 questions answered yes or not sure.",
            "Bottle M-03 came with its valve open.",
            "Bottle M-03 inspected and cleaned by test shop.",
            "Bottle M-03 hammer-tested by Ida.",
            "Tom set what the rules refuse of M-03 (1) aside for one fill by Ida: looked again.",
            "Ben described, with roles, training and check-out.",
            "Ida left the bench: moved away.",
            "Fill billed to M. Ash.",
            "Fill billed to M. Ash, as a guest.",
            "Prices from 2026-06-14: 0.011 EUR a standard litre, 0 a fill, at least 1.50, guests 20 % more.",
            "Gas of 2026-06-14 for supply K 4711: 48.50 EUR.",
            "Delivery of 2026-06-14: 48.50 EUR.",
            "Rent from 2026-06-14: 48.50 EUR a cylinder and day.",
            "Rent on bill 17 for supply K 4711, 2026-06-14 to 2026-06-14: 48.50 EUR.",
            "2026-05 closed by Ida.",
            "Upkeep of hose 2 ended: cut up.",
            "Supply A is used by its rank again.",
            "Supply A is held back: for the squad.",
            "Supply A is tagged out, not to be opened: valve leaks.",
            "Supply A is used first.",
            "Supply A came from Holm Gases, lot LOT 7, rented from 2026-06-01.",
            "Supply A came from not said, lot not said, rented from not said.",
            "Supply A stands in bank trailer.",
            "Supply A stands in the bank without a name.",
            "The next fill is made from bank trailer.",
            "The next fill is made from the bank without a name.",
            "Exchange of supply A begun.",
            "Supply A took the place of A.",
            "Exchange of supply A broken off: not delivered.",
            "Entry 7 corrected, slip. It is now: Supply A read 62 bar.",
            "Entry 7 taken back: never happened.");

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
            Set<String> said = new HashSet<>();
            facts.forEach(fact -> said.add(fact.getClass().getName()));
            assertThat(said)
                    .containsExactlyInAnyOrderElementsOf(
                            kinds(Fact.class).map(Class::getName).toList());
            assertThat(facts.stream().map(sentences::of)).containsExactlyElementsOf(SENTENCES);
        }
    }

    private static Stream<Class<?>> kinds(Class<?> type) {
        return type.isSealed()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(WordingTest::kinds)
                : Stream.of(type);
    }

    private static List<Fact> facts(Station station, Bench bench, SupplyId a, BottleId m03) {
        SupplyDetails supply = bench.getSupply(a).details();
        List<Fact> facts = new ArrayList<>(List.of(
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
                new GateFact.RuleBookAdopted("book")));
        facts.addAll(gateFacts(m03));
        facts.addAll(List.of(
                new CrewFact.PersonDescribed(new PersonDetails("Ben", Set.of(), null, null)),
                new CrewFact.PersonLeft("Ida", "moved away"),
                new MoneyFact.FillBilled(FILL, "M. Ash", false),
                new MoneyFact.FillBilled(FILL, "M. Ash", true),
                MoneyExamples.tariff("0.011", "1.50", "20"),
                MoneyExamples.cost(CostKind.CONTENT, "K 4711", "48.50"),
                MoneyExamples.cost(CostKind.DELIVERY, null, "48.50"),
                MoneyExamples.rent("48.50"),
                MoneyExamples.billed("17", "K 4711", MoneyExamples.DAY, MoneyExamples.DAY, 1, "48.50", "48.50"),
                new MoneyFact.MonthClosed(YearMonth.of(2026, 5), "Ida"),
                new CareFact.UpkeepEnded("hose 2", "cut up"),
                new StandFact.SupplyReleased(a),
                new StandFact.SupplyHeldBack(a, "for the squad"),
                new StandFact.SupplyTaggedOut(a, "valve leaks"),
                new StandFact.SupplyPutFirst(a),
                new StandFact.SupplyDelivered(a, new Delivery("LOT 7", LocalDate.of(2026, 6, 1), "Holm Gases")),
                new StandFact.SupplyDelivered(a, Delivery.UNSAID),
                new StandFact.SupplyPlaced(a, "trailer"),
                new StandFact.SupplyPlaced(a, null),
                new StandFact.BankChosen(FILL, "trailer"),
                new StandFact.BankChosen(FILL, null),
                new StandFact.ExchangeBegun(a),
                new StandFact.ExchangeMade(a, a),
                new StandFact.ExchangeBrokenOff(a, "not delivered"),
                new Fact.EntryCorrected(7, "slip", new Fact.ReadingTaken(a, station.reads("62"))),
                new Fact.EntryCorrected(7, "never happened", null)));
        return facts;
    }

    private static List<Fact> gateFacts(BottleId m03) {
        LocalDate day = LocalDate.of(2026, 6, 14);
        MarkedPlate plate = new MarkedPlate(null, WallMaterial.STEEL, Station.bar("300"), null);
        Service service = Service.oxygen("G 3/4");
        StampLine stamp = new StampLine("PH 300", Convention.EUROPEAN);
        return List.of(
                new GateFact.BottleMarked(m03, new Marking(stamp, plate, null, service, null, null)),
                new GateFact.BottleMarked(m03, new Marking(null, plate, null, service, null, null)),
                new GateFact.PlusRatingEntered(m03, new PlusEntry("report 7", "Ida")),
                new GateFact.PlusRatingWithdrawn(m03, "not its report"),
                new GateFact.ConditionAnswered(m03, day, Map.of("cracked", Answer.NO), "Ida"),
                new GateFact.ConditionAnswered(
                        m03, day, Map.of("cracked", Answer.NO, "corroded", Answer.NOT_SURE), "Ida"),
                new GateFact.BottleFoundOpen(m03, day),
                new GateFact.EmptyBottleInspected(m03, day, "test shop"),
                new GateFact.HammerTested(m03, day, "Ida"),
                new GateFact.RefusalsSetAside(
                        m03,
                        day,
                        List.of(new Refusal("eu.consent", Advice.ASK_OWNER, "not-sure")),
                        "Ida",
                        "Tom",
                        "looked again"));
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
