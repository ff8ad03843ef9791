package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.gas.PressureUnit.BAR;
import static org.lowfirst.gas.PressureUnit.PSI;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.oxygen;
import static org.lowfirst.planning.Planned.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

final class RefusalTest {

    private static final Conditions CONDITIONS =
            Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(20), ReferenceRule.EU);
    private final FillPlanner planner = oxygen(Temperature.ofCelsius(20), ReferenceRule.EU);
    private final List<SupplyState> bank = bank(50, BAR, 60, 190);
    private final BottleToFill bottle = bottle("R1", 5, 40, 150, 200, BAR);

    @Test
    void anEmptyBank() {
        refused(planner, List.of(), bottle, "empty-bank", "The bank has no supply.");
    }

    @Test
    void twoSuppliesWithOneName() {
        List<SupplyState> twice = List.of(supply("A", 50, 60, BAR), supply("A", 50, 90, BAR));
        refused(planner, twice, bottle, "duplicate-name", "The name \"A\" is given to more than one supply.");
    }

    @Test
    void twoBottlesWithOneName() {
        InOrderOutcome outcome = planner.planInOrder(bank, List.of(bottle, bottle), null);
        assertThat(outcome).isEqualTo(new PlanRefused.DuplicateName("bottle", "R1"));
    }

    @Test
    void aSupplyWithoutAName() {
        refused(
                planner,
                List.of(supply(" ", 50, 60, BAR)),
                bottle,
                "name-missing",
                "The supply in place 1 has no name.");
    }

    @Test
    void psiTypedIntoABarField() {
        refused(
                planner,
                bank(50, BAR, 60, 1450),
                bottle,
                "pressure-out-of-range",
                "The reading of supply B (1,450 bar) must be 0 bar to 400 bar.");
    }

    @Test
    void aReadingBelowZero() {
        refused(
                planner,
                bank,
                bottle("R1", 5, -3, 150, 200, BAR),
                "pressure-out-of-range",
                "The reading of bottle R1 (-3 bar) must be 0 bar to 400 bar.");
    }

    @Test
    void targetsAndServicePressuresOutOfRange() {
        refused(planner, bank, bottle("R1", 5, 3, 1500, 200, BAR), "pressure-out-of-range", "The target of bottle R1");
        refused(
                planner,
                bank,
                bottle("R1", 5, 3, 150, 2000, BAR),
                "pressure-out-of-range",
                "The service pressure of bottle R1");
    }

    @Test
    void aFullSupplyOutOfRange() {
        PlanOutcome outcome = planner.plan(new FillRequest(bank, bottle, GaugePressure.ofBar(900)));
        assertThat(outcome).isInstanceOf(PlanRefused.PressureOutOfRange.class);
    }

    @Test
    void absurdSizes() {
        refused(
                planner,
                List.of(supply("A", 50_000, 60, BAR)),
                bottle,
                "volume-out-of-range",
                "The water volume of supply A (50000 L) must be 0.05 L to 3000 L.");
        refused(
                planner,
                bank,
                bottle("R1", 0, 40, 150, 200, BAR),
                "volume-out-of-range",
                "The water volume of bottle R1 (0 L) must be 0.05 L to 300 L.");
        refused(
                FillPlanner.under(CONDITIONS.withHose(Volume.ofLitres(40))),
                bank,
                bottle,
                "volume-out-of-range",
                "The hose volume (40 L) must be 0 L to 10 L.");
    }

    @Test
    void tooManySupplies() {
        List<SupplyState> many = new ArrayList<>();
        for (int i = 0; i < 65; i++) {
            many.add(supply("S" + i, 50, 60, BAR));
        }
        refused(planner, many, bottle, "too-many", "There are 65 supplies; at most 64 can be planned together.");
    }

    @Test
    void anUnknownServicePressure() {
        BottleToFill unmarked = new BottleToFill("R1", bottle.waterVolume(), bottle.reading(), bottle.target(), null);
        refused(planner, bank, unmarked, "service-pressure-missing", "The service pressure of bottle R1 is not known.");
    }

    @Test
    void aBottleThatReadsMoreThanItsMarkingAllowsToday() {
        refused(
                oxygen(Temperature.ofFahrenheit(30), ReferenceRule.US),
                bank(49, PSI, 1000, 2200),
                bottle("R1", 2.9, 1900, 2015, 2015, PSI),
                "bottle-above-limit",
                "Bottle R1 reads 1,900 psi; at this temperature it must not read more than 1,802 psi");
    }

    @Test
    void aTemperatureBeyondTheEquation() {
        refused(
                oxygen(Temperature.ofCelsius(-150), ReferenceRule.EU),
                bank,
                bottle,
                "temperature-out-of-range",
                "The bench temperature (-150 C) must be ");
        refused(
                FillPlanner.under(new Conditions(
                        CONDITIONS.gas(),
                        CONDITIONS.bench(),
                        new Temperature(3000),
                        CONDITIONS.ambient(),
                        CONDITIONS.hose())),
                bank,
                bottle,
                "temperature-out-of-range",
                "The reference temperature (2,727 C) must be ");
    }

    @Test
    void surroundingsInTheWrongUnit() {
        refused(
                FillPlanner.under(new Conditions(
                        CONDITIONS.gas(),
                        CONDITIONS.bench(),
                        CONDITIONS.reference(),
                        AbsolutePressure.ofBar(10.13),
                        CONDITIONS.hose())),
                bank,
                bottle,
                "ambient-out-of-range",
                "The pressure of the surroundings (10.13 bar absolute) must be 0.50 bar absolute to 1.10 bar absolute.");
    }

    @Test
    void oneWrongBottleRefusesTheListAndNamesIt() {
        InOrderOutcome outcome = planner.planInOrder(bank, List.of(bottle, bottle("R2", 5, -3, 150, 200, BAR)), null);
        assertThat(outcome).isInstanceOf(PlanRefused.class);
        assertThat(((PlanRefused) outcome).inWords(ShownUnits.METRIC)).contains("bottle R2");
    }

    @Test
    void everyKindHasACodeOfItsOwnAndASentenceWithAdvice() {
        Volume litre = Volume.ofLitres(1);
        GaugePressure bar = GaugePressure.ofBar(1);
        Temperature kelvin = new Temperature(1);
        AbsolutePressure vacuum = AbsolutePressure.ofBar(0);
        List<PlanRefused> all = List.of(
                new PlanRefused.EmptyBank(),
                new PlanRefused.TooMany("supplies", 65, 64),
                new PlanRefused.NameMissing("bottle", 2),
                new PlanRefused.DuplicateName("bottle", "R1"),
                new PlanRefused.SupplyUnknown("X"),
                new PlanRefused.VolumeOutOfRange("hose volume", litre, litre, litre),
                new PlanRefused.PressureOutOfRange("reading", bar, bar, bar),
                new PlanRefused.AmbientOutOfRange(vacuum, vacuum, vacuum),
                new PlanRefused.TemperatureOutOfRange("bench", kelvin, kelvin, kelvin),
                new PlanRefused.FloorAboveStop("R1", bar, bar),
                new PlanRefused.ServicePressureMissing("R1"),
                new PlanRefused.BottleAboveLimit("R1", bar, bar, bar),
                new PlanRefused.NoAnswer("no root"));
        Set<Class<?>> seen = new HashSet<>();
        Set<String> codes = new HashSet<>();
        for (PlanRefused refused : all) {
            seen.add(refused.getClass());
            codes.add(refused.code());
            for (ShownUnits units : List.of(ShownUnits.US, ShownUnits.METRIC)) {
                assertThat(refused.inWords(units))
                        .contains("lease ")
                        .endsWith(".")
                        .doesNotContain("%");
            }
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(Arrays.asList(PlanRefused.class.getPermittedSubclasses()));
        assertThat(codes).hasSameSizeAs(all);
    }

    private static void refused(
            FillPlanner planner, List<SupplyState> bank, BottleToFill bottle, String code, String words) {
        PlanOutcome outcome = planner.plan(new FillRequest(bank, bottle));
        assertThat(outcome).isInstanceOf(PlanRefused.class);
        PlanRefused refused = (PlanRefused) outcome;
        assertThat(refused.code()).isEqualTo(code);
        assertThat(refused.inWords(code.equals("bottle-above-limit") ? ShownUnits.US : ShownUnits.METRIC))
                .startsWith(words);
    }
}
