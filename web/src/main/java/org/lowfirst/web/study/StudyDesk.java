package org.lowfirst.web.study;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.lowfirst.planning.study.Studying;

/** Runs studies in the background, one after another, and keeps the latest. Thread-safe. */
final class StudyDesk {

    private static final int KEPT = 12;

    private final Clock clock;
    private final Map<String, StudyRun> runs = new LinkedHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "study desk");
        thread.setDaemon(true);
        return thread;
    });

    StudyDesk(Clock clock) {
        this.clock = clock;
    }

    /** Takes on a study; the oldest of many is forgotten. */
    void take(StudyRun run) {
        synchronized (runs) {
            runs.put(run.id(), run);
            while (runs.size() > KEPT) {
                StudyRun oldest = runs.remove(runs.keySet().iterator().next());
                if (oldest != null) {
                    oldest.stop();
                }
            }
        }
        worker.execute(() -> work(run));
    }

    Optional<StudyRun> find(String bench, String id) {
        synchronized (runs) {
            return Optional.ofNullable(runs.get(id)).filter(run -> run.bench().equals(bench));
        }
    }

    /** The latest study of a bench. */
    Optional<StudyRun> latest(String bench) {
        synchronized (runs) {
            StudyRun latest = null;
            for (StudyRun run : runs.values()) {
                latest = run.bench().equals(bench) ? run : latest;
            }
            return Optional.ofNullable(latest);
        }
    }

    private void work(StudyRun run) {
        run.begin(clock.instant());
        run.end(Studying.study(
                run.request(), Runtime.getRuntime().availableProcessors(), (done, all) -> run.goOn(done)));
    }
}
