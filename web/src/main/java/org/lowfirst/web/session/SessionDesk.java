package org.lowfirst.web.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.session.Effort;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionRequest;
import org.lowfirst.station.Settings;

/**
 * Searches for plans of sessions in the background and keeps the latest, so that whoever asks the same again, to see how far it
 * is, sees the same search. Thread-safe.
 */
final class SessionDesk {

    private static final int KEPT = 12;
    private static final int AT_ONCE = 2;

    /**
     * What a search depends on.
     *
     * @param temperature as typed; empty for the bench's usual one
     */
    record Question(String bench, Settings settings, String temperature, SessionRequest request) {}

    private final Map<Question, SessionSearch> searches = new LinkedHashMap<>();
    private final ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE, work -> {
        Thread thread = new Thread(work, "session desk");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * The search for a question, begun when nobody has asked it lately; the oldest of many is ended.
     *
     * @param enough whether the best so far will do; else a search that was stopped is begun again
     */
    SessionSearch search(Question question, SessionPlanner planner, boolean enough) {
        synchronized (searches) {
            @Nullable SessionSearch known = searches.get(question);
            if (known != null && (enough || !known.stopped())) {
                return known;
            }
            SessionSearch begun = new SessionSearch();
            searches.put(question, begun);
            while (searches.size() > KEPT) {
                @Nullable
                SessionSearch oldest =
                        searches.remove(searches.keySet().iterator().next());
                if (oldest != null) {
                    oldest.stop();
                }
            }
            workers.execute(() -> work(question, planner, begun));
            return begun;
        }
    }

    private static void work(Question question, SessionPlanner planner, SessionSearch search) {
        try {
            search.end(planner.plan(question.request(), Effort.USUAL, search));
        } finally {
            search.fail(new IllegalStateException("The search for a plan ended without one."));
        }
    }
}
