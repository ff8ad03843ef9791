package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.Happening;
import org.lowfirst.station.LocalHelp;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.OutlookFact;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Refusal;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionFact;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.station.readiness.Place;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PlusEntry;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

/** Facts of the areas of a bench, each beside the sentence that says it. */
final class AreaSaid {

    private static final FillId FILL = new FillId("fill-1");

    private AreaSaid() {}

    /**
     * @param a a supply called A
     * @param m03 a bottle called M-03
     */
    static Map<Fact, String> all(SupplyId a, BottleId m03) {
        Map<Fact, String> said = new LinkedHashMap<>();
        gate(said, m03);
        crew(said);
        money(said);
        care(said, m03);
        standing(said, a);
        session(said, a, m03);
        outlook(said);
        return said;
    }

    private static void gate(Map<Fact, String> said, BottleId m03) {
        LocalDate day = LocalDate.of(2026, 6, 14);
        MarkedPlate plate = new MarkedPlate(null, WallMaterial.STEEL, Station.bar("300"), null);
        Service service = Service.oxygen("G 3/4");
        StampLine stamp = new StampLine("PH 300", Convention.EUROPEAN);
        Refusal refusal = new Refusal("eu.consent", Advice.ASK_OWNER, "not-sure");
        said.put(new GateFact.RuleBookAdopted("book"), "Rule book changed.");
        said.put(
                new GateFact.BottleMarked(m03, new Marking(stamp, plate, null, service, null, null)),
                "Marking of M-03 entered, stamped PH 300.");
        said.put(
                new GateFact.BottleMarked(m03, new Marking(null, plate, null, service, null, null)),
                "Marking of M-03 entered by hand.");
        said.put(
                new GateFact.PlusRatingEntered(m03, new PlusEntry("report 7", "Ida")),
                "Ida entered a plus-rating for M-03 by report 7.");
        said.put(
                new GateFact.PlusRatingWithdrawn(m03, "not its report"),
                "Plus-rating of M-03 withdrawn: not its report.");
        said.put(
                new GateFact.ConditionAnswered(m03, day, Map.of("cracked", Answer.NO), "Ida"),
                "Ida looked at M-03: none of 1 questions answered yes.");
        said.put(
                new GateFact.ConditionAnswered(
                        m03, day, Map.of("cracked", Answer.NO, "corroded", Answer.NOT_SURE), "Ida"),
                "Ida looked at M-03: 1 of 2 questions answered yes or not sure.");
        said.put(new GateFact.BottleFoundOpen(m03, day), "Bottle M-03 came with its valve open.");
        said.put(
                new GateFact.EmptyBottleInspected(m03, day, "test shop"),
                "Bottle M-03 inspected and cleaned by test shop.");
        said.put(new GateFact.HammerTested(m03, day, "Ida"), "Bottle M-03 hammer-tested by Ida.");
        said.put(
                new GateFact.RefusalsSetAside(m03, day, List.of(refusal), "Ida", "Tom", "looked again"),
                "Tom set what the rules refuse of M-03 (1) aside for one fill by Ida: looked again.");
    }

    private static void crew(Map<Fact, String> said) {
        said.put(
                new CrewFact.PersonDescribed(new PersonDetails("Ben", Set.of(), null, null)),
                "Ben described, with roles, training and check-out.");
        said.put(new CrewFact.PersonLeft("Ida", "moved away"), "Ida left the bench: moved away.");
        said.put(new CrewFact.EntrySigned(41, "Tom"), "Tom signed entry 41.");
        said.put(new CrewFact.SecondPersonNamed(FILL, "Ben", "Tom"), "Tom stands beside Ben during this fill.");
    }

    private static void money(Map<Fact, String> said) {
        said.put(new MoneyFact.FillBilled(FILL, "M. Ash", false), "Fill billed to M. Ash.");
        said.put(new MoneyFact.FillBilled(FILL, "M. Ash", true), "Fill billed to M. Ash, as a guest.");
        said.put(
                MoneyExamples.tariff("0.011", "1.50", "20"),
                "Prices from 2026-06-14: 0.011 EUR a standard litre, 0 a fill, at least 1.50, guests 20 % more.");
        said.put(
                MoneyExamples.cost(CostKind.CONTENT, "K 4711", "48.50"),
                "Gas of 2026-06-14 for supply K 4711: 48.50 EUR.");
        said.put(MoneyExamples.cost(CostKind.DELIVERY, null, "48.50"), "Delivery of 2026-06-14: 48.50 EUR.");
        said.put(MoneyExamples.rent("48.50"), "Rent from 2026-06-14: 48.50 EUR a cylinder and day.");
        said.put(
                MoneyExamples.billed("17", "K 4711", MoneyExamples.DAY, MoneyExamples.DAY, 1, "48.50", "48.50"),
                "Rent on bill 17 for supply K 4711, 2026-06-14 to 2026-06-14: 48.50 EUR.");
        said.put(new MoneyFact.MonthClosed(YearMonth.of(2026, 5), "Ida"), "2026-05 closed by Ida.");
    }

    private static void care(Map<Fact, String> said, BottleId m03) {
        said.put(
                new CareFact.UpkeepDescribed(
                        new Upkeep(DueKind.HOSE, "hose 2", LocalDate.of(2026, 3, 14), 60, "maker's sheet")),
                "hose 2 is looked after every 60 months, last on 2026-03-14.");
        said.put(new CareFact.UpkeepDone("hose 2", LocalDate.of(2026, 6, 14)), "hose 2 done on 2026-06-14.");
        said.put(
                new CareFact.GroupDescribed(new GroupDetails("rescue 1", 1, Station.bar("100"), Station.bar("150"))),
                "Group rescue 1: not left in service below 100 bar, to hold 150 bar.");
        said.put(new CareFact.GroupEnded("rescue 1"), "Group rescue 1 ended.");
        said.put(
                new CareFact.BottleAssigned(m03, "rescue 1", Place.IN_SERVICE),
                "Bottle M-03 is in service with group rescue 1.");
        said.put(
                new CareFact.BottleAssigned(m03, "rescue 1", Place.SPARE), "Bottle M-03 is a spare of group rescue 1.");
        said.put(new CareFact.BottleAssigned(m03, "rescue 1", Place.AWAY), "Bottle M-03 of group rescue 1 is away.");
        said.put(new CareFact.BottleAssigned(m03, null, Place.AWAY), "Bottle M-03 belongs to no group.");
        said.put(new CareFact.BottlesSwapped(m03, m03), "M-03 went into service, M-03 came out.");
        said.put(new CareFact.ShiftStarted(Instant.EPOCH), "Shift begun.");
        said.put(new CareFact.UpkeepEnded("hose 2", "cut up"), "Upkeep of hose 2 ended: cut up.");
        said.put(new CareFact.EmergencyCardSet(LocalHelp.NONE), "The emergency card was set; local numbers on it: 0.");
        said.put(
                new CareFact.AddressSet("http://bench.example:8080"),
                "Other machines reach the program at http://bench.example:8080.");
    }

    private static void session(Map<Fact, String> said, SupplyId a, BottleId m03) {
        SessionId session = new SessionId("session-1");
        SessionWish wish = new SessionWish(FILL, m03, reads(), Station.bar("150"), null, 1);
        said.put(
                new SessionFact.SessionBegun(session, null, SessionAim.USUAL, List.of(wish)),
                "Session begun: M-03 from 40 bar to 150 bar.");
        said.put(
                new SessionFact.SessionPlanned(session, List.of(new PlannedStage(FILL, a, Station.bar("60.0"), false))),
                "1 stages planned for 1 bottles, first A 60.0 bar.");
        said.put(new SessionFact.SessionPlanned(session, List.of()), "Nothing is left to do in the session.");
        said.put(
                new SessionFact.StageSkipped(session, FILL, a, "its valve is stiff"),
                "Stage of M-03 on supply A skipped: its valve is stiff.");
        said.put(
                new SessionFact.BottleLeftOut(session, FILL, "not here"),
                "M-03 is not filled in the session: not here.");
        said.put(new SessionFact.SessionEnded(session, ""), "Session ended.");
        said.put(new SessionFact.SessionEnded(session, "called away"), "Session ended early: called away.");
    }

    private static Reading reads() {
        return new Reading(
                Station.bar("40"),
                Instant.parse("2026-06-14T10:00:00Z"),
                StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                false,
                null);
    }

    private static void outlook(Map<Fact, String> said) {
        said.put(
                new OutlookFact.FiguresKept(Map.of(
                        AheadFigure.LEAD_DAYS, new BigDecimal("4"), AheadFigure.RENT_PER_DAY, new BigDecimal("0.25"))),
                "To look ahead with: days from order to delivery 4; rent of a supply for a day 0.25.");
        LocalDate day = LocalDate.of(2026, 6, 20);
        said.put(
                new OutlookFact.HappeningPlanned(new Happening("Wave week", day, 7, new BigDecimal("30"))),
                "Wave week, 2026-06-20 to 2026-06-26, is planned: 30 more fills in all.");
        said.put(
                new OutlookFact.HappeningPlanned(new Happening("Exercise", day, 1, new BigDecimal("6"))),
                "Exercise on 2026-06-20 is planned: 6 more fills.");
        said.put(
                new OutlookFact.HappeningDropped("Wave week", day), "Wave week of 2026-06-20 is not planned any more.");
        said.put(new OutlookFact.SuppliesOrdered(day), "Supplies ordered, expected on 2026-06-20.");
    }

    private static void standing(Map<Fact, String> said, SupplyId a) {
        said.put(new StandFact.SupplyReleased(a), "Supply A is used by its rank again.");
        said.put(new StandFact.SupplyHeldBack(a, "for the squad"), "Supply A is held back: for the squad.");
        said.put(
                new StandFact.SupplyTaggedOut(a, "valve leaks"),
                "Supply A is tagged out, not to be opened: valve leaks.");
        said.put(new StandFact.SupplyPutFirst(a), "Supply A is used first.");
        said.put(
                new StandFact.SupplyDelivered(a, new Delivery("LOT 7", LocalDate.of(2026, 6, 1), "Holm Gases")),
                "Supply A came from Holm Gases, lot LOT 7, rented from 2026-06-01.");
        said.put(
                new StandFact.SupplyDelivered(a, Delivery.UNSAID),
                "Supply A came from not said, lot not said, rented from not said.");
        said.put(new StandFact.SupplyPlaced(a, "trailer"), "Supply A stands in bank trailer.");
        said.put(new StandFact.SupplyPlaced(a, null), "Supply A stands in the bank without a name.");
        said.put(new StandFact.BankChosen(FILL, "trailer"), "The next fill is made from bank trailer.");
        said.put(new StandFact.BankChosen(FILL, null), "The next fill is made from the bank without a name.");
        said.put(new StandFact.ExchangeBegun(a), "Exchange of supply A begun.");
        said.put(new StandFact.ExchangeMade(a, a), "Supply A took the place of A.");
        said.put(
                new StandFact.ExchangeBrokenOff(a, "not delivered"), "Exchange of supply A broken off: not delivered.");
    }
}
