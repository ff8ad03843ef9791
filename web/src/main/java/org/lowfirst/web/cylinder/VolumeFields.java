package org.lowfirst.web.cylinder;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.Nameplate;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Size;
import org.lowfirst.station.SizeCatalogue;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.VolumeBasis;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;

/**
 * The water volume of a cylinder and its marked pressure, given in one of three ways: as stamped, as on the nameplate, or by a
 * generic size. What is stamped wins over the nameplate, the nameplate over the size.
 */
public final class VolumeFields {

    /** Four digits are more than a nameplate gives. */
    private static final MathContext DERIVED = new MathContext(3);

    private final SizeCatalogue catalogue;
    private final Supplier<Words> words;

    /** @param words the words of the request being answered */
    public VolumeFields(Supplier<Words> words) {
        this.catalogue = SizeCatalogue.bundled();
        this.words = words;
    }

    /** The sizes to choose from: value of the choice, and what to show. */
    public List<Choice> choices() {
        return catalogue.sizes().stream()
                .map(size -> new Choice(
                        size.label(),
                        words.get()
                                .of(
                                        "size",
                                        size.label(),
                                        span(size),
                                        written(size.servicePressure().value()) + " "
                                                + size.servicePressure().symbol())))
                .toList();
    }

    /** @param value value of the choice */
    public record Choice(String value, String label) {}

    /** The water volume, or null with a fault. */
    public @Nullable WaterVolume waterVolume(Reader reader, RuleSet rules) {
        if (!reader.empty("volume")) {
            @Nullable StatedVolume stamped = reader.waterVolume("volume");
            return stamped == null ? null : WaterVolume.stamped(stamped);
        }
        if (!reader.empty("nameplate")) {
            return nameplate(reader, rules);
        }
        Optional<Size> size = catalogue.findSize(reader.text("size"));
        if (size.isEmpty()) {
            reader.fault("volume", words.get().of("fault.volume.empty"));
            return null;
        }
        return new WaterVolume(
                middle(size.get()), VolumeBasis.CATALOGUE, size.get().label());
    }

    /** What the fields hold for a volume that is known. */
    public static Map<String, String> filled(WaterVolume volume, Figures figures) {
        String source = volume.source() == null ? "" : volume.source();
        return switch (volume.basis()) {
            case CATALOGUE -> Map.of("size", source);
            case NAMEPLATE -> Map.of("nameplate", source);
            case STAMPED, MEASURED -> Map.of("volume", figures.toType(volume.stated()));
        };
    }

    /** The marked pressure; the size's usual marking when none was typed and a size was chosen; or null with a fault. */
    public @Nullable StatedPressure servicePressure(Reader reader) {
        if (reader.empty("marked")) {
            Optional<Size> size = catalogue.findSize(reader.text("size"));
            if (size.isPresent()) {
                return size.get().servicePressure();
            }
        }
        return reader.pressure("marked");
    }

    private @Nullable WaterVolume nameplate(Reader reader, RuleSet rules) {
        String text = reader.text("nameplate");
        Parsed<Nameplate> parsed = Nameplate.parse(text);
        if (parsed instanceof Parsed.Unreadable<Nameplate> unreadable) {
            reader.fault("nameplate", unreadable.problem());
            return null;
        }
        ReferenceCondition condition = conditionOf(text, rules);
        Evaluated<Volume> volume =
                parsed.orElseThrow().waterVolume(Oxygen.schmidtWagner(), condition, StandardAtmosphere.PRESSURE);
        if (!(volume instanceof Evaluated.Value<Volume> found)) {
            reader.fault("nameplate", words.get().of("fault.nameplate", text));
            return null;
        }
        BigDecimal litres = BigDecimal.valueOf(found.value().toLitres()).round(DERIVED);
        return new WaterVolume(new StatedVolume(litres, VolumeUnit.LITRE), VolumeBasis.NAMEPLATE, text);
    }

    /** A nameplate in psi counts at 70 F, one in bar at 15 C, whatever the rules of the bench (common practice, no source). */
    private static ReferenceCondition conditionOf(String text, RuleSet rules) {
        String typed = text.toLowerCase(Locale.ROOT);
        boolean psi = typed.contains("psi") || (rules == RuleSet.US && !typed.contains("bar"));
        return psi ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    private static StatedVolume middle(Size size) {
        BigDecimal lowest = size.waterVolume().lowest().value();
        BigDecimal highest = size.waterVolume().highest().value();
        return new StatedVolume(
                lowest.add(highest).divide(BigDecimal.valueOf(2)),
                size.waterVolume().lowest().unit());
    }

    private String written(BigDecimal number) {
        return Digits.in(words.get().locale()).typed(number);
    }

    private String span(Size size) {
        String lowest = written(size.waterVolume().lowest().value());
        String highest = written(size.waterVolume().highest().value());
        return lowest.equals(highest) ? lowest : words.get().of("size.span", lowest, highest);
    }
}
