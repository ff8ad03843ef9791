package org.lowfirst.web.bank;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.PlanningAFill;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.gas.Amount;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleStatus;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;
import org.lowfirst.web.bank.BankPage.Arrival;
import org.lowfirst.web.bank.BankPage.Gives;
import org.lowfirst.web.bank.BankPage.OneBank;
import org.lowfirst.web.bank.BankPage.UnderWay;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.picture.CylinderPicture;
import org.lowfirst.web.stand.TurnMark;
import org.lowfirst.web.verdict.Standing;
import org.lowfirst.web.workplace.BenchNow;

/** Makes the page of one bank. */
final class Bank {

    /** A reading this old says little: temperature has changed and anybody may have drawn gas (common practice, no source). */
    private static final Duration OLD = Duration.ofDays(7);

    /** So many kinds of bottle are shown with their fills left. */
    private static final int MOST_KINDS = 5;

    /** A bottle that comes to be filled is taken to be found at this part of its target (common practice, no source). */
    private static final BigDecimal FOUND_AT = new BigDecimal("0.25");

    private final BenchNow now;
    private final Figures figures;
    private final PlanningAFill planning;
    private final ReadingHistory history;

    Bank(BenchNow now, PlanningAFill planning, ReadingHistory history) {
        this.history = history;
        this.now = now;
        this.figures = now.figures();
        this.planning = planning;
    }

    /** @param arrival a supply that was just connected and is not full; null for none */
    BankPage page(BankView bank, @Nullable Arrival arrival) {
        List<OneBank> banks = bank.supplies().isEmpty()
                ? List.of()
                : bank.names().stream().map(name -> one(bank, name)).toList();
        return new BankPage(now.place(), figures.pressureUnit(), banks, held(bank), underWay(), exchanges(), arrival);
    }

    private OneBank one(BankView bank, String name) {
        String unnamed = bank.names().size() > 1 ? now.words().of("bank.unnamed") : "";
        return new OneBank(
                name.isEmpty() ? unnamed : name,
                bank.in(name).stream().map(this::tile).toList(),
                gives(name));
    }

    private List<UnderWay> exchanges() {
        return now.bench().stand().leaving().stream()
                .map(leaving -> new UnderWay(
                        now.bench()
                                .findSupply(leaving)
                                .map(supply -> supply.details().name())
                                .orElse(leaving.value()),
                        now.place().path("/exchange/" + leaving),
                        ""))
                .toList();
    }

    private SupplyTile tile(SupplyView view) {
        Supply supply = view.supply();
        return new SupplyTile(
                supply.id().value(),
                view.rank(),
                supply.details().name(),
                CylinderPicture.of(part(view)),
                figures.pressure(view.estimate()),
                Standing.within(now, history, supply.id()),
                Standing.badge(history, supply.id()),
                TurnMark.of(view.standing(), now.words()),
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

    /** Bottles of one size and target are one kind; the kinds with most bottles come first. */
    private List<Gives> gives(String bank) {
        Map<String, List<Bottle>> kinds = new LinkedHashMap<>();
        now.bench().listBottles().stream()
                .filter(bottle -> bottle.status() == BottleStatus.IN_USE)
                .forEach(bottle -> kinds.computeIfAbsent(kind(bottle), kind -> new ArrayList<>())
                        .add(bottle));
        return kinds.values().stream()
                .sorted(Comparator.comparing((List<Bottle> same) -> -same.size()))
                .limit(MOST_KINDS)
                .map(same -> gives(bank, same))
                .flatMap(List::stream)
                .toList();
    }

    private List<Gives> gives(String bank, List<Bottle> same) {
        Bottle bottle = same.get(0);
        StatedPressure target = target(bottle);
        StatedPressure found = new StatedPressure(target.value().multiply(FOUND_AT), target.unit());
        Reading before = now.reading(found, null);
        if (!(planning.plan(now.id(), bank, bottle.id(), target, before) instanceof FillPlan plan)) {
            return List.of();
        }
        String kind = now.words()
                .of(
                        "bank.kind",
                        figures.asTyped(bottle.details().waterVolume().stated()),
                        figures.pressure(found.gauge()),
                        figures.pressureWithUnit(plan.stop().reading()));
        String names = same.stream().map(one -> one.details().name()).collect(Collectors.joining(", "));
        return List.of(new Gives(kind, names, plan.fillsLeft().inWords(now.shownUnits())));
    }

    private String kind(Bottle bottle) {
        return figures.asTyped(bottle.details().waterVolume().stated()) + " " + figures.asTyped(target(bottle));
    }

    private static StatedPressure target(Bottle bottle) {
        @Nullable StatedPressure usual = bottle.details().usualTarget();
        return usual == null ? bottle.details().servicePressure() : usual;
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
