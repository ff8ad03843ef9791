package org.lowfirst.app.virtual;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.lowfirst.gas.Temperature;

/**
 * The air of a room over days: a mean, a daily swing that is warmest at 15:00 UTC, and weather that lasts (each day keeps 0.8 of
 * the day before). Between two days it goes straight. Not thread-safe.
 */
public final class VirtualRoom {

    private static final double KEPT = 0.8;
    private static final double WARMEST_H = 15.0;
    private static final double DAY_S = 86_400.0;

    private final Instant start;
    private final Temperature mean;
    private final double swing_K;
    private final double weather_K;
    private final SplittableRandom chance;
    private final List<Double> days_K = new ArrayList<>();

    /**
     * @param start first moment asked for
     * @param swing_K half the difference between afternoon and night [K]
     * @param weather_K standard deviation of the weather from day to day, in the long run [K]
     */
    public VirtualRoom(Instant start, Temperature mean, double swing_K, double weather_K, SplittableRandom chance) {
        this.start = start;
        this.mean = mean;
        this.swing_K = swing_K;
        this.weather_K = weather_K;
        this.chance = chance;
        days_K.add(weather_K * chance.nextGaussian());
    }

    /** The air at a moment not before the start. */
    public Temperature at(Instant when) {
        double days = Duration.between(start, when).toMillis() / 1000.0 / DAY_S;
        if (days < 0.0) {
            throw new IllegalArgumentException("The room is asked for " + when + ", before " + start + ".");
        }
        int day = (int) days;
        double weather = day_K(day) + (days - day) * (day_K(day + 1) - day_K(day));
        double hour = Math.floorMod(when.getEpochSecond(), (long) DAY_S) / 3600.0;
        double swing = swing_K * Math.cos(2.0 * Math.PI * (hour - WARMEST_H) / 24.0);
        return new Temperature(mean.kelvin() + weather + swing);
    }

    private double day_K(int day) {
        while (days_K.size() <= day) {
            double before = days_K.get(days_K.size() - 1);
            days_K.add(KEPT * before + Math.sqrt(1.0 - KEPT * KEPT) * weather_K * chance.nextGaussian());
        }
        return days_K.get(day);
    }
}
