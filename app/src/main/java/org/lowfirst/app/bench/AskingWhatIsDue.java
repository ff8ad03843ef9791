package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Attest;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Judging;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Roster;
import org.lowfirst.station.due.CalendarFeed;
import org.lowfirst.station.due.CalendarText;
import org.lowfirst.station.due.CheckOut;
import org.lowfirst.station.due.DueItem;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.DueList;
import org.lowfirst.station.due.DueWords;
import org.lowfirst.station.rules.CylinderDate;
import org.lowfirst.station.rules.CylinderFacts;
import org.lowfirst.station.rules.RuleBook;

/** Says what falls due: tests and ends of life of bottles, equipment, check-outs and trainings. */
public final class AskingWhatIsDue {

    /** Days before that a calendar gives a sign (common practice, no source). */
    private static final int SIGN_DAYS = 14;

    private final Recorder recorder;
    private final Locale locale;
    private final Wording due;
    private final Wording wording;

    AskingWhatIsDue(Recorder recorder, Locale locale) {
        this.recorder = recorder;
        this.locale = locale;
        this.due = Wording.of(DueKind.class, locale);
        this.wording = Wording.of(AskingWhatIsDue.class, locale);
    }

    /**
     * Everything with a last good day.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public DueSheet sheet(BenchId id) {
        Bench bench = recorder.getState(id).bench();
        LocalDate today = LocalDate.now(recorder.clock());
        RuleBook book = Judging.book(bench);
        List<CylinderFacts> cylinders = new ArrayList<>();
        List<String> unmarked = new ArrayList<>();
        List<String> undated = new ArrayList<>();
        for (Bottle bottle : bench.listBottles()) {
            if (!bottle.inUse()) {
                continue;
            }
            CylinderFacts facts = Judging.facts(bench, bottle.id(), null, today);
            if (bench.areas().gate().papersOf(bottle.id()).marking() == null) {
                unmarked.add(facts.name());
            } else if (CylinderDate.list(facts, book, today).isEmpty()) {
                undated.add(facts.name());
            }
            cylinders.add(facts);
        }
        Roster roster = bench.roster();
        DueList known = DueList.of(
                cylinders, book, List.copyOf(bench.areas().care().upkeep().values()), checkOuts(roster), today);
        List<DueItem> items = new ArrayList<>(known.items());
        items.addAll(trainings(roster));
        return new DueSheet(today, new DueList(items), unmarked, undated);
    }

    private static List<CheckOut> checkOuts(Roster roster) {
        List<CheckOut> checkOuts = new ArrayList<>();
        for (String name : roster.names()) {
            Attest attest = roster.find(name).map(PersonDetails::checkOut).orElse(null);
            if (attest != null) {
                checkOuts.add(new CheckOut(name, attest.lastDay(), attest.source()));
            }
        }
        return checkOuts;
    }

    private static List<DueItem> trainings(Roster roster) {
        List<DueItem> trainings = new ArrayList<>();
        for (String name : roster.names()) {
            Attest attest = roster.find(name).map(PersonDetails::training).orElse(null);
            if (attest != null) {
                trainings.add(new DueItem(DueKind.TRAINING, name, attest.lastDay(), attest.source()));
            }
        }
        return trainings;
    }

    /** What it is, in one line. */
    public String summary(DueItem item) {
        String key = "due." + item.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return due.text(key, Map.of("0", item.subject()));
    }

    /**
     * All of it as a calendar file to subscribe to (RFC 5545); each event keeps its id while its day moves.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public String calendar(BenchId id) {
        DueSheet sheet = sheet(id);
        String bench = recorder.getState(id).bench().settings().name();
        CalendarFeed feed = new CalendarFeed(
                wording.text("calendar.name", Map.of("bench", bench)),
                id.value().replace('_', '-') + ".lowfirst",
                SIGN_DAYS);
        return CalendarText.write(
                feed, sheet.list().items(), new Words(), recorder.clock().instant());
    }

    private final class Words implements DueWords {

        @Override
        public String summary(DueItem item) {
            return AskingWhatIsDue.this.summary(item);
        }

        @Override
        public String description(DueItem item) {
            String day = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                    .withLocale(locale)
                    .format(item.lastDay());
            return wording.text("calendar.description", Map.of("day", day, "source", item.source()));
        }
    }
}
