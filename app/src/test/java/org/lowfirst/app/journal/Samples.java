package org.lowfirst.app.journal;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Attest;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BilledStay;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.Language;
import org.lowfirst.station.LocalHelp;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Material;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Origin;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Refusal;
import org.lowfirst.station.Role;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionFact;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedPrices;
import org.lowfirst.station.StatedRent;
import org.lowfirst.station.StatedRounding;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.VolumeBasis;
import org.lowfirst.station.WarmStop;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.station.readiness.Place;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PermitTerms;
import org.lowfirst.station.rules.PlusEntry;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

/** One fact of each kind, with every member filled and with the optional ones left out. */
final class Samples {

    static final BenchId BENCH = new BenchId("larkmoor");
    static final SupplyId A = new SupplyId("supply-a");
    static final SupplyId B = new SupplyId("supply-b");
    static final BottleId BOTTLE = new BottleId("m-03");
    static final FillId FILL = new FillId("fill-1");
    static final Instant TEN = Instant.parse("2026-06-14T10:00:00Z");

    private Samples() {}

    static Settings settings() {
        return new Settings(
                "Larkmoor Gliders",
                new Units(PressureUnit.BAR, TemperatureUnit.CELSIUS, VolumeUnit.LITRE),
                RuleSet.EU,
                new Surroundings(
                        StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                        StatedAbsolutePressure.of("101.325", PressureUnit.KILOPASCAL),
                        StatedVolume.of("0.05", VolumeUnit.LITRE)),
                bar("200"),
                List.of("Ida", "Tom"));
    }

    /** Each unit chosen by itself, in German. */
    private static Settings ownUnits() {
        return new Settings(
                "Larkmoor Gliders",
                new Units(PressureUnit.KILOPASCAL, TemperatureUnit.FAHRENHEIT, VolumeUnit.CUBIC_FOOT),
                RuleSet.EU,
                settings().surroundings(),
                bar("200"),
                List.of("Ida"),
                Language.GERMAN);
    }

    static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    static Reading reads(String bar) {
        return new Reading(bar(bar), TEN, StatedTemperature.of("18.50", TemperatureUnit.CELSIUS), false, "gauge 2");
    }

    static Reading assumed(String psi) {
        return new Reading(
                StatedPressure.of(psi, PressureUnit.PSI),
                TEN.plusMillis(1),
                StatedTemperature.of("70", TemperatureUnit.FAHRENHEIT),
                true,
                null);
    }

    static SupplyDetails supply() {
        return new SupplyDetails(
                "A",
                "K 4711",
                new WaterVolume(
                        StatedVolume.of("43.2", VolumeUnit.LITRE), VolumeBasis.NAMEPLATE, "244 cu ft at 2,200 psi"),
                bar("200"));
    }

    static BottleDetails bottle() {
        return new BottleDetails(
                "M-03",
                "Ida",
                WaterVolume.stamped(StatedVolume.of("5.0", VolumeUnit.LITRE)),
                bar("200"),
                Material.STEEL,
                bar("150"));
    }

    static GaugeDetails gauge(@Nullable BigDecimal percent, @Nullable StatedPressure error) {
        LocalDate calibrated = percent == null ? null : LocalDate.of(2026, 3, 1);
        return new GaugeDetails("gauge 2", GaugeUse.SUPPLIES, bar("250"), bar("5"), percent, error, calibrated);
    }

    static Map<String, Fact> facts() {
        Map<String, Fact> facts = new LinkedHashMap<>();
        facts.put("bench.opened", new Fact.BenchOpened(settings()));
        facts.put("bench.settings-changed", new Fact.SettingsChanged(settings()));
        facts.put("bench.settings-changed.own", new Fact.SettingsChanged(ownUnits()));
        facts.put("supply.connected", new Fact.SupplyConnected(A, supply(), reads("62")));
        facts.put("supply.amended", new Fact.SupplyAmended(A, supply()));
        facts.put("supply.removed", new Fact.SupplyRemoved(A, reads("44"), "to the supplier"));
        facts.put("supply.removed.least", new Fact.SupplyRemoved(A, null, "leaks"));
        facts.put("supplies.two-opened-together", new Fact.TwoOpenedTogether(A, B, reads("90"), assumed("1305")));
        facts.put("supplies.two-opened-together.least", new Fact.TwoOpenedTogether(A, B, null, null));
        facts.put("bottle.registered", new Fact.BottleRegistered(BOTTLE, bottle(), reads("40")));
        facts.put(
                "bottle.registered.least",
                new Fact.BottleRegistered(
                        BOTTLE, new BottleDetails("R1", "", bottle().waterVolume(), bar("200"), null, null), null));
        facts.put("bottle.amended", new Fact.BottleAmended(BOTTLE, bottle()));
        facts.put("bottle.retired", new Fact.BottleRetired(BOTTLE, "dented \"badly\"\nand rusty"));
        facts.put("reading.taken", new Fact.ReadingTaken(A, assumed("2015")));
        facts.put(
                "bottle.read-warm",
                new Fact.WarmBottleRead(BOTTLE, reads("200"), StatedTemperature.of("58", TemperatureUnit.CELSIUS)));
        facts.put("reading.taken.bottle", new Fact.ReadingTaken(BOTTLE, reads("150.0")));
        facts.put("fill.started", new Fact.FillStarted(FILL, BOTTLE, bar("150"), reads("40")));
        facts.put(
                "stage.recorded", new Fact.StageRecorded(FILL, new Stage(A, reads("60"), reads("62"), assumed("870"))));
        facts.put("stage.recorded.least", new Fact.StageRecorded(FILL, new Stage(A, reads("60"), null, null)));
        facts.put("fill.finished", new Fact.FillFinished(FILL, reads("150")));
        facts.put("fill.abandoned", new Fact.FillAbandoned(FILL, "called away"));
        facts.put(
                "fill.recorded",
                new Fact.FillRecorded(
                        FILL,
                        BOTTLE,
                        bar("150"),
                        reads("40"),
                        reads("150"),
                        List.of(new Stage(A, reads("60"), null, null))));
        facts.put(
                "fill.recorded.least", new Fact.FillRecorded(FILL, BOTTLE, null, reads("40"), reads("150"), List.of()));
        facts.put("gauge.described", new Fact.GaugeDescribed(gauge(new BigDecimal("1.6"), null)));
        facts.put("gauge.described.least", new Fact.GaugeDescribed(gauge(null, bar("3"))));
        facts.put("gauge.retired", new Fact.GaugeRetired("gauge 2", "dropped"));
        facts.put("warm-stop.allowed", new Fact.WarmStopAllowed(new WarmStop("Ida", "bench table 4")));
        facts.put("warm-stop.forbidden", new Fact.WarmStopForbidden("Ida"));
        putAreas(facts);
        facts.put("entry.corrected", new Fact.EntryCorrected(7, "typing slip", new Fact.ReadingTaken(A, reads("62"))));
        facts.put("entry.corrected.least", new Fact.EntryCorrected(7, "never happened", null));
        return facts;
    }

    static Origin origin(String key) {
        return new Origin(new EntryKey(key), TEN.plusSeconds(60), TEN, "Ida");
    }

    private static void putAreas(Map<String, Fact> facts) {
        facts.put("rule-book.adopted", new GateFact.RuleBookAdopted("book = own\n"));
        facts.put(
                "person.described",
                new CrewFact.PersonDescribed(new PersonDetails(
                        "Ida",
                        Set.of(Role.RESPONSIBLE, Role.FILLER),
                        new Attest(LocalDate.of(2028, 2, 29), "course of the county"),
                        new Attest(LocalDate.of(2027, 5, 31), "Tom"))));
        facts.put(
                "person.described.least", new CrewFact.PersonDescribed(new PersonDetails("Ben", Set.of(), null, null)));
        putGate(facts);
        facts.put("person.left", new CrewFact.PersonLeft("Ida", "moved away"));
        facts.put("entry.signed", new CrewFact.EntrySigned(41, "Tom"));
        facts.put("fill.second-person-named", new CrewFact.SecondPersonNamed(FILL, "Ben", "Tom"));
        facts.put("fill.billed", new MoneyFact.FillBilled(new FillId("fill-1"), "M. Ash", true));
        putMoney(facts);
        OutlookSamples.putInto(facts);
        facts.put(
                "upkeep.described",
                new CareFact.UpkeepDescribed(
                        new Upkeep(DueKind.HOSE, "hose 2", LocalDate.of(2026, 3, 14), 60, "maker's sheet")));
        facts.put("upkeep.done", new CareFact.UpkeepDone("hose 2", LocalDate.of(2026, 6, 14)));
        facts.put(
                "group.described",
                new CareFact.GroupDescribed(new GroupDetails("rescue 1", 1, bar("100"), bar("150"))));
        facts.put("group.ended", new CareFact.GroupEnded("rescue 1"));
        facts.put("bottle.assigned", new CareFact.BottleAssigned(BOTTLE, "rescue 1", Place.IN_SERVICE));
        facts.put("bottle.assigned.none", new CareFact.BottleAssigned(BOTTLE, null, Place.AWAY));
        facts.put("bottles.swapped", new CareFact.BottlesSwapped(BOTTLE, new BottleId("s-2")));
        facts.put("shift.started", new CareFact.ShiftStarted(TEN));
        facts.put("upkeep.ended", new CareFact.UpkeepEnded("hose 2", "cut up"));
        facts.put(
                "emergency-card.set",
                new CareFact.EmergencyCardSet(new LocalHelp(
                        "Larkmoor, hangar 2", "wind sock", List.of(new LocalHelp.Contact("Fire", "00 00")))));
        facts.put("address.set", new CareFact.AddressSet("http://bench.example:8080"));
        facts.put("supply.released", new StandFact.SupplyReleased(new SupplyId("s-a")));
        putStand(facts);
        putSession(facts);
    }

    private static void putSession(Map<String, Fact> facts) {
        SessionId session = new SessionId("session-1");
        Reading before = new Reading(
                StatedPressure.of("40", PressureUnit.BAR),
                TEN,
                StatedTemperature.of("18.50", TemperatureUnit.CELSIUS),
                false,
                null);
        SessionWish wish = new SessionWish(FILL, BOTTLE, before, StatedPressure.of("150", PressureUnit.BAR), null, 1);
        SessionWish floored = new SessionWish(
                new FillId("fill-2"),
                new BottleId("s-2"),
                before,
                StatedPressure.of("150", PressureUnit.BAR),
                StatedPressure.of("120", PressureUnit.BAR),
                2);
        facts.put(
                "session.begun",
                new SessionFact.SessionBegun(session, "trailer", SessionAim.CHANGES, List.of(wish, floored)));
        facts.put("session.begun.least", new SessionFact.SessionBegun(session, null, SessionAim.USUAL, List.of(wish)));
        facts.put(
                "session.planned",
                new SessionFact.SessionPlanned(
                        session,
                        List.of(
                                new PlannedStage(FILL, A, StatedPressure.of("61.5", PressureUnit.BAR), false),
                                new PlannedStage(FILL, B, StatedPressure.of("150.0", PressureUnit.BAR), true))));
        facts.put("session.planned.least", new SessionFact.SessionPlanned(session, List.of()));
        facts.put("session.stage-skipped", new SessionFact.StageSkipped(session, FILL, A, "its valve is stiff"));
        facts.put("session.bottle-left-out", new SessionFact.BottleLeftOut(session, FILL, "not here"));
        facts.put("session.ended", new SessionFact.SessionEnded(session, "called away"));
        facts.put("session.ended.least", new SessionFact.SessionEnded(session, ""));
    }

    private static void putStand(Map<String, Fact> facts) {
        facts.put("supply.held-back", new StandFact.SupplyHeldBack(A, "for the squad"));
        facts.put("supply.tagged-out", new StandFact.SupplyTaggedOut(A, "valve leaks"));
        facts.put("supply.put-first", new StandFact.SupplyPutFirst(A));
        facts.put(
                "supply.delivered",
                new StandFact.SupplyDelivered(A, new Delivery("LOT 7", LocalDate.of(2026, 6, 1), "Holm Gases")));
        facts.put("supply.delivered.least", new StandFact.SupplyDelivered(A, Delivery.UNSAID));
        facts.put("supply.placed", new StandFact.SupplyPlaced(A, "trailer"));
        facts.put("supply.placed.least", new StandFact.SupplyPlaced(A, null));
        facts.put("fill.bank-chosen", new StandFact.BankChosen(FILL, "trailer"));
        facts.put("fill.bank-chosen.least", new StandFact.BankChosen(FILL, null));
        facts.put("exchange.begun", new StandFact.ExchangeBegun(A));
        facts.put("exchange.made", new StandFact.ExchangeMade(A, B));
        facts.put("exchange.broken-off", new StandFact.ExchangeBrokenOff(A, "not delivered"));
    }

    private static void putMoney(Map<String, Fact> facts) {
        StatedRounding rounding = new StatedRounding(StatedRounding.Way.HALF_UP, new BigDecimal("0.01"));
        StatedPrices prices = new StatedPrices(
                new BigDecimal("0.0110"), new BigDecimal("0"), new BigDecimal("1.50"), new BigDecimal("20"));
        LocalDate day = LocalDate.of(2026, 6, 14);
        facts.put(
                "tariff.set",
                new MoneyFact.TariffSet(
                        day,
                        new StatedTariff(
                                "EUR", GasUnit.STANDARD_LITRE, ReferenceCondition.ISO_15C_1ATM, 1, prices, rounding)));
        facts.put(
                "tariff.set.us",
                new MoneyFact.TariffSet(
                        day,
                        new StatedTariff(
                                "USD",
                                GasUnit.STANDARD_CUBIC_FOOT,
                                ReferenceCondition.US_70F_1ATM,
                                2,
                                prices,
                                new StatedRounding(StatedRounding.Way.HALF_EVEN, new BigDecimal("0.05")))));
        StatedMoney money = new StatedMoney(new BigDecimal("48.50"), "EUR");
        facts.put(
                "cost.entered",
                new MoneyFact.CostEntered(new StatedCost(CostKind.CONTENT, day, "K 4711", money, "bill 17")));
        facts.put(
                "cost.entered.least",
                new MoneyFact.CostEntered(new StatedCost(CostKind.DELIVERY, day, null, money, "")));
        StatedMoney perDay = new StatedMoney(new BigDecimal("0.245"), "EUR");
        facts.put(
                "rent.agreed", new MoneyFact.RentAgreed(day, new StatedRent(perDay, rounding, DayCount.BOTH_ENDS, 3)));
        facts.put(
                "rent.billed",
                new MoneyFact.RentBilled(
                        "bill 17", day, new BilledStay("K 4711", day.minusDays(9), day, 10, perDay, money)));
        facts.put("month.closed", new MoneyFact.MonthClosed(YearMonth.of(2026, 5), "Ida"));
    }

    private static void putGate(Map<String, Fact> facts) {
        LocalDate day = LocalDate.of(2026, 6, 14);
        Marking marking = new Marking(
                new StampLine("DOT-3AL2015 S 1742 06 T 12", Convention.US),
                new MarkedPlate("3AL", WallMaterial.ALUMINIUM_6351, bar("232"), YearMonth.of(2012, 6)),
                new TestMark(YearMonth.of(2022, 6), true, true, "VE"),
                new Service("oxygen", "CGA 540", Answer.NO, Answer.YES, Answer.NOT_SURE),
                4371,
                new PermitTerms(5, 15, "permit 1, revision 2"));
        Marking unread = new Marking(
                null,
                new MarkedPlate(null, WallMaterial.UNKNOWN, null, null),
                null,
                new Service(null, null, Answer.NOT_SURE, Answer.NOT_SURE, Answer.NOT_SURE),
                null,
                null);
        facts.put("bottle.marked", new GateFact.BottleMarked(BOTTLE, marking));
        facts.put("bottle.marked.least", new GateFact.BottleMarked(BOTTLE, unread));
        facts.put("plus-rating.entered", new GateFact.PlusRatingEntered(BOTTLE, new PlusEntry("report 7", "Ida")));
        facts.put("plus-rating.withdrawn", new GateFact.PlusRatingWithdrawn(BOTTLE, "report was for another"));
        facts.put(
                "condition.answered",
                new GateFact.ConditionAnswered(
                        BOTTLE, day, Map.of("cracked", Answer.NO, "corroded", Answer.NOT_SURE), "Ida"));
        facts.put("bottle.found-open", new GateFact.BottleFoundOpen(BOTTLE, day));
        facts.put("bottle.inspected-empty", new GateFact.EmptyBottleInspected(BOTTLE, day, "test shop"));
        facts.put("bottle.hammer-tested", new GateFact.HammerTested(BOTTLE, day, "Ida"));
        facts.put(
                "refusals.set-aside",
                new GateFact.RefusalsSetAside(
                        BOTTLE,
                        day,
                        List.of(
                                new Refusal("eu.condition", Advice.LET_SECOND_PERSON_LOOK, "corroded"),
                                new Refusal("eu.consent", Advice.ASK_OWNER, null)),
                        "Ida",
                        "Tom",
                        "looked at together"));
    }

    /** The kinds of a sealed type, however it is grouped. */
    static Stream<Class<?>> kinds(Class<?> type) {
        return type.isSealed() ? Arrays.stream(type.getPermittedSubclasses()).flatMap(Samples::kinds) : Stream.of(type);
    }
}
