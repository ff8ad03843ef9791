package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Short ways to say a study, for tests. */
final class Studies {

    static final Temperature ROOM = Temperature.ofCelsius(15);
    static final Site IDEAL = Site.of(new IdealGas("oxygen", 0.0319988), BenchTemperature.constant(ROOM), ROOM);
    static final Site REAL = Site.of(
            Oxygen.schmidtWagner(),
            new BenchTemperature(Temperature.ofCelsius(10), 12, 200, 4),
            Temperature.ofCelsius(15));
    static final Prices PRICES = new Prices(35, 0, 20, 90, 10);

    private Studies() {}

    /** Rated well above its target. */
    static BottleUse bottle(String name, double litres, double startLowest, double startHighest, double target) {
        return new BottleUse(
                name,
                Volume.ofLitres(litres),
                GaugePressure.ofBar(300),
                GaugePressure.ofBar(target),
                GaugePressure.ofBar(startLowest),
                GaugePressure.ofBar(startHighest),
                1);
    }

    static BottleUse bottle(double litres, double start, double target, PressureUnit unit) {
        GaugePressure wanted = GaugePressure.of(target, unit);
        GaugePressure found = GaugePressure.of(start, unit);
        return new BottleUse("bottle", Volume.ofLitres(litres), wanted, wanted, found, found, 1);
    }

    static SupplyKind supply(double litres, double bar) {
        return new SupplyKind("supply", Volume.ofLitres(litres), GaugePressure.ofBar(bar), 60, 0.25);
    }

    /** Three kinds of bottles, busy summers and weekends, good and bad years. */
    static Demand mixed(double fillsPerYear) {
        return new Demand(
                fillsPerYear,
                0.2,
                List.of(0.1, 0.2, 0.8, 1.2, 1.6, 1.7, 1.7, 1.6, 1.3, 0.9, 0.4, 0.1),
                List.of(0.3, 0.3, 0.5, 0.5, 1.0, 2.2, 2.2),
                List.of(
                        bottle("small", 2, 20, 90, 150),
                        bottle("middle", 3, 20, 90, 150),
                        bottle("large", 5, 40, 110, 150)));
    }

    static StudyResult done(StudyRequest request) {
        return done(Studying.study(request, 2, StudyWatch.NONE));
    }

    static StudyResult done(StudyOutcome outcome) {
        assertThat(outcome).isInstanceOf(StudyResult.class);
        return (StudyResult) outcome;
    }
}
