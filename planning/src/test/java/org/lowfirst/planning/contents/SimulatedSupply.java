package org.lowfirst.planning.contents;

import java.util.Random;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * A supply with hidden truth: its contents, the weather, a leak, the errors of its gauge and of the thermometer. The truth is
 * made with the real-gas equation; the errors follow the stated gauge and temperature assumptions.
 */
final class SimulatedSupply {

    /** Standard deviation of the day-to-day weather [K], and how much of it lasts to the next day. */
    private static final double WEATHER_K = 6.0;

    private static final double WEATHER_LASTS = 0.8;

    private final Random chance;
    private final MeteredCylinder cylinder;
    private final Gauge gauge;
    private final double offset_bar;
    private final double slope;
    private final double thermometerLasts;

    private double amount_mol;
    private double leakPerDay;
    private double weather_K;
    private double thermometer_K;
    private double day;
    private double shakier = 1.0;

    SimulatedSupply(Random chance, MeteredCylinder cylinder, Gauge gauge, double bar, double thermometerLasts) {
        this.chance = chance;
        this.cylinder = cylinder;
        this.gauge = gauge;
        this.thermometerLasts = thermometerLasts;
        double limit_bar = gauge.limit().toBar();
        this.offset_bar = limit_bar * (2.0 * chance.nextDouble() - 1.0);
        this.slope = limit_bar / gauge.scale().fullScale().toBar() * 2.0 * (2.0 * chance.nextDouble() - 1.0);
        this.weather_K = WEATHER_K * chance.nextGaussian();
        this.thermometer_K = chance.nextGaussian();
        this.amount_mol = cylinder.waterVolume().cubicMetres() * density(bar, 15.0);
    }

    private static double density(double bar, double celsius) {
        return Given.OXYGEN
                .gas()
                .density(GaugePressure.ofBar(bar).toAbsolute(Given.OXYGEN.ambient()), Temperature.ofCelsius(celsius))
                .orElseThrow()
                .molesPerCubicMetre();
    }

    void leak(double sharePerDay) {
        leakPerDay = sharePerDay;
    }

    /** The gauge scatters more than its class lets expect. */
    void shaky(double times) {
        shakier = times;
    }

    void pass(double days) {
        day += days;
        amount_mol *= Math.exp(-leakPerDay * days);
        weather_K = WEATHER_LASTS * weather_K
                + WEATHER_K * Math.sqrt(1.0 - WEATHER_LASTS * WEATHER_LASTS) * chance.nextGaussian();
        thermometer_K = thermometerLasts * thermometer_K
                + Math.sqrt(1.0 - thermometerLasts * thermometerLasts) * chance.nextGaussian();
    }

    double celsius() {
        return 12.0 + weather_K;
    }

    /** The true gauge pressure now [bar]. */
    double bar() {
        Density density = new Density(amount_mol / cylinder.waterVolume().cubicMetres());
        return Given.OXYGEN
                .gas()
                .pressure(density, Temperature.ofCelsius(celsius()))
                .orElseThrow()
                .toGauge(Given.OXYGEN.ambient())
                .toBar();
    }

    /** What a person writes down: gauge errors, rounding, and a thermometer that errs by the measured spread. */
    ContentsMeasurement read() {
        double true_bar = bar();
        double scatter_bar =
                shakier * Given.ASSUMED.gauges().repeatShare() * gauge.limit().toBar() * chance.nextGaussian();
        double step_bar = gauge.scale().resolution().toBar();
        double shown = true_bar + offset_bar + slope * (true_bar - 150.0) + scatter_bar;
        double written = Math.max(0.0, Math.rint(shown / step_bar) * step_bar);
        double thermometer = celsius() + Given.ASSUMED.temperatures().measured_K() * thermometer_K;
        return Given.measured(day, cylinder, gauge, written, Given.measured(thermometer));
    }
}
