package org.lowfirst.web.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.session.SessionBottle;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionRequest;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;

/** Searches go on while somebody looks again, and end when the best so far will do. */
final class SessionDeskTest {

    private static final Duration LONG = Duration.ofMinutes(2);

    private static final Settings SETTINGS = new Settings(
            "Bench",
            Units.METRIC,
            RuleSet.EU,
            new Surroundings(
                    StatedTemperature.of("20", TemperatureUnit.CELSIUS),
                    StatedAbsolutePressure.STANDARD,
                    StatedVolume.of("0", VolumeUnit.LITRE)),
            StatedPressure.of("200", PressureUnit.BAR),
            List.of());

    private final SessionPlanner planner =
            SessionPlanner.under(Conditions.of(Oxygen.schmidtWagner(), Temperature.ofCelsius(20), ReferenceRule.EU));
    private final SessionDesk desk = new SessionDesk();

    @Test
    void whoAsksTheSameAgainSeesTheSameSearch() {
        SessionDesk.Question question = question(3, 3);
        SessionSearch search = desk.search(question, planner, false);
        assertThat(desk.search(question(3, 3), planner, false)).isSameAs(search);
        assertThat(search.doneWithin(LONG)).isTrue();
        assertThat(desk.search(question, planner, false)).isSameAs(search);
        assertThat(((SessionPlan) search.outcome()).proof().stopped()).isFalse();
    }

    /** Twenty bottles on eight supplies, most of them not enough: seconds of work. */
    @Test
    void aStoppedSearchGivesThePlanItHasAndIsBegunAgainWhenAskedWithoutHurry() {
        SessionDesk.Question question = question(8, 20);
        SessionSearch search = desk.search(question, planner, false);
        assertThat(desk.search(question, planner, true)).isSameAs(search);
        search.stop();
        assertThat(search.doneWithin(LONG)).isTrue();
        SessionPlan plan = (SessionPlan) search.outcome();
        assertThat(plan.proof().stopped()).isTrue();
        assertThat(plan.course().ends()).hasSize(20);
        assertThat(desk.search(question, planner, true)).isSameAs(search);
        SessionSearch again = desk.search(question, planner, false);
        assertThat(again).isNotSameAs(search);
        again.stop();
        assertThat(again.doneWithin(LONG)).isTrue();
    }

    @Test
    void theSearchTellsHowFarItIs() {
        SessionSearch search = desk.search(question(4, 6), planner, false);
        assertThat(search.doneWithin(LONG)).isTrue();
        SessionPlan plan = (SessionPlan) search.outcome();
        assertThat(search.soFar().ready()).isEqualTo(plan.score().ready());
        assertThat(search.soFar().readyAtMost()).isEqualTo(plan.proof().readyAtMost());
    }

    private static SessionDesk.Question question(int supplies, int bottles) {
        Random random = new Random(16);
        List<SupplyState> bank = new ArrayList<>();
        for (int s = 0; s < supplies; s++) {
            bank.add(
                    new SupplyState("S" + s, Volume.ofLitres(50), GaugePressure.ofBar(60 + 140 * random.nextDouble())));
        }
        List<SessionBottle> wanted = new ArrayList<>();
        for (int b = 0; b < bottles; b++) {
            wanted.add(new SessionBottle(new BottleToFill(
                    "R" + b,
                    Volume.ofLitres(8 + 40 * random.nextDouble()),
                    GaugePressure.ofBar(10 + 80 * random.nextDouble()),
                    GaugePressure.ofBar(110 + 60 * random.nextDouble()),
                    GaugePressure.ofBar(300))));
        }
        return new SessionDesk.Question("here", SETTINGS, "", new SessionRequest(bank, wanted));
    }
}
