package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * A set of rules of one country, as a value: changing it makes another. Each required kind of rule is always there.
 *
 * @param id name of the book, e.g. "us"
 * @param title for people
 * @param rules in the order they are judged and shown
 */
public record RuleBook(String id, String title, List<FillRule> rules) {

    public RuleBook {
        rules = List.copyOf(rules);
        Set<String> ids = new HashSet<>();
        for (FillRule rule : rules) {
            if (!ids.add(rule.heading().id())) {
                throw new IllegalArgumentException(
                        "The rule id (" + rule.heading().id() + ") must be used once in book " + id + ".");
            }
        }
        for (RuleKind kind : RuleKind.values()) {
            if (kind.required() && rules.stream().noneMatch(rule -> rule.kind() == kind)) {
                throw new IllegalArgumentException(
                        "The book " + id + " must have a rule of kind \"" + kind.word() + "\".");
            }
        }
    }

    /**
     * Judges one cylinder.
     *
     * @param today day of the fill
     */
    public Judgement judge(CylinderFacts facts, LocalDate today) {
        Setting setting = new Setting(this, today);
        List<Finding> findings = new ArrayList<>();
        List<PressureLimit> limits = new ArrayList<>();
        for (FillRule rule : setting.rules()) {
            findings.addAll(rule.judge(facts, setting));
            limits.addAll(rule.limits(facts, setting));
        }
        GaugePressure reading = facts.use().reading();
        return new Judgement(facts.name(), today, id, findings, limits, reading == null ? GaugePressure.ZERO : reading);
    }

    /** Temperature that marked service pressures are stated at. */
    public Temperature referenceTemperature(LocalDate today) {
        return new Setting(this, today).required(ServicePressureLimit.class).at();
    }

    /** Temperatures at which the contents wanted are to be stated, each once, in the order of the rules. */
    public List<Temperature> temperatures(LocalDate today) {
        return new Setting(this, today)
                .rules().stream().flatMap(RuleBook::temperatureOf).distinct().toList();
    }

    private static Stream<Temperature> temperatureOf(FillRule rule) {
        if (rule instanceof ServicePressureLimit limit) {
            return Stream.of(limit.at());
        }
        if (rule instanceof MaterialPressureLimit limit) {
            return Stream.of(limit.at());
        }
        if (rule instanceof DevelopedPressureLimit limit) {
            return Stream.of(limit.at());
        }
        return Stream.of();
    }

    /** Codes of the questions to ask before a fill, in order. */
    public List<String> questions(LocalDate today) {
        return new Setting(this, today)
                .rules(ConditionQuestions.class)
                .flatMap(rule -> rule.questions().stream())
                .distinct()
                .toList();
    }

    /** Adds a rule, or puts it in the place of the one with its id. */
    public BookChange with(FillRule rule) {
        List<FillRule> changed = new ArrayList<>(rules);
        int place = place(rule.heading().id());
        if (place < 0) {
            changed.add(rule);
        } else {
            changed.set(place, rule);
        }
        return changed(changed, place < 0 ? rule : rules.get(place));
    }

    /** Takes a rule out. */
    public BookChange without(String ruleId) {
        int place = place(ruleId);
        if (place < 0) {
            return new BookChange.NotChanged(BookChange.Problem.NO_SUCH_RULE, ruleId);
        }
        List<FillRule> changed = new ArrayList<>(rules);
        FillRule gone = changed.remove(place);
        return changed(changed, gone);
    }

    private BookChange changed(List<FillRule> changed, FillRule replaced) {
        RuleKind kind = replaced.kind();
        if (kind.required() && changed.stream().noneMatch(rule -> rule.kind() == kind)) {
            return new BookChange.NotChanged(
                    BookChange.Problem.REQUIRED_RULE, replaced.heading().id());
        }
        return new BookChange.Changed(new RuleBook(id, title, changed));
    }

    private int place(String ruleId) {
        for (int i = 0; i < rules.size(); i++) {
            if (rules.get(i).heading().id().equals(ruleId)) {
                return i;
            }
        }
        return -1;
    }
}
