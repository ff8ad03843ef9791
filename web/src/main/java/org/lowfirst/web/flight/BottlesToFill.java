package org.lowfirst.web.flight;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.PlanningAFill.Wanted;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.flight.BottleOnBoard;
import org.lowfirst.planning.flight.FillingForAFlight;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.FlightRequest;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.flight.FlightPage.BottleLine;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Which bottles on board are to be filled for the flight, and whether the bank can fill them one after another. */
final class BottlesToFill {

    private final BenchNow now;
    private final Words words;
    private final Figures figures;
    private final Benches benches;
    private final FlightRequest request;
    private final String temperatureTyped;

    BottlesToFill(BenchNow now, Benches benches, FlightRequest request, String temperatureTyped) {
        this.now = now;
        this.words = now.words();
        this.figures = now.figures();
        this.benches = benches;
        this.request = request;
        this.temperatureTyped = temperatureTyped;
    }

    /** One line for each bottle; those to be filled in the order in which the bank does them. */
    List<BottleLine> lines(FlightPlan plan) {
        List<BottleOnBoard> bottles = request.bottles();
        List<GaugePressure> full = bottles.stream().map(this::full).toList();
        Optional<List<GaugePressure>> readings =
                FillingForAFlight.readings(request, plan, Oxygen.schmidtWagner(), full);
        List<BottleLine> lines = new ArrayList<>();
        List<Integer> toFill = new ArrayList<>();
        for (int i = 0; i < bottles.size(); i++) {
            BottleOnBoard bottle = bottles.get(i);
            if (readings.isEmpty()) {
                lines.add(new BottleLine(bottle.name(), gives(plan, full, i), words.of("flight.bottle.never"), "", ""));
            } else if (readings.get().get(i).compareTo(bottle.reading()) > 0) {
                toFill.add(i);
            } else {
                lines.add(
                        new BottleLine(bottle.name(), gives(plan, full, i), words.of("flight.bottle.enough"), "", ""));
            }
        }
        List<StatedPressure> targets =
                readings.orElse(List.of()).stream().map(this::target).toList();
        List<PlanOutcome> outcomes = ordered(toFill, targets);
        for (int i = 0; i < toFill.size(); i++) {
            int place = toFill.get(i);
            lines.add(fill(bottles.get(place), gives(plan, full, place), targets.get(place), outcomes.get(i), i > 0));
        }
        return lines;
    }

    private String gives(FlightPlan plan, List<GaugePressure> full, int place) {
        BottleOnBoard bottle = request.bottles().get(place);
        return words.of(
                "flight.bottle.gives",
                figures.pressureWithUnit(bottle.reading()),
                figures.number(plan.bottles().get(place).litres(), 0) + " L",
                figures.pressureWithUnit(bottle.keep()),
                figures.pressureWithUnit(full.get(place)));
    }

    /** In the order given, or backwards when only that makes all of them; {@code toFill} is turned round with it. */
    private List<PlanOutcome> ordered(List<Integer> toFill, List<StatedPressure> targets) {
        List<PlanOutcome> asListed = planned(toFill, targets);
        if (asListed.stream().allMatch(BottlesToFill::reaches)) {
            return asListed;
        }
        List<Integer> backwards = new ArrayList<>(toFill);
        Collections.reverse(backwards);
        List<PlanOutcome> turned = planned(backwards, targets);
        if (!turned.stream().allMatch(BottlesToFill::reaches)) {
            return asListed;
        }
        Collections.reverse(toFill);
        return turned;
    }

    private List<PlanOutcome> planned(List<Integer> places, List<StatedPressure> targets) {
        return benches.planningAFill()
                .oneAfterAnother(
                        now.id(),
                        places.stream()
                                .map(place -> wanted(request.bottles().get(place), targets.get(place)))
                                .toList());
    }

    private static boolean reaches(PlanOutcome outcome) {
        return outcome instanceof FillPlan plan && plan.reaches();
    }

    private Wanted wanted(BottleOnBoard bottle, StatedPressure target) {
        StatedPressure before =
                new StatedPressure(new BigDecimal(figures.toType(bottle.reading())), figures.pressureUnitOf());
        StatedTemperature temperature =
                new StatedTemperature(BigDecimal.valueOf(request.temperature().kelvin()), TemperatureUnit.KELVIN);
        return new Wanted(known(bottle).id(), target, now.reading(before, temperature));
    }

    private Bottle known(BottleOnBoard bottle) {
        return now.bench().listBottles().stream()
                .filter(one -> one.details().name().equals(bottle.name()))
                .findFirst()
                .orElseThrow();
    }

    /** One unit above, so that what is typed is not below what is needed. */
    private StatedPressure target(GaugePressure needed) {
        return new StatedPressure(new BigDecimal(figures.toType(needed)).add(BigDecimal.ONE), figures.pressureUnitOf());
    }

    private BottleLine fill(
            BottleOnBoard bottle, String gives, StatedPressure target, PlanOutcome outcome, boolean another) {
        String bank;
        if (outcome instanceof FillPlan plan) {
            bank = plan.reaches()
                    ? words.of(another ? "flight.bank.can.after" : "flight.bank.can")
                    : words.of(
                            another ? "flight.bank.cannot.after" : "flight.bank.cannot",
                            figures.pressureWithUnit(plan.fill().finalReading()));
        } else {
            bank = ((PlanRefused) outcome).inWords(now.shownUnits());
        }
        String link = "/fill/plan?bottle=" + known(bottle).id() + "&before=" + figures.toType(bottle.reading())
                + "&target=" + figures.toType(target.gauge())
                + (temperatureTyped.isEmpty()
                        ? ""
                        : "&temperature=" + URLEncoder.encode(temperatureTyped, StandardCharsets.UTF_8));
        return new BottleLine(
                bottle.name(),
                gives,
                words.of("flight.bottle.needs", figures.pressureWithUnit(target.gauge())),
                bank,
                now.place().path(link));
    }

    /** What a full one shows at the temperature of the flight; a marked pressure counts at the reference temperature. */
    private GaugePressure full(BottleOnBoard bottle) {
        Conditions conditions = new Conditions(
                Oxygen.schmidtWagner(),
                request.temperature(),
                now.bench().settings().rules().figures().referenceTemperature().temperature(),
                StandardAtmosphere.PRESSURE,
                new Volume(0.0));
        FillPlanner planner = FillPlanner.under(conditions);
        return planner.refused() == null
                ? planner.stop(bottle.servicePressure(), bottle.servicePressure())
                        .reading()
                : bottle.servicePressure();
    }
}
