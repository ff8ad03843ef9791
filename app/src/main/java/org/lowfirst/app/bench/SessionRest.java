package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.Stage;
import org.lowfirst.station.SupplyId;

/** What of a session is still to be planned. */
record SessionRest(BenchState state, OpenSession session) {

    /** The bottles that are not out, not finished and not there yet, as they stand. */
    List<SessionWish> wishes() {
        List<SessionWish> wanted = new ArrayList<>();
        for (SessionWish wish : session.wishes()) {
            boolean over =
                    session.out().containsKey(wish.fill()) || session.finished().contains(wish.fill());
            Reading now = state.bench()
                    .findOpenFill(wish.fill())
                    .map(OpenFill::bottleNow)
                    .orElse(wish.before());
            double lacking_Pa =
                    wish.target().gauge().pascals() - now.pressure().gauge().pascals();
            if (!over && lacking_Pa >= tellable_Pa()) {
                wanted.add(
                        new SessionWish(wish.fill(), wish.bottle(), now, wish.target(), wish.floor(), wish.priority()));
            }
        }
        return wanted;
    }

    /**
     * Whether a bottle is not to be put on a supply: somebody skipped that stage, or it was tried and gave nothing, which two
     * gauges that disagree would otherwise have tried again and again.
     */
    boolean leftOut(FillId fill, SupplyId supply) {
        return session.skipped().stream()
                        .anyMatch(stage ->
                                stage.fill().equals(fill) && stage.supply().equals(supply))
                || gaveNothing(fill, supply);
    }

    private boolean gaveNothing(FillId id, SupplyId supply) {
        OpenFill fill = state.bench().findOpenFill(id).orElse(null);
        if (fill == null) {
            return false;
        }
        double before_Pa = fill.before().pressure().gauge().pascals();
        boolean nothing = false;
        for (Stage stage : fill.stages()) {
            double after_Pa = stage.bottleAfter().pressure().gauge().pascals();
            if (stage.supply().equals(supply)) {
                nothing = after_Pa - before_Pa < tellable_Pa();
            }
            before_Pa = after_Pa;
        }
        return nothing;
    }

    private double tellable_Pa() {
        return state.bench()
                .settings()
                .rules()
                .figures()
                .repeatability()
                .gauge()
                .pascals();
    }
}
