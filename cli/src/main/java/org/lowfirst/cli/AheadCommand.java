package org.lowfirst.cli;

import java.io.IOException;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.ahead.AheadJson;
import org.lowfirst.app.ahead.AheadSheet;
import org.lowfirst.app.ahead.LookedAhead;
import org.lowfirst.app.ahead.LookingAheadFromAFile;
import org.lowfirst.app.bench.BenchSummary;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.outlook.AskingAhead;
import org.lowfirst.app.outlook.MoreFills;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst ahead [FILE]}. */
@Command(
        name = "ahead",
        description =
                "Tells how long a bank lasts and when to order, with 50 %% and 90 %% bands: for a bench, from its journal, or"
                        + " for what a file tells.",
        footer = {
            "",
            "The same journal or file, day and options give the same bytes.",
            "",
            "Exit codes: 0 there is time; 3 an order is due today or late; 2 the file or the command line is wrong; 1"
                    + " anything else.",
            "examples/ahead.yaml shows a file."
        })
final class AheadCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private final JournalOptions journals = new JournalOptions();

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "File in YAML; - reads what is piped in. Left out: the journal of a bench.")
    private @Nullable String file;

    @Option(names = "--bench", paramLabel = "NAME", description = "Name or id of the bench, when there are several.")
    private @Nullable String bench;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "Day to look ahead from, 2026-05-01; left out: today.")
    private @Nullable String today;

    @Option(
            names = "--lead-days",
            paramLabel = "N",
            description = "Days from order to delivery; left out: as kept at the bench, or 3.")
    private @Nullable Integer leadDays;

    @Option(
            names = "--reserve",
            paramLabel = "N",
            description = "Fills that should still be in the bank when the delivery comes; left out: as kept at the"
                    + " bench, or 2.")
    private @Nullable Integer reserve;

    @Option(
            names = "--event",
            paramLabel = "DATE[/DAYS]=FILLS",
            converter = EventOption.class,
            description = "More fills than usual on a day or some days, 2026-05-23=5 or 2026-05-23/7=30, beside what is"
                    + " planned at the bench; may be given again.")
    private List<MoreFills> events = new ArrayList<>();

    @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
    private boolean json;

    AheadCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (file != null) {
            LookingAheadFromAFile looking = new LookingAheadFromAFile(Oxygen.schmidtWagner());
            return new AnsweringAFile(terminal)
                    .answer(
                            file,
                            "nothing was worked out",
                            found -> looking.look(found.name(), found.bytes()),
                            this::print);
        }
        Clock clock = Clock.system(ZoneId.systemDefault());
        Optional<LocalDate> day = day(clock);
        if (day.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        return new OpenedJournal(terminal).existing(journals.file(), journal -> look(journal, clock, day.get()));
    }

    private Optional<LocalDate> day(Clock clock) {
        if (today == null) {
            return Optional.of(LocalDate.now(clock));
        }
        try {
            return Optional.of(LocalDate.parse(today));
        } catch (DateTimeException unreadable) {
            terminal.err()
                    .println("lowfirst ahead: the date (" + today
                            + ") must be a day of the calendar as year-month-day, for example 2026-05-01.");
            return Optional.empty();
        }
    }

    private int look(Journal journal, Clock clock, LocalDate day) {
        Benches benches = new Benches(journal, clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
        List<BenchSummary> known = benches.openingABench().listBenches();
        String asked = bench;
        List<BenchSummary> meant = known.stream()
                .filter(one -> asked == null
                        || one.name().equals(asked)
                        || String.valueOf(one.id()).equals(asked))
                .toList();
        if (meant.size() != 1) {
            terminal.err().println(whichBench(known, asked));
            return ExitCode.BAD_INPUT;
        }
        AskingAhead asking = benches.askingAhead();
        AskingAhead.Look look = asking.look(meant.get(0).id(), clock.getZone(), day, leadDays, reserve, events);
        if (look instanceof AskingAhead.Look.Seen seen) {
            return print(seen.looked());
        }
        terminal.err().println("lowfirst ahead: " + ((AskingAhead.Look.Unseen) look).inWords());
        return ExitCode.BAD_INPUT;
    }

    private static String whichBench(List<BenchSummary> known, @Nullable String asked) {
        if (known.isEmpty()) {
            return "lowfirst ahead: the journal has no bench yet. Start lowfirst and open one, or name a file.";
        }
        String names = String.join(
                ", ",
                known.stream().map(one -> one.name() + " (" + one.id() + ")").toList());
        return asked == null
                ? "lowfirst ahead: the journal has " + known.size() + " benches. Choose one with --bench: " + names
                        + "."
                : "lowfirst ahead: there is no one bench \"" + asked + "\". The journal has " + names + ".";
    }

    private int print(LookedAhead looked) {
        terminal.out().print(json ? AheadJson.of(looked) : AheadSheet.of(looked));
        return looked.orderIsDue() ? ExitCode.ORDER_IS_DUE : ExitCode.DONE;
    }
}
