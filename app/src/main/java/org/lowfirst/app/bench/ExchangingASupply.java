package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Command.TakeInSupply;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.charges.Money;
import org.lowfirst.station.charges.SupplierCost;

/** Leads one supply out of the bank and another into its place. Each act is an entry of its own, so that it can be gone on with. */
public final class ExchangingASupply {

    private final Recorder recorder;
    private final BenchPlanner planner;
    private final KeepingTheBank keeping;
    private final KeepingAccounts accounts;
    private final GasCount count;

    ExchangingASupply(
            Recorder recorder, BenchPlanner planner, KeepingTheBank keeping, KeepingAccounts accounts, GasCount count) {
        this.recorder = recorder;
        this.planner = planner;
        this.keeping = keeping;
        this.accounts = accounts;
        this.count = count;
    }

    /**
     * What goes back in a supply by its latest reading, and what was paid for it: the share of the latest filling paid for, of
     * this supply if its serial number was said, or else of any.
     */
    public ReturnedGas returned(BenchId bench, Supply supply) {
        Settings settings = recorder.getState(bench).bench().settings();
        AbsolutePressure ambient = settings.surroundings().ambient().absolute();
        Volume water = supply.details().waterVolume().stated().volume();
        Amount gas = count.findContents(water, supply.latest(), ambient).orElse(Amount.NONE);
        double full_mol = count.findContents(
                        water,
                        settings.fullSupply().gauge(),
                        settings.surroundings().usualTemperature().temperature(),
                        ambient)
                .orElse(Amount.NONE)
                .moles();
        return new ReturnedGas(
                gas,
                full_mol > 0.0
                        ? filling(bench, supply)
                                .map(paid -> share(paid, gas.moles() / full_mol))
                                .orElse(null)
                        : null);
    }

    private static Money share(Money paid, double share) {
        BigDecimal exact = paid.amount().multiply(BigDecimal.valueOf(share));
        int digits = paid.currency().getDefaultFractionDigits();
        return new Money(exact.setScale(digits, RoundingMode.HALF_UP), paid.currency());
    }

    private Optional<Money> filling(BenchId bench, Supply supply) {
        if (recorder.getState(bench).bench().areas().accounts().currency() == null) {
            return Optional.empty();
        }
        List<SupplierCost.Content> fillings = accounts.books(bench).costs().stream()
                .filter(SupplierCost.Content.class::isInstance)
                .map(SupplierCost.Content.class::cast)
                .toList();
        String serial = supply.details().serial();
        return fillings.stream()
                .filter(filling -> filling.serial().equals(serial))
                .reduce((earlier, later) -> later)
                .or(() -> fillings.stream().reduce((earlier, later) -> later))
                .map(SupplierCost.Content::amount);
    }

    /**
     * What each supply of one bank would mean, rank 1 first. The lowest is advised.
     *
     * @param bank name of the bank; empty for the one without a name
     */
    public List<ExchangeOffer> offers(BenchId bench, String bank) {
        BenchState state = recorder.getState(bench);
        UsualBottle usual = UsualBottle.of(state.bench()).orElse(null);
        List<SupplyView> views = keeping.bank(bench).in(bank);
        List<SupplyState> standing =
                usual == null ? List.of() : planner.bank(state, bank, before(state.bench(), usual));
        FillsLeft now = usual == null ? null : left(state, usual, standing);
        List<ExchangeOffer> offers = new ArrayList<>();
        for (SupplyView view : views) {
            FillsLeft full = usual == null ? null : left(state, usual, withFull(state.bench(), standing, view));
            offers.add(new ExchangeOffer(view, view.rank() == 1, now, full));
        }
        return offers;
    }

    private static List<SupplyState> withFull(Bench bench, List<SupplyState> standing, SupplyView view) {
        String name = view.supply().details().name();
        return standing.stream()
                .map(supply -> supply.name().equals(name)
                        ? new SupplyState(
                                name,
                                supply.waterVolume(),
                                bench.settings().fullSupply().gauge())
                        : supply)
                .toList();
    }

    private @Nullable FillsLeft left(BenchState state, UsualBottle usual, List<SupplyState> bank) {
        return planner.plan(state, usual.bottle().id(), usual.target(), before(state.bench(), usual), bank)
                        instanceof FillPlan plan
                ? plan.fillsLeft()
                : null;
    }

    private Reading before(Bench bench, UsualBottle usual) {
        return usual.before(bench.settings(), recorder.clock().instant());
    }

    /** The exchange is meant: from now on it is shown as under way. */
    public Recording begin(BenchId bench, SupplyId leaving, Submission submission) {
        return recorder.record(bench, new Enter(new StandFact.ExchangeBegun(leaving)), submission);
    }

    /** What is left in the supply that leaves, read before anything is loosened. */
    public Recording readResidual(BenchId bench, SupplyId leaving, Reading residual, Submission submission) {
        return recorder.record(bench, new TakeReading(leaving, residual), submission);
    }

    /** It is off the bank. */
    public Recording takeOff(BenchId bench, RemoveSupply command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    /** The newcomer stands connected in the place, and in the bank, of the one that left; all or nothing. */
    public Recording takeIn(
            BenchId bench, SupplyId left, ConnectSupply newcomer, Delivery delivery, Submission submission) {
        List<StandFact> standing = new ArrayList<>();
        String bank = recorder.getState(bench).bench().stand().bank(left);
        if (bank != null) {
            standing.add(new StandFact.SupplyPlaced(newcomer.supply(), bank));
        }
        if (!delivery.equals(Delivery.UNSAID)) {
            standing.add(new StandFact.SupplyDelivered(newcomer.supply(), delivery));
        }
        standing.add(new StandFact.ExchangeMade(left, newcomer.supply()));
        return recorder.record(bench, new TakeInSupply(newcomer, standing), submission);
    }

    /** Nothing takes the place, or the supply stays. */
    public Recording breakOff(BenchId bench, SupplyId leaving, String reason, Submission submission) {
        return recorder.record(bench, new Enter(new StandFact.ExchangeBrokenOff(leaving, reason)), submission);
    }
}
