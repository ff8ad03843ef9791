package org.lowfirst.web.gate;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.FindingLine;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.fitness.FitnessWord;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Reading;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;

/** Makes the page of a bottle before its fill. */
public final class Gates {

    private Gates() {}

    /**
     * @param report what the gate says
     * @param reading what the bottle reads; null when nobody read it
     * @param form the wish for the fill, and what was typed on this page
     */
    public static GatePage page(
            Workplace workplace,
            BenchNow now,
            Bottle bottle,
            FitnessReport report,
            @Nullable Reading reading,
            Form form) {
        boolean refused = report.word().refused();
        return new GatePage(
                now.place(),
                new GatePage.BottleLine(
                        bottle.id().value(),
                        bottle.details().name(),
                        reading == null ? "" : now.figures().asTyped(reading.pressure())),
                VerdictSheet.of(report),
                refused ? List.of() : report.questions(),
                new GatePage.Acts(
                        !report.toSetAside().isEmpty(),
                        advises(report.lines().refusals(), Advice.INSPECT_AND_CLEAN_FIRST),
                        advises(report.lines().refusals(), Advice.HAMMER_TEST_FIRST),
                        !refused,
                        report.word() == FitnessWord.NOT_ENTERED || report.word() == FitnessWord.UNFIT),
                form,
                workplace.ids().next());
    }

    private static boolean advises(List<FindingLine> lines, Advice advice) {
        return lines.stream().anyMatch(line -> line.advice() == advice);
    }
}
