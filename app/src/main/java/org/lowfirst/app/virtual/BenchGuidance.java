package org.lowfirst.app.virtual;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Guide;
import org.lowfirst.app.bench.GuidingAFill;
import org.lowfirst.app.bench.IdSource;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.bench.Valve;
import org.lowfirst.app.bench.ValveState;
import org.lowfirst.app.bench.ValveState.Setting;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.rules.Answer;

/**
 * The guide through the use cases. A reading the bench asks about is insisted on: the gauge did show it. Refusals throw
 * {@link IllegalStateException}. One fill at a time; not thread-safe.
 */
public final class BenchGuidance implements Guidance {

    private final Benches benches;
    private final BenchId bench;
    private final String author;
    private final IdSource ids;
    private final Supplier<Instant> now;
    private FillId fill = new FillId("none");
    private @Nullable StatedTemperature temperature;

    public BenchGuidance(Benches benches, BenchId bench, String author, IdSource ids, Supplier<Instant> now) {
        this.benches = benches;
        this.bench = bench;
        this.author = author;
        this.ids = ids;
        this.now = now;
    }

    @Override
    public NextStep start(FillOrder order) {
        fill = new FillId(ids.next());
        temperature = order.temperature();
        StartFill command = new StartFill(fill, bottle(order.bottle()), order.target(), reading(order.before()));
        lookAt(command.bottle());
        recorded(submission -> guiding().start(bench, command, submission));
        return step(new Position(1, Phase.CONNECT, null));
    }

    /** Virtual bottles have no marks on them: every question is answered no. */
    private void lookAt(BottleId bottle) {
        Map<String, Answer> answers = new HashMap<>();
        benches.judgingFitness()
                .ofBottle(bench, bottle)
                .questions()
                .forEach(question -> answers.put(question.code(), Answer.NO));
        if (!answers.isEmpty()) {
            recorded(submission -> benches.keepingMarkings().answer(bench, bottle, answers, submission));
        }
    }

    @Override
    public NextStep done(NextStep step) {
        Guide.Step shown = (Guide.Step) guiding().guide(bench, step.position());
        Position next = shown.next();
        if (next == null) {
            throw new IllegalStateException("After " + step.position() + " a reading is wanted.");
        }
        return step(next);
    }

    @Override
    public @Nullable NextStep read(NextStep step, StatedPressure bottle, @Nullable StatedPressure supply) {
        SupplyId id = step.position().supply();
        if (id == null || supply == null) {
            FinishFill command = new FinishFill(fill, reading(bottle));
            recorded(submission -> guiding().finish(bench, command, submission));
            return null;
        }
        RecordStage command = new RecordStage(fill, new Stage(id, reading(bottle), null, reading(supply)));
        recorded(submission -> guiding().recordStage(bench, command, submission));
        return step(new Position(step.position().stage() + 1, Phase.OPEN_SUPPLY, null));
    }

    @Override
    public NextStep comeBack(OpenValves valves) {
        Guide.AskValves ask = (Guide.AskValves) guiding().guide(bench, null);
        return step(ask.choices().stream()
                .filter(choice -> stands(choice.valves(), valves))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("The guide does not know how these stand: " + valves))
                .goOn());
    }

    private boolean stands(List<ValveState> shown, OpenValves open) {
        return shown.stream().allMatch(state -> (state.setting() != Setting.SHUT) == isOpen(state.valve(), open));
    }

    private boolean isOpen(Valve valve, OpenValves open) {
        if (valve instanceof Valve.OfSupply supply) {
            return name(benches.keepingTheBank().bank(bench).bench().getSupply(supply.supply()))
                    .equals(open.supply());
        }
        return valve instanceof Valve.OfBottle ? open.bottle() : open.transfer();
    }

    private NextStep step(Position position) {
        if (!(guiding().guide(bench, position) instanceof Guide.Step step)) {
            throw new IllegalStateException("The guide has no step at " + position + ".");
        }
        Supply supply = step.supply();
        return new NextStep(step.position(), supply == null ? "" : name(supply), step.expected(), step.neverAbove());
    }

    private static String name(Supply supply) {
        return supply.details().name();
    }

    private BottleId bottle(String name) {
        return benches.registeringBottles().listBottles(bench).stream()
                .filter(bottle -> bottle.details().name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("There is no bottle " + name + "."))
                .id();
    }

    private Reading reading(StatedPressure shown) {
        StatedTemperature read = temperature;
        if (read == null) {
            throw new IllegalStateException("No fill was started.");
        }
        return new Reading(shown, now.get(), read, false, null);
    }

    private interface Sending {
        Recording send(Submission submission);
    }

    private void recorded(Sending sending) {
        EntryKey key = new EntryKey(ids.next());
        Recording recording = sending.send(new Submission(key, author, null, false));
        if (recording instanceof Recording.NotRecorded refused
                && refused.refused().confirmable()) {
            recording = sending.send(new Submission(key, author, null, true));
        }
        if (!(recording instanceof Recording.Recorded)) {
            throw new IllegalStateException("Not recorded: " + recording);
        }
    }

    private GuidingAFill guiding() {
        return benches.guidingAFill();
    }
}
