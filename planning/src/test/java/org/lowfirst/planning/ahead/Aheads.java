package org.lowfirst.planning.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;

/** Short ways to say a look ahead, for tests. */
final class Aheads {

    static final LocalDate TODAY = LocalDate.of(2026, 4, 1);
    static final Conditions CONDITIONS =
            Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(15), ReferenceRule.EU);
    static final UsualFill USUAL = usual("club", 3);

    private Aheads() {}

    static UsualFill usual(String name, double litres) {
        return new UsualFill(
                name,
                Volume.ofLitres(litres),
                GaugePressure.ofBar(200),
                GaugePressure.ofBar(40),
                GaugePressure.ofBar(150));
    }

    static List<SupplyState> bank(double... bars) {
        return java.util.stream.IntStream.range(0, bars.length)
                .mapToObj(i -> new SupplyState("S" + i, Volume.ofLitres(50), GaugePressure.ofBar(bars[i])))
                .toList();
    }

    static AheadRequest request(UseHistory history, Ordering ordering, long seed, double... bars) {
        return new AheadRequest(
                CONDITIONS, bank(bars), history, List.of(USUAL), List.of(), null, ordering, TODAY, seed);
    }

    static Forecast forecast(AheadOutcome outcome) {
        assertThat(outcome).isInstanceOf(Forecast.class);
        return (Forecast) outcome;
    }
}
