package org.lowfirst.web.gate;

import java.util.List;
import org.lowfirst.app.fitness.FindingLine;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.fitness.FitnessWord;

/**
 * The verdict on a bottle as a page shows it.
 *
 * @param tag word and shape
 * @param notEntered whether nobody has entered its marking, so that most of what is refused is only not known
 * @param refusals what is against it and what to do
 * @param caps what keeps the fill below what was wanted
 * @param notes what is to be known
 * @param setAside what a second person took on
 * @param inOrder rules that passed
 */
public record VerdictSheet(
        FitTag tag,
        boolean notEntered,
        List<FindingLine> refusals,
        List<FindingLine> caps,
        List<FindingLine> notes,
        List<FindingLine> setAside,
        List<FindingLine> inOrder) {

    public static VerdictSheet of(FitnessReport report) {
        FitnessReport.Lines lines = report.lines();
        return new VerdictSheet(
                FitTag.of(report),
                report.word() == FitnessWord.NOT_ENTERED,
                lines.refusals(),
                lines.caps(),
                lines.notes(),
                lines.setAside(),
                lines.inOrder());
    }
}
