package org.lowfirst.planning.contents;

import org.lowfirst.gas.Temperature;

/**
 * How well the temperature of the gas is known, and which temperatures are accepted.
 *
 * @param measured_K standard deviation beside a settled cylinder [K]
 * @param assumed_K standard deviation when taken over from earlier or elsewhere [K]
 * @param warmModelled_K standard deviation of a heat model's temperature of warm gas [K]
 * @param warmRise_K how much warmer than the bench gas is after a fill when nothing else is known [K]
 * @param warmUnknown_K standard deviation of that [K]
 * @param drawnDrop_K how much colder than the bench gas in a supply just drawn from is [K]
 * @param drawn_K standard deviation of that [K]
 * @param range accepted temperatures
 */
public record TemperatureAssumptions(
        double measured_K,
        double assumed_K,
        double warmModelled_K,
        double warmRise_K,
        double warmUnknown_K,
        double drawnDrop_K,
        double drawn_K,
        TemperatureRange range) {

    static TemperatureAssumptions read(SettingsFile file) {
        return new TemperatureAssumptions(
                file.positive("temperature.measured.sd_K"),
                file.positive("temperature.assumed.sd_K"),
                file.positive("temperature.warmModelled.sd_K"),
                file.positive("temperature.warmUnknown.rise_K"),
                file.positive("temperature.warmUnknown.sd_K"),
                file.positive("temperature.drawn.drop_K"),
                file.positive("temperature.drawn.sd_K"),
                new TemperatureRange(
                        Temperature.ofCelsius(file.number("temperature.lowest_C")),
                        Temperature.ofCelsius(file.number("temperature.highest_C"))));
    }
}
