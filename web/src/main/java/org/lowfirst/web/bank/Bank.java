package org.lowfirst.web.bank;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.PlanningAFill;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.gas.Amount;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleStatus;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;
import org.lowfirst.web.bank.BankPage.Gives;
import org.lowfirst.web.bank.BankPage.UnderWay;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.picture.CylinderPicture;
import org.lowfirst.web.workplace.BenchNow;

/** Makes the page of one bank. */
final class Bank {

    /** A reading this old says little: temperature has changed and anybody may have drawn gas (common practice, no source). */
    private static final Duration OLD = Duration.ofDays(7);

    /** So many bottles are shown with their fills left. */
    private static final int MOST_BOTTLES = 6;

    private final BenchNow now;
    private final Figures figures;
    private final PlanningAFill planning;

    Bank(BenchNow now, PlanningAFill planning) {
        this.now = now;
        this.figures = now.figures();
        this.planning = planning;
    }

    BankPage page(BankView bank) {
        List<SupplyTile> tiles = bank.supplies().stream().map(this::tile).toList();
        return new BankPage(
                now.place(),
                figures.pressureUnit(),
                tiles,
                held(bank),
                tiles.isEmpty() ? List.of() : gives(),
                underWay());
    }

    private SupplyTile tile(SupplyView view) {
        Supply supply = view.supply();
        return new SupplyTile(
                supply.id().value(),
                view.rank(),
                supply.details().name(),
                CylinderPicture.of(part(view)),
                figures.pressure(view.estimate()),
                age(view),
                view.age().compareTo(OLD) > 0,
                figures.asTyped(supply.details().waterVolume().stated()));
    }

    private static double part(SupplyView view) {
        @Nullable Double level = view.level();
        return level == null
                ? view.estimate().pascals()
                        / view.supply().details().servicePressure().gauge().pascals()
                : level;
    }

    private String age(SupplyView view) {
        String read = now.age(now.now().minus(view.age()));
        return view.estimated()
                ? now.words().of("bank.estimated", read)
                : now.words().of("bank.read", read);
    }

    private String held(BankView bank) {
        if (bank.supplies().isEmpty()) {
            return "";
        }
        Amount all = bank.supplies().stream().map(SupplyView::contents).reduce(Amount.NONE, Amount::plus);
        return now.words().of("bank.held", now.gas(all), now.gasCondition());
    }

    private List<Gives> gives() {
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.status() == BottleStatus.IN_USE)
                .map(this::gives)
                .flatMap(List::stream)
                .limit(MOST_BOTTLES)
                .toList();
    }

    private List<Gives> gives(Bottle bottle) {
        @Nullable Reading latest = bottle.latest();
        @Nullable StatedPressure usual = bottle.details().usualTarget();
        StatedPressure target = usual == null ? bottle.details().servicePressure() : usual;
        if (latest == null || !(planning.plan(now.id(), bottle.id(), target, latest) instanceof FillPlan plan)) {
            return List.of();
        }
        String from = now.words()
                .of(
                        "bank.from",
                        figures.pressure(latest.pressure().gauge()),
                        figures.pressureWithUnit(plan.stop().reading()));
        return List.of(new Gives(bottle.details().name(), from, plan.fillsLeft().inWords(figures.pressureUnitOf())));
    }

    private List<UnderWay> underWay() {
        return now.bench().openFills().values().stream().map(this::underWay).toList();
    }

    private UnderWay underWay(OpenFill fill) {
        String bottle = now.bench()
                .findBottle(fill.bottle())
                .map(found -> found.details().name())
                .orElse(fill.bottle().value());
        return new UnderWay(bottle, now.place().path("/fill/" + fill.id()), now.age(fill.startedAt()));
    }
}
