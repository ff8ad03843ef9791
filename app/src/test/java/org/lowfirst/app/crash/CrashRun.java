package org.lowfirst.app.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.app.journal.Verification;
import org.lowfirst.station.Fact;

/** Kills children one after another on one database and checks the journal after every kill. */
final class CrashRun {

    /** Acknowledged fills of one child before it is killed, at most, give or take those under way. */
    private static final int MOST_BEFORE_KILL = 5;

    /** About as long as two durable fills take [us]. */
    private static final int LONGEST_WAIT_US = 12_000;

    /** Enough for any kill to come first. */
    private static final String MOST_FILLS = "5000";

    private final Path database;
    private final List<String> command;
    private final Random random;
    private final long setUp;
    private final Map<String, Long> kept = new HashMap<>();
    private final Set<String> sent = new HashSet<>();
    private String unanswered = "-";
    private long keptUnanswered;

    /**
     * @param directory where the database is made
     * @param java command that runs {@link CrashChild}
     */
    CrashRun(Path directory, List<String> java, long seed) {
        this.database = directory.resolve("lowfirst.db");
        this.command = java;
        this.random = new Random(seed);
        this.setUp = CrashWorld.make(database);
    }

    void killOnce(int number) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(command);
        line.addAll(List.of(database.toString(), Integer.toString(number), unanswered, MOST_FILLS));
        Process child = new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        unanswered = "-";
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(said.readLine()).isEqualTo("ready");
            readUntilKept(said, random.nextInt(MOST_BEFORE_KILL + 1));
            // Somewhere in the next fill or two: before it is sent, while it is written, before it is acknowledged.
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_WAIT_US));
            child.toHandle().destroyForcibly();
            assertThat(child.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(child.exitValue()).as("killed by signal 9").isEqualTo(137);
            readUntilKept(said, Integer.MAX_VALUE);
        }
        check();
    }

    private void readUntilKept(BufferedReader said, int fills) throws IOException {
        int seen = 0;
        String line = seen < fills ? said.readLine() : null;
        while (line != null) {
            String[] words = line.split(" ");
            if (words[0].equals("sent") && words.length == 2) {
                sent.add(words[1]);
                unanswered = words[1];
            } else if (words[0].equals("kept") && words.length == 3) {
                assertThat(kept.put(words[1], Long.parseLong(words[2])))
                        .as("acknowledged once: " + words[1])
                        .isNull();
                unanswered = "-";
                seen++;
            }
            line = seen < fills ? said.readLine() : null;
        }
    }

    private void check() {
        try (Journal journal = CrashWorld.open(database)) {
            assertThat(Verification.of(journal, CrashWorld.BENCH)).isInstanceOf(Verification.Whole.class);
            Map<String, Long> there = new HashMap<>();
            for (StoredEntry stored : journal.listFrom(CrashWorld.BENCH, setUp + 1)) {
                String key = stored.entry().origin().key().value();
                assertThat(there.put(key, stored.entry().seq()))
                        .as("once in the journal: " + key)
                        .isNull();
                assertThat(stored.entry().fact())
                        .isInstanceOfSatisfying(
                                Fact.FillRecorded.class,
                                fill -> assertThat(fill.stages()).hasSize(2));
            }
            assertThat(there)
                    .as("every acknowledged fill is there, under its number")
                    .containsAllEntriesOf(kept);
            assertThat(sent).as("nothing is there that was not sent").containsAll(there.keySet());
            keptUnanswered += there.containsKey(unanswered) ? 1 : 0;
        }
    }

    int acknowledged() {
        return kept.size();
    }

    /** Fills that were in the journal although the kill came before the acknowledgement; sent again, they are not doubled. */
    long keptUnanswered() {
        return keptUnanswered;
    }
}
