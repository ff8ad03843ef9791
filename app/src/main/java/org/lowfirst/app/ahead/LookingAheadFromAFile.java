package org.lowfirst.app.ahead;

import java.util.Optional;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile;
import org.lowfirst.app.plan.ObjectionPlaces;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.ahead.AheadOutcome;
import org.lowfirst.planning.ahead.Forecast;
import org.lowfirst.planning.ahead.LookingAhead;

/** Looks ahead for the bank and the use that a file tells. */
public final class LookingAheadFromAFile {

    private final EquationOfState gas;

    /** @param gas the gas in every cylinder */
    public LookingAheadFromAFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads a file and looks ahead.
     *
     * @param name how problems name the file
     * @param bytes its content
     */
    public Asked<LookedAhead> look(String name, byte[] bytes) {
        Problems problems = new Problems();
        QuestionFile opened = QuestionFile.open(name, bytes, AheadFileReader.SHAPE, problems);
        Optional<AheadFile> file =
                opened.section().flatMap(section -> new AheadFileReader(gas, problems).read(section));
        if (file.isEmpty()) {
            return opened.refused(problems);
        }
        AheadOutcome outcome = LookingAhead.look(file.get().request());
        if (outcome instanceof Forecast forecast) {
            return opened.answered(
                    new LookedAhead(file.get().request(), forecast, file.get().units()), problems);
        }
        new ObjectionPlaces(file.get().noted(), problems)
                .report(((AheadOutcome.Refused) outcome).why(), file.get().units());
        return opened.refused(problems);
    }
}
