package org.lowfirst.web.journal;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.EntryGroup;
import org.lowfirst.app.bench.JournalFilter;
import org.lowfirst.station.Bench;
import org.lowfirst.station.CylinderId;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.journal.JournalPage.Choice;
import org.lowfirst.web.journal.JournalPage.Counts;
import org.lowfirst.web.journal.JournalPage.Search;
import org.lowfirst.web.workplace.BenchNow;

/** Reads what is looked for in the journal, and offers what can be. */
final class JournalSearch {

    private static final List<String> FIELDS = List.of("group", "person", "cylinder", "from", "to", "text");

    private final BenchNow now;
    private final ZoneId zone;
    private final Map<String, String> typed;
    private Form form;

    JournalSearch(BenchNow now, ZoneId zone, Map<String, String> typed) {
        this.now = now;
        this.zone = zone;
        this.typed = typed;
        this.form = Form.with(typed);
    }

    /** What is looked for; a day that cannot be read is a fault of its field and does not matter. */
    JournalFilter filter() {
        @Nullable LocalDate from = day("from");
        @Nullable LocalDate to = day("to");
        if (from != null && to != null && to.isBefore(from)) {
            form = form.faulting("to", now.words().of("fault.days-order", form.value("to"), form.value("from")));
        }
        return new JournalFilter(
                group(),
                form.value("person"),
                cylinder(),
                from == null ? null : start(from),
                to == null ? null : start(to.plusDays(1)),
                form.value("text").strip());
    }

    Search offered(boolean active) {
        Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        names.addAll(now.bench().settings().people());
        names.addAll(now.bench().areas().crew().described().keySet());
        if (!form.value("person").isEmpty()) {
            names.add(form.value("person"));
        }
        return new Search(
                form,
                active,
                Arrays.stream(EntryGroup.values())
                        .map(group -> new Choice(group.key(), name(group)))
                        .toList(),
                List.copyOf(names),
                cylinders(now.bench()));
    }

    /** Address of the same search further on. */
    String address(int skip) {
        String query = FIELDS.stream()
                .filter(field -> !typed.getOrDefault(field, "").isEmpty())
                .map(field -> field + "=" + URLEncoder.encode(typed.getOrDefault(field, ""), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        String more = skip == 0 ? "" : (query.isEmpty() ? "" : "&") + "skip=" + skip;
        return now.place().path("/journal" + (query.isEmpty() && more.isEmpty() ? "" : "?") + query + more);
    }

    List<Counts> counts(Map<String, Map<EntryGroup, Integer>> byPerson) {
        return byPerson.entrySet().stream()
                .map(person -> new Counts(
                        person.getKey(),
                        person.getValue().entrySet().stream()
                                .map(count ->
                                        now.words().of("journal.count.of", name(count.getKey()), count.getValue()))
                                .collect(Collectors.joining(", "))))
                .toList();
    }

    private String name(EntryGroup group) {
        return now.words().of("journal.group." + group.key());
    }

    private List<Choice> cylinders(Bench bench) {
        Stream<Choice> bottles = bench.listBottles().stream()
                .map(bottle -> new Choice(bottle.id().value(), bottle.details().name()))
                .sorted((one, other) -> one.label().compareToIgnoreCase(other.label()));
        Stream<Choice> supplies = bench.supplies().values().stream()
                .map(supply -> new Choice(
                        supply.id().value(),
                        now.words().of("journal.supply", supply.details().name())));
        return Stream.concat(supplies, bottles).toList();
    }

    private @Nullable EntryGroup group() {
        return Arrays.stream(EntryGroup.values())
                .filter(group -> group.key().equals(form.value("group")))
                .findFirst()
                .orElse(null);
    }

    private @Nullable CylinderId cylinder() {
        String wanted = form.value("cylinder");
        return Stream.<CylinderId>concat(
                        now.bench().bottles().keySet().stream(), now.bench().supplies().keySet().stream())
                .filter(id -> id.value().equals(wanted))
                .findFirst()
                .orElse(null);
    }

    private @Nullable LocalDate day(String field) {
        String text = form.value(field).strip();
        if (text.isEmpty()) {
            return null;
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException unreadable) {
            form = form.faulting(field, now.words().of("fault.day", text));
            return null;
        }
    }

    private Instant start(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }
}
