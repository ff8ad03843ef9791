package org.lowfirst.station.rules;

import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.stamp.Convention;
import org.lowfirst.station.stamp.Meaning;
import org.lowfirst.station.stamp.SpecificationMark;
import org.lowfirst.station.stamp.Stamp;
import org.lowfirst.station.stamp.Wall;

/**
 * What a stamp says in the terms of the rules; to be shown and confirmed before it counts.
 *
 * @param lastTest latest date stamped, null when there is none
 */
public record StampedNameplate(
        Nameplate nameplate, @Nullable TestMark lastTest) {

    private static final Set<String> CANADIAN = Set.of("TC", "CTC", "BTC", "CRC");

    /**
     * Takes the specification of the country where a cylinder is marked by two, the lowest service pressure, and the earliest
     * date as the month it was made unless a requalifier's mark says it was a later test.
     */
    public static StampedNameplate of(Stamp stamp) {
        Meaning.Specification specification = specification(stamp.list(Meaning.Specification.class));
        Nameplate nameplate = new Nameplate(
                specification == null ? null : specification.code(),
                material(specification),
                stamp.findLowestServicePressure().orElse(null),
                stamp.find(Meaning.TestPressure.class)
                        .map(Meaning.TestPressure::pressure)
                        .orElse(null),
                stamp.find(Meaning.WaterVolume.class)
                        .map(Meaning.WaterVolume::volume)
                        .orElse(null),
                made(stamp));
        TestMark lastTest = stamp.findLatestTest()
                .map(date -> new TestMark(date.month(), date.plus(), date.star(), date.suffix()))
                .orElse(null);
        return new StampedNameplate(nameplate, lastTest);
    }

    private static Meaning.@Nullable Specification specification(List<Meaning.Specification> stamped) {
        return stamped.stream()
                .min(Comparator.comparing(mark -> CANADIAN.contains(mark.authority())))
                .orElse(null);
    }

    private static WallMaterial material(Meaning.@Nullable Specification specification) {
        SpecificationMark known = specification == null ? null : specification.known();
        Wall wall = known == null ? Wall.UNKNOWN : known.wall();
        return switch (wall) {
            case STEEL -> WallMaterial.STEEL;
            case ALUMINIUM -> WallMaterial.ALUMINIUM;
            case COMPOSITE -> WallMaterial.COMPOSITE;
            case UNKNOWN -> WallMaterial.UNKNOWN;
        };
    }

    private static @Nullable YearMonth made(Stamp stamp) {
        return stamp.findFirstTest()
                .filter(date -> stamp.convention() == Convention.EUROPEAN || !requalified(date))
                .map(Meaning.TestDate::month)
                .orElse(null);
    }

    /** A requalifier's mark is a letter and three digits; an inspector's at manufacture is letters. */
    private static boolean requalified(Meaning.TestDate date) {
        return date.tester().matches("[A-Z]\\d{3}|V\\d{6}");
    }
}
