package org.lowfirst.app.journal;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Language;
import org.lowfirst.station.Material;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.UnitSymbols;
import org.lowfirst.station.Units;
import org.lowfirst.station.VolumeBasis;
import org.lowfirst.station.WaterVolume;

/**
 * How the parts of facts are written: quantities as typed, digits as a string beside their unit; gauge pressures under
 * "gauge", absolute ones under "absolute".
 */
final class Parts {

    private Parts() {}

    static Payload write(StatedPressure pressure) {
        return quantity("gauge", pressure.value(), pressure.symbol());
    }

    static StatedPressure pressure(Payload p) {
        return new StatedPressure(decimal(p, "gauge"), unit(p, UnitSymbols.findPressure(p.text("unit"))));
    }

    static Payload write(StatedAbsolutePressure pressure) {
        return quantity("absolute", pressure.value(), pressure.symbol());
    }

    static StatedAbsolutePressure absolutePressure(Payload p) {
        return new StatedAbsolutePressure(decimal(p, "absolute"), unit(p, UnitSymbols.findPressure(p.text("unit"))));
    }

    static Payload write(StatedTemperature temperature) {
        return quantity("value", temperature.value(), temperature.symbol());
    }

    static StatedTemperature temperature(Payload p) {
        return new StatedTemperature(decimal(p, "value"), unit(p, UnitSymbols.findTemperature(p.text("unit"))));
    }

    static Payload write(StatedVolume volume) {
        return quantity("value", volume.value(), volume.symbol());
    }

    static StatedVolume volume(Payload p) {
        return new StatedVolume(decimal(p, "value"), unit(p, UnitSymbols.findVolume(p.text("unit"))));
    }

    static Payload write(Reading reading) {
        return new Payload()
                .with("pressure", write(reading.pressure()))
                .with("at", TimeText.write(reading.at()))
                .with("temperature", write(reading.temperature()))
                .with("temperatureAssumed", reading.temperatureAssumed())
                .with("gaugeName", reading.gauge());
    }

    static Reading reading(Payload p) {
        return new Reading(
                p.part("pressure", Parts::pressure),
                instant(p.text("at")),
                p.part("temperature", Parts::temperature),
                p.truth("temperatureAssumed"),
                p.textOrNull("gaugeName"));
    }

    static Payload write(Stage stage) {
        return new Payload()
                .with("supply", stage.supply().value())
                .with("bottleAfter", write(stage.bottleAfter()))
                .with("supplyBefore", stage.supplyBefore() == null ? null : write(stage.supplyBefore()))
                .with("supplyAfter", stage.supplyAfter() == null ? null : write(stage.supplyAfter()));
    }

    static Stage stage(Payload p) {
        return new Stage(
                new SupplyId(p.text("supply")),
                p.part("bottleAfter", Parts::reading),
                p.partOrNull("supplyBefore", Parts::reading),
                p.partOrNull("supplyAfter", Parts::reading));
    }

    static Payload write(WaterVolume water) {
        return new Payload()
                .with("volume", write(water.stated()))
                .with("basis", lower(water.basis()))
                .with("source", water.source());
    }

    static WaterVolume waterVolume(Payload p) {
        return new WaterVolume(
                p.part("volume", Parts::volume), choice(VolumeBasis.class, p.text("basis")), p.textOrNull("source"));
    }

    static Payload write(SupplyDetails details) {
        return new Payload()
                .with("name", details.name())
                .with("serial", details.serial())
                .with("waterVolume", write(details.waterVolume()))
                .with("servicePressure", write(details.servicePressure()));
    }

    static SupplyDetails supplyDetails(Payload p) {
        return new SupplyDetails(
                p.text("name"),
                p.textOrNull("serial"),
                p.part("waterVolume", Parts::waterVolume),
                p.part("servicePressure", Parts::pressure));
    }

    static Payload write(BottleDetails details) {
        return new Payload()
                .with("name", details.name())
                .with("owner", details.owner())
                .with("waterVolume", write(details.waterVolume()))
                .with("servicePressure", write(details.servicePressure()))
                .with("material", details.material() == null ? null : lower(details.material()))
                .with("usualTarget", details.usualTarget() == null ? null : write(details.usualTarget()));
    }

    static BottleDetails bottleDetails(Payload p) {
        String material = p.textOrNull("material");
        return new BottleDetails(
                p.text("name"),
                p.text("owner"),
                p.part("waterVolume", Parts::waterVolume),
                p.part("servicePressure", Parts::pressure),
                material == null ? null : choice(Material.class, material),
                p.partOrNull("usualTarget", Parts::pressure));
    }

    static Payload write(Settings settings) {
        Units units = settings.units();
        Surroundings surroundings = settings.surroundings();
        return new Payload()
                .with("name", settings.name())
                .with(
                        "units",
                        new Payload()
                                .with("pressure", units.pressure().symbol())
                                .with("temperature", units.temperature().symbol())
                                .with("volume", units.volume().symbol()))
                .with("rules", lower(settings.rules()))
                .with("usualTemperature", write(surroundings.usualTemperature()))
                .with("ambient", write(surroundings.ambient()))
                .with("hoseVolume", write(surroundings.hoseVolume()))
                .with("fullSupply", write(settings.fullSupply()))
                .with("people", settings.people())
                .with(
                        "language",
                        settings.language() == Language.ENGLISH
                                ? null
                                : settings.language().tag());
    }

    static Settings settings(Payload p) {
        return new Settings(
                p.text("name"),
                p.part("units", Parts::units),
                choice(RuleSet.class, p.text("rules")),
                new Surroundings(
                        p.part("usualTemperature", Parts::temperature),
                        p.part("ambient", Parts::absolutePressure),
                        p.part("hoseVolume", Parts::volume)),
                p.part("fullSupply", Parts::pressure),
                p.texts("people"),
                language(p.textOrNull("language")));
    }

    /** Settings of a bench in English, such as every older one, do not name it. */
    private static Language language(@Nullable String tag) {
        if (tag == null) {
            return Language.ENGLISH;
        }
        for (Language language : Language.values()) {
            if (language.tag().equals(tag)) {
                return language;
            }
        }
        throw new JsonFault(tag + " is not a known language", 0);
    }

    private static Units units(Payload p) {
        return new Units(
                unit(p, UnitSymbols.findPressure(p.text("pressure"))),
                unit(p, UnitSymbols.findTemperature(p.text("temperature"))),
                unit(p, UnitSymbols.findVolume(p.text("volume"))));
    }

    static Payload write(CylinderId cylinder) {
        return new Payload().with(cylinder instanceof SupplyId ? "supply" : "bottle", cylinder.value());
    }

    static CylinderId cylinder(Payload p) {
        String supply = p.textOrNull("supply");
        return supply == null ? new BottleId(p.text("bottle")) : new SupplyId(supply);
    }

    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new JsonFault("the day " + text + " is not like 2026-06-14", 0, e);
        }
    }

    static Instant instant(String text) {
        try {
            return TimeText.parse(text);
        } catch (DateTimeException e) {
            throw new JsonFault("the time " + text + " is not like 2026-06-14T10:05:00.000Z", 0, e);
        }
    }

    private static Payload quantity(String name, BigDecimal value, String symbol) {
        return new Payload().with(name, value.toPlainString()).with("unit", symbol);
    }

    static BigDecimal decimal(Payload p, String name) {
        String text = p.text(name);
        try {
            return new BigDecimal(text);
        } catch (NumberFormatException e) {
            throw new JsonFault("the number " + text + " cannot be read", 0, e);
        }
    }

    private static <U> U unit(Payload p, Optional<U> found) {
        return found.orElseThrow(() -> new JsonFault("the unit in " + p.members() + " is not known", 0));
    }

    static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static <E extends Enum<E>> E choice(Class<E> type, String text) {
        for (E constant : type.getEnumConstants()) {
            if (lower(constant).equals(text)) {
                return constant;
            }
        }
        throw new JsonFault(text + " is not a known " + type.getSimpleName().toLowerCase(Locale.ROOT), 0);
    }
}
