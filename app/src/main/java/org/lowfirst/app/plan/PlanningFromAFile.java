package org.lowfirst.app.plan;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.FileText;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.InOrderOutcome;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.PlansInOrder;

/** Plans what a plan file asks for. */
public final class PlanningFromAFile {

    private static final String SHAPE = "a plan file has one line for each supply and bottle";

    private final EquationOfState gas;

    /** @param gas the gas in every cylinder */
    public PlanningFromAFile(EquationOfState gas) {
        this.gas = gas;
    }

    /**
     * Reads and plans one file.
     *
     * @param name how problems name the file
     * @param bytes its content
     */
    public FilePlan plan(String name, byte[] bytes) {
        Problems problems = new Problems();
        Optional<String> text = FileText.decode(bytes, PlanFileLimits.MOST_BYTES, SHAPE, problems);
        SourceText source = new SourceText(name, text.orElseGet(() -> new String(bytes, StandardCharsets.UTF_8)));
        Optional<PlanFile> file = text.flatMap(found -> new PlanFileReader(gas, problems).read(source));
        if (file.isEmpty() || problems.haveErrors()) {
            return new RefusedFile(source, problems.inOrder());
        }
        return plan(source, file.get(), problems);
    }

    private static FilePlan plan(SourceText source, PlanFile file, Problems problems) {
        InOrderOutcome outcome =
                FillPlanner.under(file.conditions()).planInOrder(file.supplies(), file.bottles(), null);
        if (outcome instanceof PlansInOrder plans) {
            return new PlannedFile(source, file, plans, problems.inOrder());
        }
        PlanRefused refused = (PlanRefused) outcome;
        String sentence = refused.inWords(file.units());
        placeOf(refused, file)
                .ifPresentOrElse(place -> problems.error(place, sentence), () -> problems.fileError(sentence));
        return new RefusedFile(source, List.copyOf(problems.inOrder()));
    }

    private static Optional<Place> placeOf(PlanRefused refused, PlanFile file) {
        return refused instanceof PlanRefused.BottleAboveLimit above
                ? file.findReadingPlace(above.bottle())
                : Optional.empty();
    }
}
