package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.readiness.Place;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.PlusEntry;
import org.lowfirst.station.rules.RuleBookText;

/** Every fact and command of the closed sets is handled everywhere; there is one example of each. */
class ClosedSetTest {

    private static final GaugeDetails GAUGE = new GaugeDetails(
            "G1",
            GaugeUse.SUPPLIES,
            Larkmoor.bar("315"),
            Larkmoor.bar("5"),
            new BigDecimal("1.6"),
            null,
            LocalDate.of(2026, 3, 1));

    private static final List<Command> COMMANDS = List.of(
            new Command.OpenBench(Larkmoor.settings()),
            new Command.ChangeSettings(Larkmoor.settings()),
            new Command.ConnectSupply(new SupplyId("d"), Larkmoor.supply("D"), Larkmoor.reads("148", 9)),
            new Command.AmendSupply(Larkmoor.A, Larkmoor.supply("A")),
            new Command.RemoveSupply(Larkmoor.A, Larkmoor.reads("44", 9), "to the supplier"),
            new Command.RegisterBottle(new BottleId("m-04"), Larkmoor.bottle("M-04"), null),
            new Command.AmendBottle(Larkmoor.M_03, Larkmoor.bottle("M-03")),
            new Command.RetireBottle(Larkmoor.M_03, "dented"),
            new Command.TakeReading(Larkmoor.M_03, Larkmoor.reads("40", 9)),
            new Command.ReadWarmBottle(
                    Larkmoor.M_03, Larkmoor.reads("150", 9), StatedTemperature.of("48", TemperatureUnit.CELSIUS)),
            new Command.StartFill(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 9)),
            new Command.StartFillBeside(
                    new Command.StartFill(
                            new FillId("fill-2"), Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 9)),
                    "Ida",
                    "Tom"),
            new Command.RecordStage(Larkmoor.FILL, Larkmoor.stage(Larkmoor.A, "60", 11)),
            new Command.FinishFill(Larkmoor.FILL, Larkmoor.reads("150", 20)),
            new Command.AbandonFill(Larkmoor.FILL, "called away"),
            new Command.RecordFill(
                    Larkmoor.FILL, Larkmoor.M_03, null, Larkmoor.reads("40", 9), Larkmoor.reads("150", 20), List.of()),
            new Command.RecordTwoOpenTogether(Larkmoor.A, Larkmoor.B, null, null),
            new Command.DescribeGauge(GAUGE),
            new Command.RetireGauge(GAUGE.name(), "dropped"),
            new Command.AllowWarmStop(new WarmStop("Ida", "bench table")),
            new Command.ForbidWarmStop("Ida"),
            new Command.Enter(new GateFact.RuleBookAdopted(RuleBookText.write(BuiltInBooks.us()))),
            new Command.Enter(new GateFact.BottleMarked(Larkmoor.M_03, Markings.steel())),
            new Command.Enter(new GateFact.PlusRatingEntered(Larkmoor.M_03, new PlusEntry("report 7", "Ida"))),
            new Command.Enter(new GateFact.PlusRatingWithdrawn(Larkmoor.M_03, "report was for another")),
            new Command.Enter(
                    new GateFact.ConditionAnswered(Larkmoor.M_03, Markings.DAY, Map.of("cracked", Answer.NO), "Ida")),
            new Command.Enter(new GateFact.BottleFoundOpen(Larkmoor.M_03, Markings.DAY)),
            new Command.Enter(new GateFact.EmptyBottleInspected(Larkmoor.M_03, Markings.DAY, "test shop")),
            new Command.Enter(new GateFact.HammerTested(Larkmoor.M_03, Markings.DAY, "Ida")),
            new Command.Enter(Markings.setAside("Ida", "Tom")),
            new Command.Enter(new CrewFact.PersonDescribed(new PersonDetails(
                    "Ben", Set.of(Role.SUPERVISED), null, new Attest(LocalDate.of(2027, 5, 31), "Ida")))),
            new Command.Enter(new CrewFact.PersonLeft("Ida", "moved away")),
            new Command.SignEntry(Journal.given().entry(5), "Tom"),
            new Command.Enter(new CrewFact.SecondPersonNamed(Larkmoor.FILL, "Ida", "Tom")),
            new Command.Enter(new MoneyFact.FillBilled(Larkmoor.FILL, "M. Ash", false)),
            new Command.Enter(new MoneyFact.TariffSet(MoneyRulesTest.DAY, MoneyRulesTest.tariff("0.011"))),
            new Command.Enter(MoneyRulesTest.cost(CostKind.DELIVERY, "48.50")),
            new Command.Enter(new MoneyFact.RentAgreed(MoneyRulesTest.DAY, MoneyRulesTest.rent("0.245"))),
            new Command.Enter(new MoneyFact.RentBilled("17", MoneyRulesTest.DAY, MoneyRulesTest.stay(10))),
            new Command.Enter(new MoneyFact.MonthClosed(YearMonth.of(2026, 5), "Ida")),
            new Command.Enter(new CareFact.UpkeepDescribed(Squads.HOSE)),
            new Command.Enter(new CareFact.UpkeepDone("hose 2", LocalDate.of(2026, 6, 14))),
            new Command.Enter(new CareFact.UpkeepEnded("hose 2", "cut up")),
            new Command.Enter(new CareFact.GroupDescribed(Squads.RESCUE)),
            new Command.Enter(new CareFact.GroupEnded("rescue")),
            new Command.Enter(new CareFact.BottleAssigned(Larkmoor.M_03, "rescue", Place.SPARE)),
            new Command.Enter(new CareFact.BottlesSwapped(Larkmoor.M_03, Squads.SPARE)),
            new Command.Enter(new CareFact.ShiftStarted(Larkmoor.TEN)),
            new Command.Enter(new CareFact.EmergencyCardSet(LocalHelp.NONE)),
            new Command.Enter(new CareFact.AddressSet("http://bench.example:8080")),
            new Command.Enter(new StandFact.SupplyReleased(Larkmoor.A)),
            new Command.Enter(new StandFact.SupplyHeldBack(Larkmoor.A, "for the squad")),
            new Command.Enter(new StandFact.SupplyTaggedOut(Larkmoor.A, "valve leaks")),
            new Command.Enter(new StandFact.SupplyPutFirst(Larkmoor.A)),
            new Command.Enter(new StandFact.SupplyDelivered(
                    Larkmoor.A, new Delivery("LOT 7", LocalDate.of(2026, 6, 1), "Holm Gases"))),
            new Command.Enter(new StandFact.SupplyPlaced(Larkmoor.A, "trailer")),
            new Command.Enter(new StandFact.BankChosen(Larkmoor.FILL, "trailer")),
            new Command.Enter(new StandFact.ExchangeBegun(Larkmoor.A)),
            new Command.Enter(new StandFact.ExchangeMade(Larkmoor.A, Larkmoor.B)),
            new Command.Enter(new StandFact.ExchangeBrokenOff(Larkmoor.A, "not delivered")),
            new Command.Enter(SessionRulesTest.BEGUN),
            new Command.Enter(SessionRulesTest.PLANNED),
            new Command.Enter(new SessionFact.StageSkipped(
                    SessionRulesTest.SESSION, Larkmoor.FILL, Larkmoor.A, "its valve is stiff")),
            new Command.Enter(new SessionFact.BottleLeftOut(SessionRulesTest.SESSION, Larkmoor.FILL, "not here")),
            new Command.Enter(new SessionFact.SessionEnded(SessionRulesTest.SESSION, "called away")),
            new Command.Enter(new OutlookFact.FiguresKept(Map.of(AheadFigure.LEAD_DAYS, new BigDecimal("4")))),
            new Command.Enter(new OutlookFact.HappeningPlanned(OutlookTest.CAMP)),
            new Command.Enter(new OutlookFact.HappeningDropped("Wave week", OutlookTest.CAMP.from())),
            new Command.Enter(new OutlookFact.SuppliesOrdered(LocalDate.of(2026, 6, 20))),
            new Command.TakeInSupply(
                    new Command.ConnectSupply(new SupplyId("e"), Larkmoor.supply("E"), Larkmoor.reads("200", 9)),
                    List.of(new StandFact.ExchangeMade(Larkmoor.A, new SupplyId("e")))),
            new Command.CorrectEntry(Journal.given().entry(5), "never registered", null));

    @Test
    void thereIsAnExampleOfEachCommandAndFact() {
        Set<Class<?>> commands = new HashSet<>();
        Set<Class<?>> facts = new HashSet<>();
        for (Command command : COMMANDS) {
            commands.add(command.getClass());
            facts.add(command.fact().getClass());
        }
        assertThat(commands).containsExactlyInAnyOrderElementsOf(permitted(Command.class));
        assertThat(facts).containsExactlyInAnyOrderElementsOf(permitted(Fact.class));
    }

    @Test
    void eachCommandIsDecided() {
        Journal idle =
                Markings.given(new Fact.GaugeDescribed(GAUGE), new OutlookFact.HappeningPlanned(OutlookTest.CAMP));
        Arrays.stream(Squads.facts()).forEach(idle::add);
        Journal doubtful = Markings.given(new GateFact.BottleMarked(Larkmoor.M_03, Markings.unsure()));
        Journal filling = Journal.given(
                new Fact.FillStarted(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 5)));
        Journal session = Journal.given(SessionRulesTest.BEGUN, SessionRulesTest.PLANNED);
        for (Command command : COMMANDS) {
            boolean needsFill = command instanceof Command.RecordStage
                    || command instanceof Command.FinishFill
                    || command instanceof Command.AbandonFill;
            boolean needsDoubt = command.fact() instanceof GateFact.RefusalsSetAside;
            boolean needsSession =
                    command.fact() instanceof SessionFact && !(command.fact() instanceof SessionFact.SessionBegun);
            Journal given = needsFill ? filling : needsDoubt ? doubtful : needsSession ? session : idle;
            Decision decision = given.when(command);
            if (command instanceof Command.OpenBench) {
                assertThat(decision).isInstanceOf(Refused.class);
            } else {
                assertThat(decision).as("%s", command).isEqualTo(new Accepted(command.facts()));
            }
        }
    }

    @Test
    void eachAcceptedFactFolds() {
        for (Command command : COMMANDS) {
            if (command instanceof Command.OpenBench || command instanceof Command.CorrectEntry) {
                continue;
            }
            boolean needsFill = command instanceof Command.RecordStage
                    || command instanceof Command.FinishFill
                    || command instanceof Command.AbandonFill;
            Journal journal = needsFill
                    ? Journal.given(new Fact.FillStarted(
                            Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 5)))
                    : Journal.given(Squads.facts());
            assertThatCode(() -> journal.add(command.fact()).bench())
                    .as("%s", command)
                    .doesNotThrowAnyException();
        }
    }

    private static List<Class<?>> permitted(Class<?> sealed) {
        return Arrays.stream(sealed.getPermittedSubclasses())
                .flatMap(type -> type.isSealed() ? permitted(type).stream() : Stream.<Class<?>>of(type))
                .toList();
    }
}
