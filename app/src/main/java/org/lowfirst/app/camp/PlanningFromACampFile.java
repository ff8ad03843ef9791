package org.lowfirst.app.camp;

import java.util.Optional;
import org.lowfirst.app.camp.CampFileReader.CampFile;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile;
import org.lowfirst.app.plan.ObjectionPlaces;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.camp.CampOutcome;
import org.lowfirst.planning.camp.CampPlan;
import org.lowfirst.planning.camp.PlanningACamp;

/** Works out the supplies for the camp that a file tells. */
public final class PlanningFromACampFile {

    private final EquationOfState gas;

    /** @param gas the gas in every cylinder */
    public PlanningFromACampFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads a file and works out its camp.
     *
     * @param name how problems name the file
     * @param bytes its content
     */
    public Asked<CampDone> plan(String name, byte[] bytes) {
        Problems problems = new Problems();
        QuestionFile opened = QuestionFile.open(name, bytes, CampFileReader.SHAPE, problems);
        Optional<CampFile> file = opened.section().flatMap(section -> new CampFileReader(gas, problems).read(section));
        if (file.isEmpty()) {
            return opened.refused(problems);
        }
        CampOutcome outcome = PlanningACamp.plan(file.get().request());
        if (outcome instanceof CampPlan plan) {
            return opened.answered(
                    new CampDone(
                            file.get().request(),
                            plan,
                            file.get().rules(),
                            file.get().units()),
                    problems);
        }
        new ObjectionPlaces(file.get().noted(), problems)
                .report(((CampOutcome.Refused) outcome).why(), file.get().units());
        return opened.refused(problems);
    }
}
