package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.app.file.Place;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.BottleOnBoard;
import org.lowfirst.planning.flight.FlightOutcome;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.FlightRequest;
import org.lowfirst.planning.flight.Flow;
import org.lowfirst.planning.flight.Need;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.OxygenRules;
import org.lowfirst.planning.flight.PlanningAFlight;
import org.lowfirst.planning.flight.Profile;

/**
 * A thinned track gives the same answers as the whole one, within half a per cent, and times within half a per cent or ten seconds;
 * a sheet shows minutes. Tracks are invented, seeds fixed.
 */
final class ThinningTest {

    private static final double HALF_A_PER_CENT = 0.005;
    private static final List<OxygenRule> RULES = OxygenRules.ofSet("us-91");
    private static final List<Occupant> PEOPLE = List.of(
            new Occupant("P1", Occupant.Role.CREW, new Flow.ByAltitude(1.0), Altitude.ofFeet(8_000)),
            new Occupant("P2", Occupant.Role.PASSENGER, new Flow.Constant(0.9), Altitude.ofFeet(12_000)));

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void litresTimesAndMomentsStay(long seed) {
        List<Fix> fixes = wave(seed, 9_000);
        List<Fix> kept = new Thinning(PEOPLE, RULES).thin(fixes);
        assertThat(kept.size()).isLessThan(fixes.size() / 10);
        FlightPlan whole = plan(fixes);
        FlightPlan thinned = plan(kept);
        close(thinned.usedLitres(), whole.usedLitres());
        for (int i = 0; i < PEOPLE.size(); i++) {
            close(thinned.occupants().get(i).litres(), whole.occupants().get(i).litres());
        }
        close(thinned.neededLitres(), whole.neededLitres());
        close(thinned.turn(), whole.turn());
        close(thinned.reserveTouched(), whole.reserveTouched());
        close(thinned.emptied(), whole.emptied());
        assertThat(thinned.needs()).hasSameSizeAs(whole.needs());
        for (int i = 0; i < whole.needs().size(); i++) {
            Need need = whole.needs().get(i);
            assertThat(thinned.needs().get(i).seconds())
                    .isCloseTo(need.seconds(), within(Math.max(10.0, HALF_A_PER_CENT * need.seconds())));
        }
    }

    /** The device would go on and off with every gust; there thinning has to give way. */
    @Test
    void aTrackThatHoversWhereADeviceGoesOnKeepsItsLitres() {
        Random random = new Random(11);
        List<Fix> fixes = new ArrayList<>();
        for (int t = 0; t < 3_600; t++) {
            fixes.add(fix(t, Altitude.ofFeet(12_000).metres() - 1.5 + 2.0 * random.nextGaussian()));
        }
        List<Fix> kept = new Thinning(PEOPLE, RULES).thin(fixes);
        close(
                plan(kept).occupants().get(1).litres(),
                plan(fixes).occupants().get(1).litres());
    }

    @Test
    void firstAndLastFixAreKept() {
        List<Fix> fixes = wave(7, 500);
        List<Fix> kept = new Thinning(PEOPLE, RULES).thin(fixes);
        assertThat(kept.get(0)).isEqualTo(fixes.get(0));
        assertThat(kept.get(kept.size() - 1)).isEqualTo(fixes.get(fixes.size() - 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2.0, 8.0})
    void straightLinesPassEveryFixWithinTheGivenHeight(double within_m) {
        List<Fix> fixes = wave(3, 4_000);
        List<Fix> kept = StraightLines.through(fixes, within_m);
        int at = 0;
        for (Fix fix : fixes) {
            while (kept.get(at + 1).seconds() < fix.seconds()) {
                at++;
            }
            Fix from = kept.get(at);
            Fix to = kept.get(at + 1);
            double share = (fix.seconds() - from.seconds()) / (to.seconds() - from.seconds());
            double line_m = from.metres() + share * (to.metres() - from.metres());
            assertThat(Math.abs(fix.metres() - line_m)).isLessThanOrEqualTo(within_m + 1e-9);
        }
        assertThat(kept.size()).isLessThan(fixes.size());
    }

    @Test
    void aStraightClimbIsTwoFixes() {
        List<Fix> fixes = new ArrayList<>();
        for (int t = 0; t <= 1_000; t++) {
            fixes.add(fix(t, 500.0 + 2.0 * t));
        }
        assertThat(StraightLines.through(fixes, 0.25)).containsExactly(fixes.get(0), fixes.get(1_000));
    }

    private static void close(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(HALF_A_PER_CENT * expected));
    }

    private static void close(Optional<Double> found, Optional<Double> expected) {
        assertThat(found.isPresent()).isEqualTo(expected.isPresent());
        if (expected.isPresent()) {
            close(found.orElseThrow(), expected.orElseThrow());
        }
    }

    private static FlightPlan plan(List<Fix> fixes) {
        Profile profile = ((Profile.Checked) Profile.of(TrackLegs.of(fixes))).profile();
        BottleOnBoard bottle = new BottleOnBoard(
                "B1",
                Volume.ofLitres(1.0),
                GaugePressure.ofBar(150),
                GaugePressure.ofBar(200),
                GaugePressure.ofBar(15));
        FlightRequest request = new FlightRequest(
                profile,
                PEOPLE,
                RULES,
                List.of(bottle),
                ReferenceCondition.US_70F_1ATM,
                Temperature.ofCelsius(5),
                Duration.ofMinutes(15),
                10.0,
                2.5);
        return ((FlightOutcome.Planned) PlanningAFlight.plan(request, Oxygen.schmidtWagner())).plan();
    }

    /** A flight in wave with a fix a second: slow swings, faster ones, and the noise of a pressure sensor, in whole metres. */
    private static List<Fix> wave(long seed, int seconds) {
        Random random = new Random(seed);
        double phase = random.nextDouble() * 6.0;
        List<Fix> fixes = new ArrayList<>();
        for (int t = 0; t < seconds; t++) {
            double slow = 600.0 + 4_500.0 * Math.sin(Math.PI * t / seconds);
            double swings = 300.0 * Math.sin(t / 400.0 + phase) + 60.0 * Math.sin(t / 61.0);
            fixes.add(fix(t, Math.rint(slow + swings + random.nextGaussian())));
        }
        return fixes;
    }

    private static Fix fix(double seconds, double metres) {
        return new Fix(seconds, metres, Place.START);
    }
}
