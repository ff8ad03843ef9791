package org.lowfirst.web.leaks;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.CheckingForLeaks.LeakCheck;
import org.lowfirst.planning.contents.LeakCheckLimits;
import org.lowfirst.planning.contents.TimedLeakCheck;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Reading;
import org.lowfirst.web.cylinder.CylinderChoice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.leaks.LeakCheckPage.Hold;
import org.lowfirst.web.leaks.LeakCheckPage.Result;
import org.lowfirst.web.leaks.LeakCheckPage.UnitWords;
import org.lowfirst.web.verdict.VerdictBadge;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/**
 * Writes the pages of one leak check.
 *
 * @param key key of the form
 */
record LeakCheckWriter(BenchNow now, LeakCheckLimits limits, String key) {

    LeakCheckPage begin(Form form) {
        return page(CylinderChoice.list(now), null, null, form);
    }

    LeakCheckPage hold(Fact.ReadingTaken first, long entry, Instant since, Form form) {
        return page(List.of(), holding(first, entry, since), null, form);
    }

    LeakCheckPage ended(Fact.ReadingTaken first, long entry, Instant since, Result result) {
        return page(List.of(), holding(first, entry, since), result, Form.blank());
    }

    Result result(LeakCheck check, Reading second) {
        TimedLeakCheck.Outcome outcome = check.check().outcome();
        String tone = switch (outcome) {
            case PASSED -> "calm";
            case FAILED -> "accuses";
            case NO_CHECK -> "watch";
        };
        String shape = switch (outcome) {
            case PASSED -> "M3 10.5L8 15.5L17 4.5";
            case FAILED -> "M10 1.5C6.5 7 4 9.5 4 12.8a6 6 0 0 0 12 0C16 9.5 13.5 7 10 1.5z";
            case NO_CHECK -> "M10 2L18.5 17.5H1.5z";
        };
        String name = words().of("leak-check." + outcome.name().toLowerCase(Locale.ROOT));
        return new Result(new VerdictBadge(name, tone, shape), check.sentences(), said(second));
    }

    private LeakCheckPage page(
            List<CylinderChoice> cylinders, @Nullable Hold hold, @Nullable Result result, Form form) {
        return new LeakCheckPage(
                now.place(),
                new UnitWords(now.figures().pressureUnit(), now.figures().temperatureUnit()),
                List.of(
                        words().of(
                                        "leak-check.limits",
                                        limits.settle().toMinutes(),
                                        limits.hold().toMinutes(),
                                        now.figures().pressureWithUnit(limits.mostDrop())),
                        words().of("leak-check.limits.temperature", change()),
                        words().of("leak-check.limits.source", limits.source())),
                cylinders,
                hold,
                result,
                form,
                key);
    }

    private String change() {
        double step = limits.temperatureChangeBelow_K();
        boolean fahrenheit = now.figures().temperatureUnit().equals("F");
        return now.figures().number(fahrenheit ? 1.8 * step : step, 1)
                + " "
                + now.figures().temperatureUnit();
    }

    private Hold holding(Fact.ReadingTaken first, long entry, Instant since) {
        Instant until = first.reading().at().plus(limits.hold());
        Duration left = Duration.between(now.now(), until);
        return new Hold(
                CylinderChoice.of(now, first.cylinder()).name(),
                now.place().path("/leak-check/hold?since=" + since + "&first=" + entry),
                said(first.reading()),
                now.times().clock(until),
                left.isNegative() || left.isZero() ? "" : words().of("leak-check.waiting", 1 + left.toMinutes()));
    }

    private String said(Reading reading) {
        return words().of(
                        "leak-check.read",
                        now.figures().asTyped(reading.pressure()),
                        now.figures().temperature(reading.temperature().temperature()),
                        now.times().full(reading.at()));
    }

    private Words words() {
        return now.words();
    }
}
