package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Accepted;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Circumstances;
import org.lowfirst.station.Command;
import org.lowfirst.station.Deciding;
import org.lowfirst.station.Decision;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Evolving;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;
import org.lowfirst.station.Refused;

/** Rows of commands decided one after the other, each on what the ones before leave behind. Used once. */
final class Batch {

    private static final EntryKey SUPPOSED = new EntryKey("supposed");

    private final Circumstances circumstances;
    private final Origin origin;
    private final List<Fact> facts = new ArrayList<>();
    private Bench bench;

    private Batch(Bench bench, Circumstances circumstances) {
        this.bench = bench;
        this.circumstances = circumstances;
        this.origin = new Origin(SUPPOSED, circumstances.now(), circumstances.effectiveAt(), circumstances.author());
    }

    /** For each row the first rule it breaks; a row that breaks one leaves nothing behind. */
    static List<Optional<Refused>> check(Bench bench, List<List<Command>> rows, Circumstances circumstances) {
        Batch batch = new Batch(bench, circumstances);
        return rows.stream().map(row -> Optional.ofNullable(batch.take(row))).toList();
    }

    /** The facts of all rows, or the first rule that one of them breaks. */
    static Decision decide(Bench bench, List<List<Command>> rows, Circumstances circumstances) {
        Batch batch = new Batch(bench, circumstances);
        for (List<Command> row : rows) {
            Refused refused = batch.take(row);
            if (refused != null) {
                return refused;
            }
        }
        return new Accepted(batch.facts);
    }

    private @Nullable Refused take(List<Command> row) {
        Bench before = bench;
        int known = facts.size();
        for (Command command : row) {
            Decision decision = Deciding.decide(bench, command, circumstances);
            if (decision instanceof Refused refused) {
                bench = before;
                facts.subList(known, facts.size()).clear();
                return refused;
            }
            ((Accepted) decision).facts().forEach(this::leave);
        }
        return null;
    }

    private void leave(Fact fact) {
        facts.add(fact);
        bench = Evolving.evolve(bench, new Entry(bench.id(), facts.size(), origin, fact));
    }
}
