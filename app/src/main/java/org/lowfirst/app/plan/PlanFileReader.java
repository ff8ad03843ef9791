package org.lowfirst.app.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.TreeReader;
import org.lowfirst.app.plan.CylinderReader.BottleLine;
import org.lowfirst.gas.EquationOfState;

/** Reads a plan file and collects everything that is wrong with it. */
final class PlanFileReader {

    private static final List<String> KEYS = List.of("temperature", "rules", "hose_volume", "supplies", "bottles");
    private static final String SHAPE =
            "A plan file has the keys temperature, supplies and bottles; " + "examples/plan-us.yaml shows one.";

    private final EquationOfState gas;
    private final Problems problems;

    PlanFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
    }

    /** What the file says; empty when it cannot be planned, and then there is at least one error. */
    Optional<PlanFile> read(SourceText source) {
        Optional<Tree> tree = TreeReader.read(source, problems);
        if (tree.isEmpty()) {
            if (!problems.haveErrors()) {
                problems.fileError("The file is empty. " + SHAPE);
            }
            return Optional.empty();
        }
        if (tree.get() instanceof Mapping mapping) {
            return file(new Section(mapping, "the plan file", KEYS, problems));
        }
        problems.error(tree.get().place(), "The file is " + tree.get().kind() + ". " + SHAPE);
        return Optional.empty();
    }

    private Optional<PlanFile> file(Section section) {
        Optional<FileBank> bank = new BankReader(gas, "a plan", problems).read(section);
        List<BottleLine> bottles = new ListReader(
                        "bottles",
                        "bottle",
                        "name: A, water_volume: 50 L",
                        PlanFileLimits.MOST_BOTTLES,
                        "a plan",
                        problems)
                .read(section, new CylinderReader(problems)::bottle);
        section.reportStrangers();
        if (problems.haveErrors() || bank.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Place> readingPlaces = bottles.stream()
                .collect(Collectors.toMap(
                        BottleLine::name, line -> line.reading().place()));
        bank.get().warnOfMixedUnits(bottles, problems);
        return Optional.of(new PlanFile(
                bank.get().conditions(),
                bank.get().rules(),
                bank.get().units(),
                bank.get().supplies(),
                bottles.stream().map(BottleLine::bottle).toList(),
                readingPlaces));
    }
}
