package org.lowfirst.web.fill;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.Supply;
import org.lowfirst.web.picture.StaircasePicture.Tread;
import org.lowfirst.web.picture.StaircasePicture.When;
import org.lowfirst.web.workplace.BenchNow;

/** The stages of a fill that are done, as the picture has them. A supply gauge nobody read is drawn level with the bottle. */
final class Past {

    private Past() {}

    static List<Tread> of(OpenFill fill, BenchNow now) {
        List<Tread> treads = new ArrayList<>();
        GaugePressure bottle = fill.before().pressure().gauge();
        for (Stage stage : fill.stages()) {
            GaugePressure after = stage.bottleAfter().pressure().gauge();
            GaugePressure left = read(stage.supplyAfter(), after);
            GaugePressure had = read(stage.supplyBefore(), left);
            treads.add(new Tread(
                    treads.size() + 1,
                    now.bench()
                            .findSupply(stage.supply())
                            .map(Supply::details)
                            .map(details -> details.name())
                            .orElse(stage.supply().value()),
                    Staircases.in(now, bottle),
                    Staircases.in(now, after),
                    Staircases.in(now, had),
                    Staircases.in(now, left),
                    When.PAST));
            bottle = after;
        }
        return treads;
    }

    private static GaugePressure read(@Nullable Reading reading, GaugePressure otherwise) {
        return reading == null ? otherwise : reading.pressure().gauge();
    }
}
