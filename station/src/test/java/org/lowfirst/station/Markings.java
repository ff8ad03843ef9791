package org.lowfirst.station;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

/** Markings to test with. */
final class Markings {

    static final LocalDate DAY = LocalDate.of(2026, 6, 14);

    private Markings() {}

    static Marking steel() {
        return new Marking(
                new StampLine("ISO 9809-1 PH 300 BAR 2022/04", Convention.EUROPEAN),
                new MarkedPlate(
                        "ISO 9809-1",
                        WallMaterial.STEEL,
                        StatedPressure.of("300", PressureUnit.BAR),
                        YearMonth.of(2012, 4)),
                TestMark.of(2022, 4),
                Service.oxygen("G 3/4"),
                12,
                null);
    }

    /** The same, but nobody knows whether its owner agrees. */
    static Marking unsure() {
        Service service = new Service("oxygen", "G 3/4", Answer.NO, Answer.YES, Answer.NOT_SURE);
        return new Marking(steel().stamp(), steel().plate(), steel().lastTest(), service, 12, null);
    }

    /** The usual journal, its bottle marked and looked at on {@link #DAY}, and more. */
    static Journal given(Fact... more) {
        Journal journal = Journal.given(new GateFact.BottleMarked(Larkmoor.M_03, steel()), soundToday());
        Arrays.stream(more).forEach(journal::add);
        return journal;
    }

    /** Every question of the European book answered "no". */
    static GateFact.ConditionAnswered soundToday() {
        Map<String, Answer> answers = new HashMap<>();
        BuiltInBooks.eu().questions(DAY).forEach(question -> answers.put(question, Answer.NO));
        return new GateFact.ConditionAnswered(Larkmoor.M_03, DAY, answers, "Ida");
    }

    static GateFact.RefusalsSetAside setAside(String filler, String second) {
        return new GateFact.RefusalsSetAside(
                Larkmoor.M_03,
                DAY,
                List.of(new Refusal("eu.consent", Advice.ASK_OWNER, "not-sure")),
                filler,
                second,
                "the owner said so by telephone");
    }
}
