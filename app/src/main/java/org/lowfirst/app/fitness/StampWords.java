package org.lowfirst.app.fitness;

import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.QuantityFormat;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.stamp.Ambiguity;
import org.lowfirst.station.stamp.Meaning;
import org.lowfirst.station.stamp.Part;
import org.lowfirst.station.stamp.Stamp;

/** Says what each part of a stamp means. */
public final class StampWords {

    private final Wording words;
    private final Wording stamp;
    private final DateTimeFormatter months;
    private final QuantityFormat figures;
    private final Digits digits;

    public StampWords(Locale locale) {
        this.words = Wording.of(StampWords.class, locale);
        this.stamp = Wording.of(Stamp.class, locale);
        this.months = DateTimeFormatter.ofPattern("MMM yyyy", locale);
        this.figures = QuantityFormat.of(locale);
        this.digits = Digits.in(locale);
    }

    public StampInWords of(Stamp read) {
        List<StampInWords.Part> parts = new ArrayList<>();
        for (Part part : read.parts()) {
            parts.add(new StampInWords.Part(
                    parts.size(),
                    part.text(),
                    meaning(part.meaning()),
                    part.meaning() instanceof Meaning.Unknown,
                    part.ambiguities().stream().map(this::note).toList(),
                    part.ambiguities().stream()
                            .flatMap(way -> Stream.ofNullable(way.alternative()))
                            .map(this::meaning)
                            .toList()));
        }
        return new StampInWords(parts);
    }

    /** The same line with parts read in their other way. */
    public static Stamp choosing(Stamp read, List<Integer> otherwise) {
        List<Part> parts = new ArrayList<>();
        for (Part part : read.parts()) {
            Meaning other = otherwise.contains(parts.size()) ? alternative(part) : null;
            parts.add(other == null ? part : new Part(part.start(), part.end(), part.text(), other, List.of()));
        }
        return new Stamp(read.line(), read.convention(), parts);
    }

    private static @Nullable Meaning alternative(Part part) {
        for (Ambiguity way : part.ambiguities()) {
            if (way.alternative() != null) {
                return way.alternative();
            }
        }
        return null;
    }

    private String note(Ambiguity way) {
        Meaning other = way.alternative();
        return stamp.text(
                "ambiguity." + FindingWords.code(way.kind()), Map.of("0", other == null ? "" : meaning(other)));
    }

    private String meaning(Meaning meaning) {
        String name = meaning.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-");
        return stamp.text("meaning." + name.toLowerCase(Locale.ROOT), Map.of("0", value(meaning)));
    }

    private String value(Meaning meaning) {
        if (meaning instanceof Meaning.Specification m) {
            return specification(m);
        } else if (meaning instanceof Meaning.ServicePressure m) {
            return pressure(m.pressure());
        } else if (meaning instanceof Meaning.TestPressure m) {
            return pressure(m.pressure());
        } else if (meaning instanceof Meaning.TestDate m) {
            return tested(m);
        } else if (meaning instanceof Meaning.NextTest m) {
            return month(m.month());
        } else if (meaning instanceof Meaning.WaterVolume m) {
            return figures.waterVolume(m.volume(), VolumeUnit.LITRE);
        } else if (meaning instanceof Meaning.EmptyMass m) {
            return digits.of(m.mass().kilograms(), 1) + " kg";
        } else if (meaning instanceof Meaning.WallThickness m) {
            return digits.of(m.millimetres(), 1) + " mm";
        } else if (meaning instanceof Meaning.ElasticExpansion m) {
            return digits.of(m.cubicCentimetres(), 1) + " cm3";
        }
        return mark(meaning);
    }

    private static String mark(Meaning meaning) {
        if (meaning instanceof Meaning.SerialNumber m) {
            return m.serial();
        } else if (meaning instanceof Meaning.Maker m) {
            return m.mark();
        } else if (meaning instanceof Meaning.ConformityMark m) {
            return (m.mark() + " " + m.body()).strip();
        } else if (meaning instanceof Meaning.Country m) {
            return m.sign();
        } else if (meaning instanceof Meaning.InspectionMark m) {
            return m.mark();
        } else if (meaning instanceof Meaning.SteelForHydrogen) {
            return "";
        } else if (meaning instanceof Meaning.EndClosure m) {
            return m.word();
        } else if (meaning instanceof Meaning.GasName m) {
            return m.gas();
        } else if (meaning instanceof Meaning.Connection m) {
            return m.name();
        } else if (meaning instanceof Meaning.NeckThread m) {
            return m.name();
        } else if (meaning instanceof Meaning.Unknown m) {
            return m.text();
        }
        throw new AssertionError("unhandled " + meaning);
    }

    private String specification(Meaning.Specification m) {
        String code =
                (m.authority() + " " + m.code() + " " + m.number()).strip().replaceAll("\\s+", " ");
        return m.known() == null
                ? code
                : code + ", "
                        + words.text("material." + FindingWords.code(m.known().wall()), Map.of());
    }

    private String tested(Meaning.TestDate m) {
        StringBuilder said = new StringBuilder(month(m.month()));
        if (!m.tester().isEmpty()) {
            said.append(", ").append(words.text("stamp.tester", Map.of("tester", m.tester())));
        }
        if (m.plus()) {
            said.append(", ").append(words.text("stamp.plus", Map.of()));
        }
        if (m.star()) {
            said.append(", ").append(words.text("stamp.star", Map.of()));
        }
        return m.suffix().isEmpty() ? said.toString() : said + ", " + m.suffix();
    }

    private String month(YearMonth month) {
        return months.format(month);
    }

    private String pressure(GaugePressure pressure) {
        return digits.of(pressure.to(PressureUnit.PSI), 0) + " psi, " + digits.of(pressure.to(PressureUnit.BAR), 0)
                + " bar";
    }
}
