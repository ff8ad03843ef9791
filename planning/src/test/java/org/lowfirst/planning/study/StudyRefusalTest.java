package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ShownUnits;

/** Requests that cannot be meant come back with a sentence. */
final class StudyRefusalTest {

    private static final SupplyKind SUPPLY = Studies.supply(50, 200);
    private static final Demand DEMAND = Studies.mixed(150);
    private static final Alternative BANK = new Alternative("A", 3, SUPPLY, ExchangeHabit.oneAtATime());
    private static final Extent EXTENT = Extent.of(2, 10, 1);

    static Stream<Arguments> wrong() {
        return Stream.of(wrongPricesAndDemand(), wrongWays(), wrongAsAWhole()).flatMap(s -> s);
    }

    private static Stream<Arguments> wrongPricesAndDemand() {
        return Stream.of(
                with(
                        DEMAND,
                        new Prices(-1, 0, 0, 0, 10),
                        BANK,
                        "The price of a delivery (-1) must be 0 to 1,000,000,000."),
                with(DEMAND, new Prices(Double.NaN, 0, 0, 0, 10), BANK, "The price of a delivery (NaN) must be"),
                with(
                        DEMAND,
                        new Prices(1, -2, 0, 0, 10),
                        BANK,
                        "The days from sending for supplies to their arrival (-2)"),
                with(DEMAND, new Prices(1, 2, 0, 0, 0), BANK, "The years to pay off lines and booster (0)"),
                with(Studies.mixed(0), Studies.PRICES, BANK, "The fills a year (0) must be 1 to 100,000."),
                with(months(11, 1.0), Studies.PRICES, BANK, "The number of month factors (11) must be 12."),
                with(months(12, 0.0), Studies.PRICES, BANK, "The month factors must not all be zero."),
                with(months(12, -1.0), Studies.PRICES, BANK, "The largest of the month factors (-1) must be"),
                with(
                        Demand.even(10, List.of()),
                        Studies.PRICES,
                        BANK,
                        "The number of kinds of bottles (0) must be 1 to 100."),
                with(
                        Demand.even(10, List.of(Studies.bottle("B1", 5, 100, 90, 150))),
                        Studies.PRICES,
                        BANK,
                        "The highest start reading of bottle B1 (90 bar) must be 100 bar to 150 bar."),
                with(
                        Demand.even(10, List.of(Studies.bottle("B1", 5_000, 10, 90, 150))),
                        Studies.PRICES,
                        BANK,
                        "The water volume of bottle B1 (5000 L) must be 0.05 L to 300 L."));
    }

    private static Stream<Arguments> wrongWays() {
        return Stream.of(
                with(
                        DEMAND,
                        Studies.PRICES,
                        new Alternative("A", 0, SUPPLY, ExchangeHabit.oneAtATime()),
                        "The bank size of alternative A (0) must be 1 to 64."),
                with(
                        DEMAND,
                        Studies.PRICES,
                        new Alternative("A", 1, SUPPLY, ExchangeHabit.inPairs()),
                        "The number of supplies in a delivery of alternative A (2) must be 1."),
                with(
                        DEMAND,
                        Studies.PRICES,
                        new Alternative("A", 2, SUPPLY, new ExchangeHabit(When.LOWEST_AT_RESIDUAL, 1, null)),
                        "The exchange habit of alternative A must name a residual when it waits for one, and only then."),
                with(
                        DEMAND,
                        Studies.PRICES,
                        new Alternative("A", 2, SUPPLY, ExchangeHabit.atResidual(GaugePressure.ofBar(190), 1)),
                        "The residual of alternative A (190 bar) must be 0 bar to 140 bar."),
                with(
                        DEMAND,
                        Studies.PRICES,
                        new Alternative(
                                "A",
                                2,
                                0,
                                SUPPLY,
                                ExchangeHabit.oneAtATime(),
                                new Booster(GaugePressure.ofBar(210), 1, 1, 1)),
                        "The inlet of alternative A (210 bar) must be 0 bar to 200 bar."));
    }

    private static Stream<Arguments> wrongAsAWhole() {
        return Stream.of(
                Arguments.of(
                        new StudyRequest(Studies.REAL, DEMAND, Studies.PRICES, List.of(BANK, BANK), EXTENT),
                        "The name \"A\" is given to more than one alternative."),
                Arguments.of(
                        new StudyRequest(Studies.REAL, DEMAND, Studies.PRICES, List.of(), EXTENT),
                        "The number of alternatives (0) must be 1 to 100."),
                Arguments.of(
                        new StudyRequest(Studies.REAL, DEMAND, Studies.PRICES, List.of(BANK), Extent.of(2, 1, 1)),
                        "The number of runs (1) must be 2 to 10,000,000."),
                Arguments.of(
                        at(new BenchTemperature(Temperature.ofCelsius(-100), 60, 1, 0)),
                        "The coldest bench temperature (113.15 K) must be 160 to 2,000 K."),
                Arguments.of(
                        at(new BenchTemperature(new Temperature(10), 0, 1, 0)),
                        "The mean bench temperature (-263 C) must be"),
                Arguments.of(
                        new StudyRequest(
                                new Site(
                                        Oxygen.schmidtWagner(),
                                        BenchTemperature.constant(Studies.ROOM),
                                        Studies.ROOM,
                                        Studies.IDEAL.ambient(),
                                        Volume.ofLitres(50)),
                                DEMAND,
                                Studies.PRICES,
                                List.of(BANK),
                                EXTENT),
                        "The hose volume (50 L) must be 0 L to 10 L."));
    }

    private static StudyRequest at(BenchTemperature bench) {
        return new StudyRequest(
                Site.of(Oxygen.schmidtWagner(), bench, Studies.ROOM), DEMAND, Studies.PRICES, List.of(BANK), EXTENT);
    }

    private static Demand months(int count, double factor) {
        return new Demand(10, 0, Collections.nCopies(count, factor), Demand.EVERY_DAY_ALIKE, DEMAND.bottles());
    }

    private static Arguments with(Demand demand, Prices prices, Alternative way, String sentence) {
        return Arguments.of(new StudyRequest(Studies.REAL, demand, prices, List.of(way), EXTENT), sentence);
    }

    @ParameterizedTest
    @MethodSource
    void wrong(StudyRequest request, String sentence) {
        StudyOutcome outcome = Studying.study(request, 1, StudyWatch.NONE);
        assertThat(outcome).isInstanceOf(StudyOutcome.Refused.class);
        Objection why = ((StudyOutcome.Refused) outcome).why();
        assertThat(why.inWords(ShownUnits.METRIC)).startsWith(sentence).contains(" Please ");
        assertThat(why.code()).matches("[a-z-]+");
    }
}
