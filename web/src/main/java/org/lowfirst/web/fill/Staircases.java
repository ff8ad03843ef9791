package org.lowfirst.web.fill;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Step;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.picture.StaircasePicture;
import org.lowfirst.web.picture.StaircasePicture.Tread;
import org.lowfirst.web.picture.StaircasePicture.When;
import org.lowfirst.web.picture.StaircasePicture.Wording;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Makes the staircase of a fill, planned or under way. */
final class Staircases {

    private Staircases() {}

    /** A whole plan, nothing done yet. */
    static Content planned(FillPlan plan, BenchNow now) {
        return drawn(treads(plan, now, When.PAST), plan.stop().reading(), now);
    }

    /**
     * A fill under way: what was done, what is being done, what comes.
     *
     * @param done the stages so far
     * @param rest the plan from here on
     */
    static Content underWay(List<Tread> done, FillPlan rest, BenchNow now) {
        List<Tread> all = new ArrayList<>(done);
        List<Tread> coming = treads(rest, now, When.LATER);
        for (int i = 0; i < coming.size(); i++) {
            all.add(i == 0 ? at(coming.get(0), When.NOW) : coming.get(i));
        }
        return drawn(all, rest.stop().reading(), now);
    }

    private static List<Tread> treads(FillPlan plan, BenchNow now, When when) {
        return plan.fill().steps().stream().map(step -> tread(step, now, when)).toList();
    }

    private static Tread tread(Step step, BenchNow now, When when) {
        return new Tread(
                step.rank(),
                step.supply(),
                in(now, step.bottle().before()),
                in(now, step.bottle().after()),
                in(now, step.supplyReading().before()),
                in(now, step.supplyReading().after()),
                when);
    }

    private static Tread at(Tread tread, When when) {
        return new Tread(
                tread.rank(),
                tread.supply(),
                tread.bottleBefore(),
                tread.bottleAfter(),
                tread.supplyBefore(),
                tread.supplyAfter(),
                when);
    }

    /** A pressure in the bench's unit. */
    static double in(BenchNow now, GaugePressure pressure) {
        return pressure.to(now.bench().settings().units().pressure());
    }

    private static Content drawn(List<Tread> treads, GaugePressure stop, BenchNow now) {
        Words words = now.words();
        Figures figures = now.figures();
        StringBuilder says = new StringBuilder(words.count("staircase", treads.size()));
        for (Tread tread : treads) {
            says.append(' ')
                    .append(words.of(
                            "staircase.stage",
                            tread.rank(),
                            tread.supply(),
                            Math.round(tread.bottleBefore()),
                            Math.round(tread.bottleAfter()),
                            figures.pressureUnit()));
        }
        Wording wording = new Wording(
                says.toString(), words.of("staircase.stop", figures.pressureWithUnit(stop)), words.of("staircase.now"));
        return new StaircasePicture(figures.pressureUnit(), treads, in(now, stop), wording).draw();
    }
}
