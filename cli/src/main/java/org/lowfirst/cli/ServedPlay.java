package org.lowfirst.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.lowfirst.app.virtual.LiveBenchPlay;
import org.lowfirst.app.virtual.LiveTelling;

/** An invented bench that is served and played, in a folder of its own. */
final class ServedPlay {

    private static final Duration LOOK = Duration.ofMillis(50);

    private ServedPlay() {}

    /**
     * @param fills how many bottles come
     * @param pace between two lines
     * @param port to serve on; 0 for one that is free
     * @param stay whether to go on serving after the last bottle
     * @param start when it begins at the bench
     */
    record Wish(long seed, int fills, Duration pace, int port, boolean stay, Instant start) {}

    /** Plays until the last bottle or Ctrl+C, tells the truth, and removes the folder. */
    static int until(Wish wish, Terminal terminal) throws InterruptedException {
        Path folder = folder();
        try (Interruption interruption = Interruption.watched()) {
            LiveBenchPlay play = new LiveBenchPlay(wish.seed(), wish.start(), Locale.ENGLISH);
            ServedPages.Start start = ServedPages.start(folder, "127.0.0.1", wish.port(), play.clock());
            if (start instanceof ServedPages.Start.Refused refused) {
                terminal.err().println("lowfirst demo: " + refused.why());
                return ExitCode.FAILED;
            }
            try (ServedPages pages = ((ServedPages.Start.Up) start).pages()) {
                play(wish, terminal, interruption, play, pages, folder);
            }
            return ExitCode.DONE;
        } finally {
            remove(folder);
        }
    }

    private static void play(
            Wish wish, Terminal terminal, Interruption interruption, LiveBenchPlay play, ServedPages pages, Path folder)
            throws InterruptedException {
        RandomIds ids = new RandomIds();
        play.enter(pages.benches(), ids);
        say(terminal, "An invented bench is at " + play.address(pages.url()).resolve("bank"));
        say(terminal, "Its journal is in " + folder + " until it is stopped.");
        say(terminal, "Ctrl+C stops it. Nothing of it is kept.");
        LiveTelling telling = new LiveTelling(
                line -> say(terminal, line), () -> rest(wish.pace(), interruption), interruption::asked);
        play.play(pages.url(), wish.fills(), telling);
        say(terminal, "");
        List<String> truth = play.truth(pages.benches());
        truth.forEach(line -> say(terminal, line));
        while (wish.stay() && !interruption.asked()) {
            Thread.sleep(LOOK.toMillis());
        }
    }

    private static void rest(Duration pace, Interruption interruption) {
        long until = System.nanoTime() + pace.toNanos();
        while (System.nanoTime() < until && !interruption.asked()) {
            try {
                Thread.sleep(Math.min(LOOK.toMillis(), Math.max(1, (until - System.nanoTime()) / 1_000_000)));
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private static void say(Terminal terminal, String line) {
        terminal.out().println(line);
        terminal.out().flush();
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("lowfirst-demo");
        } catch (IOException e) {
            throw new UncheckedIOException("No folder for the demo could be made.", e);
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The folder " + folder + " could not be removed.", e);
        }
    }
}
