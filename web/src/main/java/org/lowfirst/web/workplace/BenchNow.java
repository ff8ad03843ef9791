package org.lowfirst.web.workplace;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.warm.SnapOpening;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.Units;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.figures.Times;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.words.Words;

/**
 * One bench as one request sees it, with what is needed to write about it.
 *
 * @param bench state of the bench
 * @param words words of the reader's language
 * @param times how times are written
 * @param now when the request came
 */
public record BenchNow(Bench bench, Words words, Times times, Instant now) {

    public BenchId id() {
        return bench.id();
    }

    public Figures figures() {
        return new Figures(bench.settings().units(), words.locale());
    }

    /** Units and language of sentences about plans. */
    public ShownUnits shownUnits() {
        Units units = bench.settings().units();
        return new ShownUnits(units.pressure(), units.temperature(), units.volume(), words.locale());
    }

    public Place place() {
        return new Place(
                bench.id().value(), bench.settings().name(), bench.settings().people());
    }

    /** What a gauge showed just now; without a temperature the bench's usual one stands in and is marked as assumed. */
    public Reading reading(StatedPressure pressure, @Nullable StatedTemperature temperature) {
        return reading(pressure, temperature, null);
    }

    /** @param gauge name of the gauge it was read off; null for the one usually read there */
    public Reading reading(StatedPressure pressure, @Nullable StatedTemperature temperature, @Nullable String gauge) {
        StatedTemperature usual = bench.settings().surroundings().usualTemperature();
        return new Reading(pressure, now, temperature == null ? usual : temperature, temperature == null, gauge);
    }

    /** What is wrong with a reading beyond the scale of the gauge that is read there; empty when nothing is. */
    public Optional<String> offScale(CylinderId cylinder, StatedPressure pressure) {
        return bench.findGauge(cylinder, reading(pressure, null))
                .filter(gauge -> pressure.compareTo(gauge.fullScale()) > 0)
                .map(gauge -> words.of(
                        "rule.reading_above_full_scale",
                        gauge.name(),
                        figures().asTyped(pressure),
                        figures().asTyped(gauge.fullScale())));
    }

    /** What day it is at the bench. */
    public LocalDate today() {
        return LocalDate.ofInstant(now, times.zone());
    }

    /** How long ago something was, e.g. "5 min ago". */
    public String age(Instant then) {
        return times.age(then, now);
    }

    /** Free gas of an amount in the bench's unit, e.g. "580 L". */
    public String gas(Amount amount) {
        return figures().gas(Oxygen.schmidtWagner().freeVolume(amount, reference()));
    }

    /** The condition {@link #gas} is stated at, e.g. "15 C, 1.013 bar". */
    public String gasCondition() {
        return condition(reference());
    }

    /** A condition free gas is stated at, in words. */
    public String condition(ReferenceCondition condition) {
        return words.of(condition.equals(ReferenceCondition.US_70F_1ATM) ? "gas.condition.us" : "gas.condition.eu");
    }

    /**
     * What gas comes to in theory when it is let in at once against a dead end; empty when the model has no answer there.
     *
     * @param supply gauge pressure of the gas
     * @param temperature of the bench
     */
    public Optional<SnapOpening> snap(GaugePressure supply, Temperature temperature) {
        AbsolutePressure ambient = bench.settings().surroundings().ambient().absolute();
        return SnapOpening.of(ambient, temperature, supply.toAbsolute(ambient), Oxygen.schmidtWagner())
                        instanceof Answer.Given<SnapOpening> given
                ? Optional.of(given.value())
                : Optional.empty();
    }

    private ReferenceCondition reference() {
        return bench.settings().rules() == RuleSet.US
                ? ReferenceCondition.US_70F_1ATM
                : ReferenceCondition.ISO_15C_1ATM;
    }
}
