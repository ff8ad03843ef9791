package org.lowfirst.app.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Assignment;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.Judging;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Squad;
import org.lowfirst.station.readiness.Group;
import org.lowfirst.station.readiness.GroupBottle;
import org.lowfirst.station.readiness.Place;
import org.lowfirst.station.readiness.RefillList;
import org.lowfirst.station.readiness.ShiftCheck;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.CylinderFacts;
import org.lowfirst.station.rules.Judgement;
import org.lowfirst.station.rules.RuleBook;

/** Keeps groups of bottles ready: who belongs where, the check at the start of a shift, what to fill after a call. */
public final class KeepingReady {

    private final Recorder recorder;

    KeepingReady(Recorder recorder) {
        this.recorder = recorder;
    }

    /**
     * How ready the bottles are.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public ReadyNow now(BenchId id) {
        Bench bench = recorder.getState(id).bench();
        Squad squad = bench.areas().care().squad();
        List<Group> groups = squad.groups().values().stream()
                .map(KeepingReady::group)
                .sorted(Comparator.comparingInt(Group::priority).thenComparing(Group::name))
                .toList();
        LocalDate today = LocalDate.now(recorder.clock());
        List<GroupBottle> bottles = new ArrayList<>();
        Map<String, BottleId> ids = new HashMap<>();
        squad.assigned().forEach((bottle, assignment) -> {
            Bottle known = bench.findBottle(bottle).filter(Bottle::inUse).orElse(null);
            if (known != null && squad.groups().containsKey(assignment.group())) {
                bottles.add(bottle(bench, known, assignment, today));
                ids.put(known.details().name(), bottle);
            }
        });
        Instant since = squad.shift() == null ? Instant.MIN : squad.shift();
        return new ReadyNow(
                squad.shift(), groups, ShiftCheck.of(groups, bottles, since), RefillList.of(groups, bottles), ids);
    }

    private static Group group(GroupDetails group) {
        return new Group(
                group.name(),
                group.priority(),
                group.floor().gauge(),
                group.wish().gauge());
    }

    private static GroupBottle bottle(Bench bench, Bottle bottle, Assignment assignment, LocalDate today) {
        Reading latest = bottle.latest();
        GaugePressure reading = latest == null ? null : latest.pressure().gauge();
        return new GroupBottle(
                bottle.details().name(),
                assignment.group(),
                assignment.place(),
                reading,
                latest == null ? null : latest.at(),
                fillable(bench, bottle.id(), reading, today));
    }

    /** Whether nothing stands against a fill today but what is asked beside the bottle each time. */
    private static boolean fillable(Bench bench, BottleId id, @Nullable GaugePressure reading, LocalDate today) {
        RuleBook book = Judging.book(bench);
        Map<String, Answer> sound = new HashMap<>();
        book.questions(today).forEach(question -> sound.put(question, Answer.NO));
        CylinderFacts facts = Judging.facts(bench, id, reading, today);
        Judgement judgement = book.judge(facts.answers().isEmpty() ? facts.answering(sound) : facts, today);
        return Judging.standing(bench, id, judgement).stream()
                .allMatch(finding -> finding.advice() == Advice.TAKE_READING);
    }

    /** A group as it is from now on; another with its name is replaced. */
    public Recording describe(BenchId bench, GroupDetails group, Submission submission) {
        return enter(bench, new CareFact.GroupDescribed(group), submission);
    }

    /** The group is no longer; its bottles belong to none. */
    public Recording end(BenchId bench, String group, Submission submission) {
        return enter(bench, new CareFact.GroupEnded(group), submission);
    }

    /** @param group null for none */
    public Recording assign(
            BenchId bench, BottleId bottle, @Nullable String group, Place place, Submission submission) {
        return enter(bench, new CareFact.BottleAssigned(bottle, group, place), submission);
    }

    /** One comes out of service, a spare goes in. */
    public Recording swap(BenchId bench, BottleId out, BottleId in, Submission submission) {
        return enter(bench, new CareFact.BottlesSwapped(out, in), submission);
    }

    /** Readings from now on count. */
    public Recording startShift(BenchId bench, Submission submission) {
        return enter(bench, new CareFact.ShiftStarted(recorder.clock().instant()), submission);
    }

    private Recording enter(BenchId bench, CareFact fact, Submission submission) {
        return recorder.record(bench, new Enter(fact), submission);
    }
}
