package org.lowfirst.station;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What somebody asks of a bench. A command is decided into facts or a refusal, see {@link Deciding}. */
public sealed interface Command {

    /** The fact this command asks to enter; of several the first, on which the others rest. */
    Fact fact();

    /** All facts this command asks to enter, together or not at all. */
    default List<Fact> facts() {
        return List.of(fact());
    }

    record OpenBench(Settings settings) implements Command {
        @Override
        public Fact fact() {
            return new Fact.BenchOpened(settings);
        }
    }

    record ChangeSettings(Settings settings) implements Command {
        @Override
        public Fact fact() {
            return new Fact.SettingsChanged(settings);
        }
    }

    record ConnectSupply(SupplyId supply, SupplyDetails details, Reading reading) implements Command {
        @Override
        public Fact fact() {
            return new Fact.SupplyConnected(supply, details, reading);
        }
    }

    /**
     * Connects a supply and says at once how it stands.
     *
     * @param standing facts about this supply, or about the exchange it came in
     */
    record TakeInSupply(ConnectSupply connecting, List<StandFact> standing) implements Command {

        public TakeInSupply {
            standing = List.copyOf(standing);
        }

        @Override
        public Fact fact() {
            return connecting.fact();
        }

        @Override
        public List<Fact> facts() {
            List<Fact> facts = new ArrayList<>();
            facts.add(fact());
            facts.addAll(standing);
            return facts;
        }
    }

    record AmendSupply(SupplyId supply, SupplyDetails details) implements Command {
        @Override
        public Fact fact() {
            return new Fact.SupplyAmended(supply, details);
        }
    }

    record RemoveSupply(SupplyId supply, @Nullable Reading residual, String reason) implements Command {
        @Override
        public Fact fact() {
            return new Fact.SupplyRemoved(supply, residual, reason);
        }
    }

    record RegisterBottle(
            BottleId bottle,
            BottleDetails details,
            @Nullable Reading reading) implements Command {
        @Override
        public Fact fact() {
            return new Fact.BottleRegistered(bottle, details, reading);
        }
    }

    record AmendBottle(BottleId bottle, BottleDetails details) implements Command {
        @Override
        public Fact fact() {
            return new Fact.BottleAmended(bottle, details);
        }
    }

    record RetireBottle(BottleId bottle, String reason) implements Command {
        @Override
        public Fact fact() {
            return new Fact.BottleRetired(bottle, reason);
        }
    }

    record TakeReading(CylinderId cylinder, Reading reading) implements Command {
        @Override
        public Fact fact() {
            return new Fact.ReadingTaken(cylinder, reading);
        }
    }

    /** See {@link Fact.WarmBottleRead}. */
    record ReadWarmBottle(BottleId bottle, Reading reading, StatedTemperature gas) implements Command {
        @Override
        public Fact fact() {
            return new Fact.WarmBottleRead(bottle, reading, gas);
        }
    }

    record StartFill(FillId fill, BottleId bottle, StatedPressure target, Reading before) implements Command {
        @Override
        public Fact fact() {
            return new Fact.FillStarted(fill, bottle, target, before);
        }
    }

    /** See {@link CrewFact.SecondPersonNamed}. */
    record StartFillBeside(StartFill start, String filler, String second) implements Command {
        @Override
        public Fact fact() {
            return start.fact();
        }

        @Override
        public List<Fact> facts() {
            return List.of(fact(), new CrewFact.SecondPersonNamed(start.fill(), filler, second));
        }
    }

    record RecordStage(FillId fill, Stage stage) implements Command {
        @Override
        public Fact fact() {
            return new Fact.StageRecorded(fill, stage);
        }
    }

    record FinishFill(FillId fill, Reading after) implements Command {
        @Override
        public Fact fact() {
            return new Fact.FillFinished(fill, after);
        }
    }

    record AbandonFill(FillId fill, String reason) implements Command {
        @Override
        public Fact fact() {
            return new Fact.FillAbandoned(fill, reason);
        }
    }

    /** See {@link Fact.FillRecorded}. */
    record RecordFill(
            FillId fill,
            BottleId bottle,
            @Nullable StatedPressure target,
            Reading before,
            Reading after,
            List<Stage> stages)
            implements Command {

        public RecordFill {
            stages = List.copyOf(stages);
        }

        @Override
        public Fact fact() {
            return new Fact.FillRecorded(fill, bottle, target, before, after, stages);
        }
    }

    record RecordTwoOpenTogether(
            SupplyId first,
            SupplyId second,
            @Nullable Reading firstAfter,
            @Nullable Reading secondAfter) implements Command {
        @Override
        public Fact fact() {
            return new Fact.TwoOpenedTogether(first, second, firstAfter, secondAfter);
        }
    }

    record DescribeGauge(GaugeDetails gauge) implements Command {
        @Override
        public Fact fact() {
            return new Fact.GaugeDescribed(gauge);
        }
    }

    record RetireGauge(String gauge, String reason) implements Command {
        @Override
        public Fact fact() {
            return new Fact.GaugeRetired(gauge, reason);
        }
    }

    record AllowWarmStop(WarmStop permission) implements Command {
        @Override
        public Fact fact() {
            return new Fact.WarmStopAllowed(permission);
        }
    }

    record ForbidWarmStop(String responsible) implements Command {
        @Override
        public Fact fact() {
            return new Fact.WarmStopForbidden(responsible);
        }
    }

    /** @param entry the entry to sign, as it stands in the journal */
    record SignEntry(Entry entry, String signer) implements Command {
        @Override
        public Fact fact() {
            return new CrewFact.EntrySigned(entry.seq(), signer);
        }
    }

    /** Enters a fact of an area as it is. */
    record Enter(AreaFact fact) implements Command {}

    /**
     * @param entry the entry to correct, as it stands in the journal
     * @param replacement what really happened, of the same kind; null to reverse only
     */
    record CorrectEntry(
            Entry entry, String reason, @Nullable Fact replacement) implements Command {
        @Override
        public Fact fact() {
            return new Fact.EntryCorrected(entry.seq(), reason, replacement);
        }
    }
}
