package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.planning.flight.Flights.leg;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** 14 CFR 91.211(a), 135.89(a) and NCO.OP.190 against profiles worked by hand from the rule texts. */
class ReadingTheRulesReferenceTest {

    @Test
    void nothingIsAskedAtOrBelow12500Feet() {
        assertThat(needs("us-91", Flights.level(12_500, 300))).isEmpty();
    }

    @Test
    void crewMayFlyHalfAnHourAbove12500Feet() {
        assertThat(needs("us-91", Flights.level(13_000, 30))).isEmpty();
        Need need = needs("us-91", Flights.level(13_000, 75)).get(0);
        assertThat(need.rule().reference()).isEqualTo("14 CFR 91.211(a)(1)");
        assertThat(need.spans()).containsExactly(new Span(1800, 4500));
    }

    @Test
    void crewNeedItAtOnceAbove14000FeetAndPassengersAbove15000() {
        List<Need> at14500 = needs("us-91", Flights.level(14_500, 10));
        assertThat(at14500).extracting(need -> need.rule().reference()).containsExactly("14 CFR 91.211(a)(2)");
        List<Need> at15500 = needs("us-91", Flights.level(15_500, 10));
        assertThat(at15500)
                .extracting(need -> need.rule().reference())
                .containsExactly("14 CFR 91.211(a)(2)", "14 CFR 91.211(a)(3)");
    }

    @Test
    void aClimbIsCutWhereItPassesTheAltitudes() {
        Profile climb = Flights.profile(leg("climb", 20, 0, 20_000));
        Need crew = find("us-91", climb, "14 CFR 91.211(a)(2)").orElseThrow();
        assertThat(crew.spans().get(0).fromSeconds()).isCloseTo(14 * 60, within(1e-6));
        Need passengers = find("us-91", climb, "14 CFR 91.211(a)(3)").orElseThrow();
        assertThat(passengers.spans().get(0).fromSeconds()).isCloseTo(15 * 60, within(1e-6));
    }

    @Test
    void commercialCrewNeedItAbove12000AndAfterHalfAnHourAbove10000() {
        assertThat(needs("us-135", Flights.level(10_000, 300))).isEmpty();
        assertThat(find("us-135", Flights.level(11_000, 31), "14 CFR 135.89(a)(1)"))
                .isPresent();
        assertThat(find("us-135", Flights.level(12_001, 1), "14 CFR 135.89(a)(2)"))
                .isPresent();
    }

    @Test
    void theEuropeanTextAsksFromHalfAnHourAbove10000AndAlwaysAbove13000() {
        assertThat(needs("eu-nco", Flights.level(12_999, 30))).isEmpty();
        assertThat(needs("eu-nco", Flights.level(12_999, 40)).get(0).seconds()).isCloseTo(600, within(1e-6));
        assertThat(needs("eu-nco", Flights.level(13_500, 1))).isNotEmpty();
    }

    @Test
    void theFreeTimeIsCountedOverTheWholeFlight() {
        Profile twice = Flights.profile(
                leg("high", 20, 13_000, 13_000),
                leg("down", 10, 13_000, 10_000),
                leg("up", 10, 10_000, 13_000),
                leg("high again", 20, 13_000, 13_000));
        Need need = needs("us-91", twice).get(0);
        double aboveInClimbs_min = 2 * 10.0 * 500 / 3000;
        assertThat(need.seconds() / 60).isCloseTo(40 + aboveInClimbs_min - 30, within(1e-6));
    }

    private static List<Need> needs(String set, Profile profile) {
        return ReadingTheRules.of(OxygenRules.ofSet(set), profile);
    }

    private static Optional<Need> find(String set, Profile profile, String reference) {
        return needs(set, profile).stream()
                .filter(need -> need.rule().reference().equals(reference))
                .findFirst();
    }
}
