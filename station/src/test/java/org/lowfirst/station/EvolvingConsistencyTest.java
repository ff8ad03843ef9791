package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EvolvingConsistencyTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void oneByOneOrAllAtOnceInWhateverOrderTheyArriveIsTheSameBench(long seed) {
        Random random = new Random(seed);
        List<Entry> entries = entries(random);
        Bench step = null;
        for (Entry entry : Timeline.of(entries)) {
            step = Evolving.evolve(step, entry);
        }
        List<Entry> shuffled = new ArrayList<>(entries);
        Collections.shuffle(shuffled, random);
        assertThat(Evolving.fold(Timeline.of(shuffled).iterator()))
                .isEqualTo(new Folding.Folded(Objects.requireNonNull(step)));
    }

    private static List<Entry> entries(Random random) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : Larkmoor.facts()) {
            add(entries, fact, Larkmoor.TEN);
        }
        List<SupplyId> supplies = List.of(Larkmoor.A, Larkmoor.B, Larkmoor.C);
        for (int i = 0; i < 200; i++) {
            int minute = 1 + random.nextInt(300);
            Instant at = Larkmoor.TEN.plusSeconds(60L * minute);
            Reading reading = Larkmoor.reads(Integer.toString(random.nextInt(200)), minute);
            boolean correct = random.nextInt(10) == 0 && entries.size() > 5;
            if (correct) {
                long target = entries.size();
                Entry corrected = entries.get((int) target - 1);
                if (Corrections.counting(corrected).orElseThrow().fact() instanceof Fact.ReadingTaken f) {
                    Fact replacement = new Fact.ReadingTaken(f.cylinder(), reading);
                    add(entries, new Fact.EntryCorrected(target, "slip", replacement), at);
                }
            } else {
                add(entries, new Fact.ReadingTaken(supplies.get(random.nextInt(3)), reading), at);
            }
        }
        return entries;
    }

    private static void add(List<Entry> entries, Fact fact, Instant at) {
        long seq = entries.size() + 1L;
        entries.add(new Entry(Larkmoor.BENCH, seq, new Origin(new EntryKey("k" + seq), at, at, "Ida"), fact));
    }
}
