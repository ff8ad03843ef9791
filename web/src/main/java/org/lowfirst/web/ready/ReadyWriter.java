package org.lowfirst.web.ready;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.ReadyNow;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.readiness.Group;
import org.lowfirst.station.readiness.GroupBottle;
import org.lowfirst.station.readiness.ShiftLine;
import org.lowfirst.station.readiness.ShiftState;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.picture.GaugeBar;
import org.lowfirst.web.picture.StateMark;
import org.lowfirst.web.ready.ReadyPage.GroupPart;
import org.lowfirst.web.ready.ReadyPage.Line;
import org.lowfirst.web.ready.ReadyPage.Next;
import org.lowfirst.web.ready.ReadyPage.Swap;
import org.lowfirst.web.workplace.BenchNow;

/** Writes how ready the bottles are. */
final class ReadyWriter {

    private final BenchNow now;
    private final ReadyNow ready;
    private final Wording wording;

    ReadyWriter(BenchNow now, ReadyNow ready) {
        this.now = now;
        this.ready = ready;
        this.wording = Wording.of(ShiftState.class, now.words().locale());
    }

    ReadyPage page(Form form, String key) {
        return new ReadyPage(
                now.place(),
                ready.shift() == null ? "" : now.words().of("ready.shift", now.age(ready.shift())),
                next(null),
                ready.groups().stream().map(this::part).toList(),
                ready.check().spares().stream().map(this::spare).toList(),
                form,
                key);
    }

    /** Names of the bottles still to be read in this shift, those in service first. */
    List<String> unread() {
        Stream<GroupBottle> inService = ready.check().lines().stream()
                .filter(line -> line.state() == ShiftState.READ)
                .map(ShiftLine::bottle);
        Stream<GroupBottle> spares = ready.check().spares().stream().filter(this::notRead);
        return Stream.concat(inService, spares).map(GroupBottle::name).toList();
    }

    private boolean notRead(GroupBottle bottle) {
        return bottle.readAt() == null
                || (ready.shift() != null && bottle.readAt().isBefore(ready.shift()));
    }

    /**
     * The bottle to read next.
     *
     * @param after name of the one just passed over; null for the first
     */
    @Nullable
    Next next(@Nullable String after) {
        List<String> unread = unread();
        if (unread.isEmpty()) {
            return null;
        }
        int from = after == null ? 0 : unread.indexOf(after) + 1;
        String name = unread.get(from % unread.size());
        return name.equals(after) ? null : new Next(name, read(name), unread.size());
    }

    private String read(String bottle) {
        return now.place().path("/ready/read?bottle=" + ready.getId(bottle));
    }

    private GroupPart part(Group group) {
        List<Line> lines = new ArrayList<>();
        for (ShiftLine line : ready.check().lines()) {
            if (line.group().equals(group)) {
                lines.add(line(line));
            }
        }
        return new GroupPart(
                group.name(),
                limits(group),
                now.words().of("ready.count", ready.check().ready(group), lines.size()),
                lines);
    }

    String limits(Group group) {
        return now.words()
                .of(
                        "ready.limits",
                        now.figures().pressureWithUnit(group.floor()),
                        now.figures().pressureWithUnit(group.wish()));
    }

    private Line line(ShiftLine line) {
        @Nullable String instead = line.swapFor();
        return line(
                line.bottle(),
                line.group(),
                line.state(),
                instead == null ? null : new Swap(ready.getId(instead).value(), instead));
    }

    private Line spare(GroupBottle bottle) {
        Group group = ready.groups().stream()
                .filter(known -> known.name().equals(bottle.group()))
                .findFirst()
                .orElseThrow();
        return line(bottle, group, notRead(bottle) ? ShiftState.READ : ShiftState.REFILL, null);
    }

    private Line line(GroupBottle bottle, Group group, ShiftState state, @Nullable Swap swap) {
        @Nullable GaugePressure reading = bottle.reading();
        return new Line(
                ready.getId(bottle.name()).value(),
                bottle.name(),
                mark(state).picture(),
                wording.text("shift." + state.name().toLowerCase(Locale.ROOT), Map.of()),
                reading == null ? "" : now.figures().pressureWithUnit(reading),
                bottle.readAt() == null ? "" : now.age(bottle.readAt()),
                GaugeBar.of(
                        reading == null ? -1 : reading.pascals(),
                        group.floor().pascals(),
                        group.wish().pascals()),
                read(bottle.name()),
                swap,
                state == ShiftState.SWAP && swap == null);
    }

    private static StateMark mark(ShiftState state) {
        return switch (state) {
            case SWAP -> StateMark.CROSS;
            case READ -> StateMark.QUESTION;
            case REFILL -> StateMark.SOON;
            case READY -> StateMark.FINE;
        };
    }
}
