package org.lowfirst.web.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Skipped;
import org.lowfirst.planning.Step;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.web.picture.StaircasePicture.Tread;
import org.lowfirst.web.picture.StaircasePicture.When;
import org.lowfirst.web.workplace.BenchNow;

/** The stages of a fill that are done, as the picture has them. A supply gauge nobody read is drawn level with the bottle. */
final class Past {

    private Past() {}

    /** @param rest the plan from here on, which knows the rank of every supply */
    static List<Tread> of(OpenFill fill, FillPlan rest, BenchNow now) {
        List<Tread> treads = new ArrayList<>();
        GaugePressure bottle = fill.before().pressure().gauge();
        for (Stage stage : fill.stages()) {
            GaugePressure after = stage.bottleAfter().pressure().gauge();
            GaugePressure left = read(stage.supplyAfter(), after);
            GaugePressure had = read(stage.supplyBefore(), left);
            String name = now.bench()
                    .findSupply(stage.supply())
                    .map(Supply::details)
                    .map(SupplyDetails::name)
                    .orElse(stage.supply().value());
            treads.add(new Tread(
                    rank(name, rest, treads.size() + 1),
                    name,
                    Staircases.in(now, bottle),
                    Staircases.in(now, after),
                    Staircases.in(now, had),
                    Staircases.in(now, left),
                    When.PAST));
            bottle = after;
        }
        return treads;
    }

    private static int rank(String supply, FillPlan rest, int otherwise) {
        Stream<Integer> skipped = rest.fill().skipped().stream()
                .filter(one -> one.supply().equals(supply))
                .map(Skipped::rank);
        Stream<Integer> opened = rest.fill().steps().stream()
                .filter(one -> one.supply().equals(supply))
                .map(Step::rank);
        return Stream.concat(skipped, opened).findFirst().orElse(otherwise);
    }

    private static GaugePressure read(@Nullable Reading reading, GaugePressure otherwise) {
        return reading == null ? otherwise : reading.pressure().gauge();
    }
}
