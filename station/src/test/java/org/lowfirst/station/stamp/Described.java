package org.lowfirst.station.stamp;

import java.util.Locale;
import java.util.stream.Collectors;

/** A stamp as one readable line, for comparing. */
final class Described {

    private Described() {}

    static String of(Stamp stamp) {
        return stamp.parts().stream().map(Described::part).collect(Collectors.joining(" | "));
    }

    private static String part(Part part) {
        String ways = part.ambiguities().stream()
                .map(way -> " ?" + way.kind() + (way.alternative() == null ? "" : " " + meaning(way.alternative())))
                .collect(Collectors.joining());
        return meaning(part.meaning()) + ways;
    }

    private static String meaning(Meaning meaning) {
        if (meaning instanceof Meaning.Specification spec) {
            String number = spec.number().isEmpty() ? "" : " no. " + spec.number();
            String wall = spec.known() == null
                    ? "not in table"
                    : spec.known().wall().name().toLowerCase(Locale.ROOT);
            return "spec " + full(spec) + number + " (" + wall + ")";
        }
        if (meaning instanceof Meaning.ServicePressure service) {
            return "service " + Math.round(service.pressure().toPsi()) + " psi";
        }
        if (meaning instanceof Meaning.TestPressure test) {
            return "test " + Math.round(test.pressure().toBar()) + " bar";
        }
        if (meaning instanceof Meaning.TestDate date) {
            return "tested " + date.month()
                    + (date.tester().isEmpty() ? "" : " by " + date.tester())
                    + (date.plus() ? " plus" : "")
                    + (date.star() ? " star" : "")
                    + (date.suffix().isEmpty() ? "" : " " + date.suffix());
        }
        if (meaning instanceof Meaning.WaterVolume water) {
            return String.format(Locale.ROOT, "water %.2f L", water.volume().toLitres());
        }
        if (meaning instanceof Meaning.EmptyMass mass) {
            return String.format(Locale.ROOT, "mass %.2f kg", mass.mass().kilograms());
        }
        return simple(meaning);
    }

    private static String full(Meaning.Specification spec) {
        return (spec.authority() + " " + spec.code()).strip();
    }

    private static String simple(Meaning meaning) {
        if (meaning instanceof Meaning.SerialNumber serial) {
            return "serial " + serial.serial();
        }
        if (meaning instanceof Meaning.Maker maker) {
            return "maker " + maker.mark();
        }
        if (meaning instanceof Meaning.InspectionMark mark) {
            return "inspected " + mark.mark();
        }
        if (meaning instanceof Meaning.NextTest next) {
            return "next " + next.month();
        }
        if (meaning instanceof Meaning.ConformityMark mark) {
            return ("mark " + mark.mark() + " " + mark.body()).strip();
        }
        if (meaning instanceof Meaning.GasName gas) {
            return "gas " + gas.gas();
        }
        if (meaning instanceof Meaning.Connection connection) {
            return "connection " + connection.name();
        }
        if (meaning instanceof Meaning.NeckThread thread) {
            return "thread " + thread.name();
        }
        if (meaning instanceof Meaning.EndClosure closure) {
            return "closed " + closure.word();
        }
        if (meaning instanceof Meaning.ElasticExpansion expansion) {
            return "expansion " + expansion.cubicCentimetres();
        }
        if (meaning instanceof Meaning.Unknown unknown) {
            return "unknown " + unknown.text();
        }
        return String.valueOf(meaning);
    }
}
