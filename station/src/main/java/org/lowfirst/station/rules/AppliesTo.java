package org.lowfirst.station.rules;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which cylinders a rule is about: those with one of the codes or one of the materials; all when both sets are empty.
 *
 * @param specifications codes as stamped without the authority, e.g. "3AA"
 * @param materials wall materials
 */
public record AppliesTo(Set<String> specifications, Set<WallMaterial> materials) {

    public static final AppliesTo ALL = new AppliesTo(Set.of(), Set.of());

    public AppliesTo {
        specifications = Set.copyOf(specifications);
        materials = Set.copyOf(materials);
    }

    public static AppliesTo specifications(String... codes) {
        return new AppliesTo(Set.of(codes), Set.of());
    }

    public static AppliesTo materials(WallMaterial... materials) {
        return new AppliesTo(Set.of(), Set.of(materials));
    }

    public boolean matches(Nameplate nameplate) {
        if (specifications.isEmpty() && materials.isEmpty()) {
            return true;
        }
        String code = nameplate.specification();
        return (code != null && specifications.contains(code)) || materials.contains(nameplate.material());
    }

    TreeSet<String> sortedSpecifications() {
        return new TreeSet<>(specifications);
    }

    Set<WallMaterial> sortedMaterials() {
        Set<WallMaterial> sorted = EnumSet.noneOf(WallMaterial.class);
        sorted.addAll(materials);
        return sorted;
    }
}
