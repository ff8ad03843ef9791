package org.lowfirst.station.rules;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Markings that must be readable before a cylinder is filled. */
public record LegibleMarkings(RuleHeading heading, Set<MarkingPart> needs) implements FillRule {

    public LegibleMarkings {
        needs = Set.copyOf(needs);
    }

    static LegibleMarkings of(RuleHeading heading, RuleSettings settings) {
        return new LegibleMarkings(heading, settings.choices("needs", MarkingPart.class));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.LEGIBLE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with("needs", sorted().stream().map(RuleSettings::word).collect(Collectors.joining(", ")))
                .asMap();
    }

    private Set<MarkingPart> sorted() {
        Set<MarkingPart> sorted = EnumSet.noneOf(MarkingPart.class);
        sorted.addAll(needs);
        return sorted;
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return sorted().stream()
                .filter(part -> !readable(part, facts.nameplate(), setting))
                .map(part -> Finding.refuse(
                        heading,
                        Advice.READ_MARKINGS_AGAIN,
                        Measure.NOTHING,
                        new Measure.OfWord(RuleSettings.word(part))))
                .toList();
    }

    private static boolean readable(MarkingPart part, Nameplate plate, Setting setting) {
        return switch (part) {
            case SPECIFICATION -> plate.specification() != null;
            case SERVICE_PRESSURE -> setting.servicePressure(plate) != null;
            case TEST_PRESSURE -> plate.testPressure() != null;
            case MATERIAL -> plate.material() != WallMaterial.UNKNOWN;
            case MONTH_MADE -> plate.made() != null;
        };
    }
}
