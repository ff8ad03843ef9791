package org.lowfirst.app.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that records fills is killed with SIGKILL at seeded random moments. After every kill: the chain is whole, every
 * acknowledged fill is there under its number, no fill is there twice or in part, nothing is there that was not sent. The fill
 * that was under way is sent again by the next process.
 *
 * <p>The longer run: bin/crash-test 1000.
 */
class CrashTest {

    private static final int KILLS = Integer.getInteger("lowfirst.kills", 100);
    private static final int LANES = 2;
    private static final long SEED = Long.getLong("lowfirst.seed", 20_260_614L);

    @TempDir
    private Path directory;

    @Test
    void nothingAcknowledgedIsLostAndNothingIsThereTwice() throws Exception {
        List<String> java = ChildJava.command(directory);
        ExecutorService lanes = Executors.newFixedThreadPool(LANES);
        try {
            List<Future<CrashRun>> runs = new ArrayList<>();
            for (int lane = 0; lane < LANES; lane++) {
                Path own = Files.createDirectory(directory.resolve("lane-" + lane));
                int kills = KILLS / LANES + (lane < KILLS % LANES ? 1 : 0);
                long seed = SEED + lane;
                runs.add(lanes.submit(() -> run(own, java, seed, kills)));
            }
            int acknowledged = 0;
            for (Future<CrashRun> run : runs) {
                acknowledged += run.get().acknowledged();
            }
            assertThat(acknowledged).as("fills acknowledged before a kill").isGreaterThan(KILLS);
        } finally {
            lanes.shutdownNow();
        }
    }

    private static CrashRun run(Path directory, List<String> java, long seed, int kills)
            throws IOException, InterruptedException {
        CrashRun run = new CrashRun(directory, java, seed);
        for (int i = 1; i <= kills; i++) {
            run.killOnce(i);
        }
        return run;
    }
}
