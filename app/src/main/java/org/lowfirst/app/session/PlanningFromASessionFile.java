package org.lowfirst.app.session;

import java.util.Optional;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile;
import org.lowfirst.app.file.Watch;
import org.lowfirst.app.session.SessionFile.BottlePlaces;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.session.Effort;
import org.lowfirst.planning.session.SessionOutcome;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionRefused;
import org.lowfirst.planning.session.SessionWatch;

/** Plans the session that a file asks about. */
public final class PlanningFromASessionFile {

    private final EquationOfState gas;

    /** @param gas the gas in every cylinder */
    public PlanningFromASessionFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads and plans one session.
     *
     * @param name how problems name the file
     * @param bytes its content
     * @param watch sees how the search gets on and may stop it
     */
    public Asked<PlannedSession> plan(String name, byte[] bytes, Watch watch) {
        Problems problems = new Problems();
        QuestionFile opened = QuestionFile.open(name, bytes, SessionFileReader.SHAPE, problems);
        Optional<SessionFile> file =
                opened.section().flatMap(section -> new SessionFileReader(gas, problems).read(section));
        if (file.isEmpty()) {
            return opened.refused(problems);
        }
        SessionOutcome outcome = SessionPlanner.under(file.get().bank().conditions())
                .plan(file.get().request(), Effort.USUAL, soFar -> watch.goOn(found(soFar), share(soFar)));
        if (outcome instanceof SessionPlan plan) {
            return opened.answered(new PlannedSession(file.get(), plan), problems);
        }
        PlanRefused why = ((SessionRefused) outcome).why();
        String sentence = why.inWords(file.get().bank().units());
        place(why, file.get())
                .ifPresentOrElse(place -> problems.error(place, sentence), () -> problems.fileError(sentence));
        return opened.refused(problems);
    }

    private static String found(SessionWatch.SoFar soFar) {
        return soFar.ready() + " bottles ready so far, at most " + soFar.readyAtMost() + " can be";
    }

    private static double share(SessionWatch.SoFar soFar) {
        return (double) soFar.nodes() / Effort.USUAL.nodes();
    }

    private static Optional<Place> place(PlanRefused why, SessionFile file) {
        if (why instanceof PlanRefused.BottleAboveLimit above) {
            return file.findPlaces(above.bottle()).map(BottlePlaces::reading);
        }
        if (why instanceof PlanRefused.FloorAboveStop floor) {
            return file.findPlaces(floor.bottle()).map(BottlePlaces::floor);
        }
        return Optional.empty();
    }
}
