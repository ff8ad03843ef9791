package org.lowfirst.web.workplace;

import java.time.Clock;
import java.util.Optional;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.IdSource;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.web.figures.Times;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Screens;
import org.lowfirst.web.words.Spoken;
import org.lowfirst.web.words.Words;

/**
 * What the pages share. Thread-safe.
 *
 * @param benches the use cases
 * @param screens makes views of page records
 * @param clock the time, and the zone in which the bench stands
 * @param ids makes the keys of forms and the ids of new things
 */
public record Workplace(Benches benches, Screens screens, Clock clock, IdSource ids) {

    /** The use cases, in the language of the request being answered. */
    @Override
    public Benches benches() {
        return benches.in(Spoken.language());
    }

    /**
     * The bench named in an address; the answer is in its language from here on.
     *
     * @throws NoSuchThing when there is none; answered with 404
     */
    public BenchNow open(String bench) {
        Bench found = findId(bench)
                .flatMap(id -> benches.openingABench().findBench(id))
                .orElseThrow(() -> new NoSuchThing("bench " + bench));
        Spoken.speak(found.settings().language());
        return new BenchNow(found, words(), new Times(words(), clock.getZone()), clock.instant());
    }

    /** Why nothing was entered, in one or two sentences; empty when it was. */
    public String fault(Recording recording) {
        return Answers.fault(recording, words(), new Times(words(), clock.getZone()));
    }

    public Words words() {
        return screens.words();
    }

    private static Optional<BenchId> findId(String bench) {
        return bench.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}") ? Optional.of(new BenchId(bench)) : Optional.empty();
    }
}
