package org.lowfirst.app.study;

import java.util.Locale;
import java.util.Optional;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile;
import org.lowfirst.app.file.Watch;
import org.lowfirst.app.plan.ObjectionPlaces;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.study.StudyOutcome;
import org.lowfirst.planning.study.StudyResult;
import org.lowfirst.planning.study.Studying;

/** Runs the study that a file asks for. */
public final class StudyingFromAFile {

    /** Fewer have no spread. */
    private static final int LEAST_RUNS = 2;

    private final EquationOfState gas;

    /** @param gas the gas in every cylinder */
    public StudyingFromAFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads and runs one study.
     *
     * @param name how problems name the file
     * @param bytes its content
     * @param threads how many work on it, at least 1; the answer does not depend on it
     * @param watch hears of the progress and may end it once two runs are done
     */
    public Asked<StudyDone> study(String name, byte[] bytes, int threads, Watch watch) {
        Problems problems = new Problems();
        QuestionFile opened = QuestionFile.open(name, bytes, StudyFileReader.SHAPE, problems);
        Optional<StudyFile> file =
                opened.section().flatMap(section -> new StudyFileReader(gas, problems).read(section));
        if (file.isEmpty()) {
            return opened.refused(problems);
        }
        StudyOutcome outcome = Studying.study(
                file.get().request(),
                threads,
                (done, runs) -> done < LEAST_RUNS
                        || watch.goOn(String.format(Locale.ROOT, "run %,d of %,d", done, runs), (double) done / runs));
        if (outcome instanceof StudyResult result) {
            return opened.answered(new StudyDone(file.get(), result), problems);
        }
        new ObjectionPlaces(file.get().noted(), problems)
                .report(((StudyOutcome.Refused) outcome).why(), file.get().units());
        return opened.refused(problems);
    }
}
