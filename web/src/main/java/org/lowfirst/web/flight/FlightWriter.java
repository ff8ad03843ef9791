package org.lowfirst.web.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.FlightOutcome;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.FlightRequest;
import org.lowfirst.planning.flight.Leg;
import org.lowfirst.planning.flight.Need;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.Span;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.flight.FlightPage.FlightSheet;
import org.lowfirst.web.flight.FlightPage.LegLine;
import org.lowfirst.web.flight.FlightPage.SumLine;
import org.lowfirst.web.picture.FlightPicture;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes the oxygen of a flight for people. */
final class FlightWriter {

    private static final Altitude NO_UPPER_END = Altitude.ofFeet(60_000);
    private static final int ALL = 100;
    /** Minutes; far below what a clock shows. */
    private static final double ROUNDING = 1e-6;

    private final BenchNow now;
    private final Words words;
    private final Figures figures;
    private final Benches benches;
    private final FlightRequest request;
    private final String temperatureTyped;
    private final boolean feet;

    /** @param temperatureTyped of the bottles; empty for the usual one */
    FlightWriter(BenchNow now, Benches benches, FlightRequest request, String temperatureTyped, boolean feet) {
        this.now = now;
        this.words = now.words();
        this.figures = now.figures();
        this.benches = benches;
        this.request = request;
        this.temperatureTyped = temperatureTyped;
        this.feet = feet;
    }

    FlightSheet sheet(FlightPlan plan) {
        List<Need> needs =
                plan.needs().stream().filter(need -> speaks(need.rule())).toList();
        return new FlightSheet(
                plan.covered(),
                plan.covered()
                        ? words.of("flight.covered", litres(plan.usableLitres()), litres(plan.neededLitres()))
                        : words.of(
                                "flight.not-covered",
                                litres(plan.shortLitres()),
                                litres(plan.usableLitres()),
                                litres(plan.neededLitres())),
                plan.gaps().stream().map(this::gap).toList(),
                picture(plan, needs).draw(),
                legs(plan),
                List.of(
                        new SumLine(words.of("flight.sum.flight"), litres(plan.usedLitres())),
                        new SumLine(
                                words.of("flight.sum.margin", figures.number(request.marginPercent(), 0)),
                                litres(plan.marginLitres())),
                        new SumLine(
                                words.of("flight.sum.reserve", request.reserve().toMinutes()),
                                litres(plan.reserveLitres())),
                        new SumLine(words.of("flight.sum.needed"), litres(plan.neededLitres()))),
                plan.occupants().stream()
                        .map(use -> new SumLine(use.name(), litres(use.litres())))
                        .toList(),
                new BottlesToFill(now, benches, request, temperatureTyped).lines(plan),
                times(plan),
                needs.isEmpty()
                        ? List.of(words.of("flight.need.none"))
                        : needs.stream().map(this::need).toList(),
                List.of(
                        words.of("flight.unknown.people"),
                        words.of("flight.unknown.device"),
                        words.of(
                                request.rules().stream()
                                                .anyMatch(rule -> rule.set().equals("eu-nco"))
                                        ? "flight.unknown.rules.nco"
                                        : "flight.unknown.rules"),
                        words.of("flight.unknown.cold", figures.temperature(request.temperature()))),
                words.of("flight.condition", now.condition(request.litres())));
    }

    String refusal(FlightOutcome.Refused refused) {
        String key = "fault.flight."
                + refused.problem().name().toLowerCase(Locale.ROOT).replace('_', '-');
        boolean pressure = refused.unit().startsWith("Pa");
        return words.of(
                key,
                refused.subject(),
                pressure
                        ? figures.pressureWithUnit(new GaugePressure(refused.measured()))
                        : measured(refused.measured(), refused),
                pressure
                        ? figures.pressureWithUnit(new GaugePressure(refused.limit()))
                        : measured(refused.limit(), refused));
    }

    private String measured(double value, FlightOutcome.Refused refused) {
        return refused.unit().equals("K")
                ? figures.temperature(new Temperature(value))
                : figures.number(value, 0) + " " + refused.unit();
    }

    private boolean speaks(OxygenRule rule) {
        return request.occupants().stream().anyMatch(who -> who.role() == rule.role());
    }

    private List<LegLine> legs(FlightPlan plan) {
        List<LegLine> lines = new ArrayList<>();
        double end_s = 0.0;
        String last = "";
        int use = 0;
        for (Leg leg : request.profile().legs()) {
            end_s += leg.duration().toNanos() / 1e9;
            String altitude = altitude(leg.to());
            if (!lines.isEmpty() && last.equals(leg.name())) {
                LegLine before = lines.remove(lines.size() - 1);
                lines.add(new LegLine(before.name(), clock(end_s), altitude, before.litres()));
            } else {
                lines.add(new LegLine(
                        leg.name(),
                        clock(end_s),
                        altitude,
                        litres(plan.legs().get(use).litres())));
                use++;
            }
            last = leg.name();
        }
        return lines;
    }

    private List<String> times(FlightPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(plan.turn().map(at -> words.of("flight.turn", before(at))).orElse(words.of("flight.turn.never")));
        lines.add(plan.reserveTouched()
                .map(at -> words.of("flight.reserve", before(at)))
                .orElse(words.of("flight.reserve.never")));
        lines.add(plan.emptied()
                .map(at -> words.of("flight.emptied", before(at)))
                .orElse(words.of("flight.emptied.never")));
        plan.highestFlowMinutes().ifPresent(minutes -> lines.add(words.of("flight.endurance", before(minutes * 60.0))));
        return lines;
    }

    private String need(Need need) {
        OxygenRule rule = need.rule();
        String names = request.occupants().stream()
                .filter(who -> who.role() == rule.role())
                .map(Occupant::name)
                .collect(Collectors.joining(", "));
        String spans = need.spans().stream().map(this::span).collect(Collectors.joining(", "));
        String duty =
                words.of(rule.duty() == OxygenRule.Duty.USE ? "flight.need.use" : "flight.need.provide", names, spans);
        return duty + " "
                + words.of("flight.need.rule", who(rule), rule.reference(), words.of("flight.status." + rule.status()));
    }

    private String who(OxygenRule rule) {
        String role = words.of(rule.role() == Occupant.Role.CREW ? "flight.role.crews" : "flight.role.passengers");
        String share = rule.sharePercent() == ALL ? role : words.of("flight.need.share", role, rule.sharePercent());
        String band = rule.upTo().compareTo(NO_UPPER_END) >= 0
                ? words.of("flight.need.above", share, altitude(rule.above()))
                : words.of("flight.need.band", share, altitude(rule.above()), altitude(rule.upTo()));
        return rule.after().isZero()
                ? band
                : words.of("flight.need.after", band, rule.after().toMinutes());
    }

    private String gap(FlightPlan.Gap gap) {
        return words.of(
                "flight.gap", gap.occupant(), span(gap.span()), gap.rule().reference());
    }

    private FlightPicture picture(FlightPlan plan, List<Need> needs) {
        List<FlightPicture.Point> points = new ArrayList<>();
        double at_s = 0.0;
        for (Leg leg : request.profile().legs()) {
            if (points.isEmpty()) {
                points.add(new FlightPicture.Point(0, number(leg.from())));
            }
            at_s += leg.duration().toNanos() / 1e9;
            points.add(new FlightPicture.Point(at_s / 60, number(leg.to())));
        }
        List<FlightPicture.Row> rows = needs.stream()
                .map(need -> new FlightPicture.Row(
                        words.of(
                                need.rule().duty() == OxygenRule.Duty.USE
                                        ? "flight.picture.use"
                                        : "flight.picture.provide",
                                words.of(
                                        need.rule().role() == Occupant.Role.CREW
                                                ? "flight.role.crews"
                                                : "flight.role.passengers"),
                                altitude(need.rule().above())),
                        need.spans().stream().map(FlightWriter::minutes).toList(),
                        plan.gaps().stream()
                                .filter(gap -> gap.rule().equals(need.rule()))
                                .map(gap -> minutes(gap.span()))
                                .toList()))
                .toList();
        return new FlightPicture(
                points,
                rows,
                plan.turn().map(seconds -> seconds / 60).orElse(-1.0),
                new FlightPicture.Wording(
                        words.of(
                                "flight.picture.said",
                                clock(at_s),
                                altitude(request.profile().highest())),
                        words.of("flight.picture.title", feet ? "ft" : "m"),
                        words.of("flight.picture.time"),
                        words.of("flight.picture.turn")));
    }

    private static FlightPicture.Span minutes(Span span) {
        return new FlightPicture.Span(span.fromSeconds() / 60, span.toSeconds() / 60);
    }

    private String span(Span span) {
        return words.of("forecast.span", before(span.fromSeconds()), after(span.toSeconds()));
    }

    private String altitude(Altitude altitude) {
        return figures.number(feet ? 10 * Math.rint(altitude.toFeet() / 10) : altitude.metres(), 0)
                + (feet ? " ft" : " m");
    }

    private double number(Altitude altitude) {
        return feet ? altitude.toFeet() : altitude.metres();
    }

    private String litres(double litres) {
        return figures.number(litres, 0) + " L";
    }

    private static String clock(double seconds) {
        return hoursAndMinutes(Math.round(seconds / 60.0));
    }

    /** The whole minute at or before: for what must not come later. */
    private static String before(double seconds) {
        return hoursAndMinutes((long) Math.floor(seconds / 60.0 + ROUNDING));
    }

    /** The whole minute at or after: for what must not end sooner. */
    private static String after(double seconds) {
        return hoursAndMinutes((long) Math.ceil(seconds / 60.0 - ROUNDING));
    }

    private static String hoursAndMinutes(long minutes) {
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
