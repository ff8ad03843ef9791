package org.lowfirst.app.gas;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.app.gas.RefusedQuestion.Objection;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Pressure;
import org.lowfirst.gas.Quantities;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.warm.OtherTemperatures;
import org.lowfirst.planning.warm.SameGas;
import org.lowfirst.planning.warm.SnapOpening;
import org.lowfirst.planning.warm.WarmRefusalWords;
import org.lowfirst.transfer.warm.Answer;

/** Answers questions about the gas behind a reading. */
public final class AnsweringAboutGas {

    private static final AbsolutePressure AMBIENT = StandardAtmosphere.PRESSURE;

    private final CaloricEquation gas;
    private final IdealGas ideal;

    /** @param gas the gas behind every reading */
    public AnsweringAboutGas(CaloricEquation gas) {
        this.gas = gas;
        this.ideal = new IdealGas(gas.gas(), gas.molarMass_kgPerMol());
    }

    /** What the same gas reads at other temperatures, how much it is, and how full the cylinder. */
    public GasAnswer aboutReading(ReadingQuestion question) {
        TypedOptions options = new TypedOptions();
        Optional<Parsed.Read<GaugePressure>> reading =
                options.read("--reading", question.reading(), text -> Quantities.gaugePressure(text, AMBIENT));
        Optional<Parsed.Read<Temperature>> at = options.read("--at", question.at(), Quantities::temperature);
        List<Parsed.Read<Temperature>> readsAt = question.readsAt().stream()
                .flatMap(text -> options.read("--reads-at", text, Quantities::temperature).stream())
                .toList();
        Optional<Parsed.Read<Volume>> volume = Optional.ofNullable(question.volume())
                .flatMap(text -> options.read("--volume", text, Quantities::volume));
        Optional<Parsed.Read<GaugePressure>> rated = Optional.ofNullable(question.rated())
                .flatMap(text -> options.read("--rated", text, typed -> Quantities.gaugePressure(typed, AMBIENT)));
        ReferenceRule rules = options.rules(question.rules());
        if (options.haveObjections() || reading.isEmpty() || at.isEmpty()) {
            return options.refused();
        }
        return about(new TypedReading(
                reading.get(),
                at.get(),
                readsAt.isEmpty() ? CommonTemperatures.in(at.get().unit()) : readsAt,
                volume.orElse(null),
                rated.orElse(null),
                rules));
    }

    private GasAnswer about(TypedReading typed) {
        Answer<SameGas> real = OtherTemperatures.read(typed.asked(), gas);
        if (real instanceof Answer.Refused<SameGas> refused) {
            return refused(WarmRefusalWords.of(refused.refusal(), typed.units()));
        }
        return new ReadingAnswer(
                typed,
                real.orElseThrow(),
                OtherTemperatures.read(typed.asked(), ideal).orElseThrow());
    }

    /**
     * How hot gas gets in theory behind a valve that is snapped open.
     *
     * @param supply pressure of the supply, as typed
     * @param at temperature of the gas, as typed
     */
    public GasAnswer aboutSnapOpening(String supply, String at) {
        TypedOptions options = new TypedOptions();
        Optional<Parsed.Read<Pressure>> pressure = options.read("--snap", supply, Quantities::pressure);
        Optional<Parsed.Read<Temperature>> temperature = options.read("--at", at, Quantities::temperature);
        if (pressure.isEmpty() || temperature.isEmpty()) {
            return options.refused();
        }
        Answer<SnapOpening> opening = SnapOpening.of(
                AMBIENT, temperature.get().value(), pressure.get().value().toAbsolute(AMBIENT), gas);
        if (opening instanceof Answer.Refused<SnapOpening> refused) {
            ShownUnits units = new ShownUnits(
                    TypedUnits.pressure(pressure.get().unit()),
                    TypedUnits.temperature(temperature.get().unit()),
                    VolumeUnit.LITRE);
            return refused(WarmRefusalWords.of(refused.refusal(), units));
        }
        return new SnapAnswer(pressure.get(), temperature.get(), opening.orElseThrow());
    }

    private static RefusedQuestion refused(String sentence) {
        return new RefusedQuestion(List.of(new Objection("", sentence)));
    }
}
