package org.lowfirst.planning.study;

import java.util.Arrays;
import org.lowfirst.planning.study.kernel.Draws;

/** The bottles of one run, in the order they come: drawn once, met by every alternative. */
final class DrawnDemand {

    private int count;
    private double[] time_d;
    private int[] kind;
    private int[] band;
    private double[] start_molPerM3;

    private DrawnDemand(int expected) {
        time_d = new double[expected];
        kind = new int[expected];
        band = new int[expected];
        start_molPerM3 = new double[expected];
    }

    static DrawnDemand of(StudyRequest request, Numbers numbers, long run) {
        Extent extent = request.extent();
        int years = extent.years() + extent.warmUpYears();
        double mean = request.demand().fillsPerYear() * years;
        DrawnDemand drawn = new DrawnDemand((int) (mean + 5.0 * Math.sqrt(mean) + 8.0));
        drawn.draw(request, numbers, years, run);
        return drawn;
    }

    private void draw(StudyRequest request, Numbers numbers, int years, long run) {
        long seed = request.extent().seed();
        Draws bottles = Stream.BOTTLES.of(seed, run);
        Draws weather = Stream.WEATHER.of(seed, run);
        Draws business = Stream.BUSINESS.of(seed, run);
        double ahead = bottles.exponential();
        for (int year = 0; year < years; year++) {
            double factor = yearFactor(business, request.demand().yearSpread());
            for (int dayOfYear = 0; dayOfYear < Calendar.DAYS; dayOfYear++) {
                int day = year * Calendar.DAYS + dayOfYear;
                int today = numbers.bands().of(temperature_K(request.site().temperature(), dayOfYear, weather));
                double mean = factor * numbers.calendar().meanOn(day);
                double left = mean;
                while (ahead < left) {
                    left -= ahead;
                    add(numbers, bottles, day + 1.0 - left / mean, today);
                    ahead = bottles.exponential();
                }
                ahead -= left;
            }
        }
    }

    private void add(Numbers numbers, Draws bottles, double when_d, int today) {
        if (count == time_d.length) {
            int more = count + count / 2 + 8;
            time_d = Arrays.copyOf(time_d, more);
            kind = Arrays.copyOf(kind, more);
            band = Arrays.copyOf(band, more);
            start_molPerM3 = Arrays.copyOf(start_molPerM3, more);
        }
        int picked = numbers.kinds().picked(bottles.uniform());
        double start_Pa = numbers.kinds().start_Pa(picked, bottles.uniform());
        time_d[count] = when_d;
        kind[count] = picked;
        band[count] = today;
        start_molPerM3[count] = numbers.bands().density_molPerM3(today, start_Pa);
        count++;
    }

    /** A gamma factor with mean 1. */
    private static double yearFactor(Draws business, double spread) {
        if (spread == 0.0) {
            return 1.0;
        }
        double shape = 1.0 / (spread * spread);
        return business.gamma(shape) / shape;
    }

    private static double temperature_K(BenchTemperature bench, int dayOfYear, Draws weather) {
        double wave = bench.swing_K() == 0.0
                ? 0.0
                : bench.swing_K() * Math.cos(2.0 * Math.PI * (dayOfYear + 1 - bench.warmestDay()) / Calendar.DAYS);
        double chance = bench.dailySpread_K() == 0.0
                ? 0.0
                : bench.dailySpread_K() * Math.max(-Bands.CUT, Math.min(Bands.CUT, weather.normal()));
        return bench.mean().kelvin() + wave + chance;
    }

    int count() {
        return count;
    }

    /** Days since the start of the run. */
    double time_d(int fill) {
        return time_d[fill];
    }

    int kind(int fill) {
        return kind[fill];
    }

    int band(int fill) {
        return band[fill];
    }

    double start_molPerM3(int fill) {
        return start_molPerM3[fill];
    }
}
