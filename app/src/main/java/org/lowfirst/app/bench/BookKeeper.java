package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.Stand;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Turn;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.StageResult;
import org.lowfirst.transfer.Vessel;

/**
 * Keeps the book of the bank, entry by entry in the order they count. A reading of a supply settles its account; a stage
 * without one draws what the bottle gained, and what the hose took; a whole fill of which only the bottle's readings are known
 * is drawn lowest first from the bank as it stood then. Not thread-safe.
 *
 * <p>Symbols: V volume [m3], n amount [mol]; s supply, h hose, b bottle.
 */
final class BookKeeper {

    private final GasCount count;
    private final Map<SupplyId, SupplyAccount> accounts = new HashMap<>();
    private final Map<BottleId, Volume> bottles = new HashMap<>();
    private final Map<FillId, OpenAccount> open = new HashMap<>();
    private AbsolutePressure ambient = StandardAtmosphere.PRESSURE;
    private Volume hoseVolume = new Volume(0.0);
    private Stand stand = Stand.NEW;

    /** A fill under way: its bottle, what that showed last, and the gas in the hose. */
    private record OpenAccount(BottleId bottle, Reading last, Hose hose) {}

    BookKeeper(GasCount count) {
        this.count = count;
    }

    BankBook toBook() {
        return new BankBook(accounts);
    }

    /** @param entry an entry that counts and fits; corrections are resolved before */
    void enter(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.BenchOpened f) {
            settings(f.settings());
        } else if (fact instanceof Fact.SettingsChanged f) {
            settings(f.settings());
        } else if (fact instanceof Fact.SupplyConnected f) {
            accounts.put(f.supply(), account(f.details(), f.reading()));
        } else if (fact instanceof Fact.SupplyAmended f) {
            amend(f.supply(), f.details().waterVolume().stated().volume());
        } else if (fact instanceof Fact.SupplyRemoved f) {
            accounts.remove(f.supply());
        } else if (fact instanceof Fact.BottleRegistered f) {
            bottles.put(f.bottle(), f.details().waterVolume().stated().volume());
        } else if (fact instanceof Fact.BottleAmended f) {
            bottles.put(f.bottle(), f.details().waterVolume().stated().volume());
        } else if (fact instanceof Fact.ReadingTaken f) {
            if (f.cylinder() instanceof SupplyId supply) {
                read(supply, f.reading());
            }
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            together(f);
        } else if (fact instanceof StandFact f) {
            stand = stand.after(f);
        } else {
            enterFill(fact);
        }
    }

    private void enterFill(Fact fact) {
        if (fact instanceof Fact.FillStarted f) {
            open.put(f.fill(), new OpenAccount(f.bottle(), f.before(), purgedHose(f.before())));
        } else if (fact instanceof Fact.StageRecorded f) {
            open.computeIfPresent(f.fill(), (id, account) -> stage(account, f.stage()));
        } else if (fact instanceof Fact.FillFinished f) {
            open.remove(f.fill());
        } else if (fact instanceof Fact.FillAbandoned f) {
            open.remove(f.fill());
        } else if (fact instanceof Fact.FillRecorded f) {
            whole(f);
        }
    }

    private void settings(Settings settings) {
        ambient = settings.surroundings().ambient().absolute();
        hoseVolume = settings.surroundings().hoseVolume().volume();
    }

    private SupplyAccount account(SupplyDetails details, Reading reading) {
        Volume water = details.waterVolume().stated().volume();
        return count.findContents(water, reading, ambient)
                .map(contents -> new SupplyAccount(water, contents, false))
                .orElse(new SupplyAccount(water, Amount.NONE, true));
    }

    /** The gauge has shown the same all along; another water volume means another amount. */
    private void amend(SupplyId supply, Volume water) {
        accounts.computeIfPresent(supply, (id, account) -> {
            Density density = account.vessel().density();
            return new SupplyAccount(water, density.amountIn(water), account.drawn());
        });
    }

    /** A reading that no gas can have given is left out; only an import can bring one. */
    private void read(SupplyId supply, @Nullable Reading reading) {
        if (reading != null) {
            accounts.computeIfPresent(
                    supply,
                    (id, account) -> count.findContents(account.waterVolume(), reading, ambient)
                            .map(contents -> new SupplyAccount(account.waterVolume(), contents, false))
                            .orElse(account));
        }
    }

    private OpenAccount stage(OpenAccount fill, Stage stage) {
        read(stage.supply(), stage.supplyBefore());
        SupplyAccount supply = accounts.get(stage.supply());
        if (supply == null) {
            return new OpenAccount(fill.bottle(), stage.bottleAfter(), fill.hose());
        }
        double moved_mol = moles(fill.bottle(), stage.bottleAfter()) - moles(fill.bottle(), fill.last());
        double joint_m3 = supply.waterVolume().cubicMetres() + hoseVolume.cubicMetres();
        double joint_mol = supply.contents().moles() + fill.hose().contents().moles() - moved_mol;
        double rho_molPerM3 = Math.max(0.0, joint_mol / joint_m3);
        accounts.put(
                stage.supply(), supply.moved(rho_molPerM3 * supply.waterVolume().cubicMetres()));
        read(stage.supply(), stage.supplyAfter());
        SupplyAccount after = accounts.getOrDefault(stage.supply(), supply);
        Hose hose = hoseAt(after.vessel().density());
        return new OpenAccount(fill.bottle(), stage.bottleAfter(), hose);
    }

    private void whole(Fact.FillRecorded f) {
        OpenAccount account = new OpenAccount(f.bottle(), f.before(), purgedHose(f.before()));
        if (f.stages().isEmpty()) {
            lowestFirst(account, f.after(), givers(f.fill()));
            return;
        }
        for (Stage stage : f.stages()) {
            account = stage(account, stage);
        }
    }

    /** Supplies in the order they are opened when nobody says otherwise. */
    private List<SupplyId> givers(FillId fill) {
        List<SupplyId> givers = new ArrayList<>(stand.givers(fill, accounts.keySet()));
        givers.sort(Comparator.comparing((SupplyId id) -> stand.turn(id) != Turn.FIRST)
                .thenComparing(this::density)
                .thenComparing(SupplyId::value));
        return givers;
    }

    private void lowestFirst(OpenAccount fill, Reading after, List<SupplyId> givers) {
        Volume water = bottles.getOrDefault(fill.bottle(), new Volume(0.0));
        if (!(water.cubicMetres() > 0.0)) {
            return;
        }
        Vessel bottle = new Vessel(water, new Amount(moles(fill.bottle(), fill.last())));
        Density stop = new Density(moles(fill.bottle(), after) / water.cubicMetres());
        Hose hose = fill.hose();
        for (SupplyId id : givers) {
            SupplyAccount supply = accounts.get(id);
            if (supply != null) {
                StageResult result = org.lowfirst.transfer.Stage.join(supply.vessel(), hose, bottle, stop);
                hose = result.hose();
                bottle = result.bottle();
                if (result.moved().moles() > 0.0) {
                    accounts.put(id, supply.moved(result.supply().contents().moles()));
                }
            }
        }
        drawRest(
                givers,
                stop.molesPerCubicMetre() * water.cubicMetres()
                        - bottle.contents().moles());
    }

    /** The bottle got more than the bank could give by the book: the fullest supply must have held it. */
    private void drawRest(List<SupplyId> givers, double rest_mol) {
        if (rest_mol > 0.0 && !givers.isEmpty()) {
            accounts.computeIfPresent(
                    Collections.max(givers, Comparator.comparing(this::density)),
                    (id, account) -> account.moved(account.contents().moles() - rest_mol));
        }
    }

    private double density(SupplyId id) {
        SupplyAccount account = accounts.get(id);
        return account == null ? 0.0 : account.vessel().density().molesPerCubicMetre();
    }

    private void together(Fact.TwoOpenedTogether f) {
        SupplyAccount first = accounts.get(f.first());
        SupplyAccount second = accounts.get(f.second());
        if (first == null || second == null) {
            return;
        }
        List<Vessel> levelled = org.lowfirst.transfer.Together.levelled(List.of(first.vessel(), second.vessel()));
        accounts.put(f.first(), first.moved(levelled.get(0).contents().moles()));
        accounts.put(f.second(), second.moved(levelled.get(1).contents().moles()));
        read(f.first(), f.firstAfter());
        read(f.second(), f.secondAfter());
        if (f.secondAfter() == null && f.firstAfter() != null) {
            sameAs(f.first(), f.second());
        } else if (f.firstAfter() == null && f.secondAfter() != null) {
            sameAs(f.second(), f.first());
        }
    }

    /** Two supplies that were open together show the same; one gauge was read. */
    private void sameAs(SupplyId read, SupplyId other) {
        double rho_molPerM3 = density(read);
        accounts.computeIfPresent(
                other,
                (id, account) ->
                        account.moved(rho_molPerM3 * account.waterVolume().cubicMetres()));
    }

    private double moles(BottleId bottle, Reading reading) {
        Volume water = bottles.getOrDefault(bottle, new Volume(0.0));
        return water.cubicMetres() > 0.0
                ? count.findContents(water, reading, ambient)
                        .orElse(Amount.NONE)
                        .moles()
                : 0.0;
    }

    private Hose purgedHose(Reading reading) {
        Temperature temperature = reading.temperature().temperature();
        return hoseAt(count.atAmbient(temperature, ambient));
    }

    private Hose hoseAt(Density density) {
        return hoseVolume.cubicMetres() > 0.0 ? new Hose(hoseVolume, density.amountIn(hoseVolume)) : Hose.NONE;
    }
}
