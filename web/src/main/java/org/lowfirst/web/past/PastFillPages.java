package org.lowfirst.web.past;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Rule;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StandFact.BankChosen;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.Answers;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Enters a whole fill afterwards, in the place in time where it happened. What happened is never refused for a rule of fitness. */
@Controller
public final class PastFillPages {

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.TARGET_ABOVE_SERVICE_PRESSURE, "target",
            Rule.TARGET_NOT_ABOVE_ZERO, "target",
            Rule.BOTTLE_FELL, "after",
            Rule.TIME_IN_FUTURE, "time",
            Rule.TEMPERATURE_OUT_OF_RANGE, "temperature");

    private final Workplace workplace;

    public PastFillPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/fill/past")
    View ask(@PathVariable String bench, @RequestParam(defaultValue = "") String bottle) {
        BenchNow now = workplace.open(bench);
        List<SupplyView> supplies = supplies(now);
        Map<String, String> fields = new HashMap<>();
        fields.put("bottle", bottle);
        fields.put("day", now.today().toString());
        for (int row = 0; row < supplies.size(); row++) {
            fields.put("stage-supply-" + row, supplies.get(row).supply().id().value());
        }
        return workplace.screens().show(page(now, Form.with(fields)));
    }

    @PostMapping("/at/{bench}/fill/past")
    View enter(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Told told = Told.read(typed, now, supplies(now).size());
        @Nullable BottleId bottle = told.bottle();
        @Nullable Instant at = told.at();
        @Nullable Reading before = told.before();
        @Nullable Reading after = told.after();
        if (!told.ready() || bottle == null || at == null || before == null || after == null) {
            return workplace.screens().refused(page(now, told.form()));
        }
        Sender sender = Sender.of(typed);
        FillId fill = new FillId(sender.key());
        String unchosen = chooseBank(now, told.form(), fill, at, sender);
        if (!unchosen.isEmpty()) {
            return workplace.screens().refused(page(now, told.form().faulting("form", unchosen)));
        }
        Recording recording = workplace
                .benches()
                .guidingAFill()
                .recordFill(
                        now.id(),
                        new RecordFill(fill, bottle, told.target(), before, after, told.stages()),
                        submission(sender, sender.key(), at));
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            String field = Answers.rule(recording)
                    .map(rule -> FIELDS.getOrDefault(rule, "form"))
                    .orElse("form");
            Form form = told.form().faulting(field, fault);
            return workplace
                    .screens()
                    .refused(page(now, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
        }
        long entry = Answers.entry(recording).orElse(0L);
        return Redirects.saved(now.place().path("/fill/past/" + entry), entry, sender.who());
    }

    @GetMapping("/at/{bench}/fill/past/{seq}")
    View done(@PathVariable String bench, @PathVariable long seq) {
        BenchNow now = workplace.open(bench);
        JournalLine line = line(now, seq);
        Fact fact = line.entry().fact();
        Fact told = fact instanceof Fact.EntryCorrected corrected ? corrected.replacement() : fact;
        if (told instanceof Fact.FillRecorded recorded) {
            return workplace.screens().show(done(now, line, recorded));
        }
        throw new NoSuchThing("fill entered afterwards, entry " + seq);
    }

    private PastDonePage done(BenchNow now, JournalLine line, Fact.FillRecorded fill) {
        Figures figures = now.figures();
        List<String> notes = new ArrayList<>();
        if (fill.stages().isEmpty()) {
            notes.add(now.words().of("past.done.no-stages"));
        }
        Optional<Bottle> bottle = now.bench().findBottle(fill.bottle());
        bottle.filter(found -> !found.inUse())
                .ifPresent(found -> notes.add(
                        now.words().of("past.done.retired", found.details().name())));
        bottle.filter(found -> fill.after().pressure().compareTo(found.details().servicePressure()) > 0)
                .ifPresent(found -> notes.add(now.words()
                        .of(
                                "past.done.above",
                                figures.asTyped(fill.after().pressure()),
                                figures.asTyped(found.details().servicePressure()))));
        bottle.ifPresent(found -> notes.addAll(unfit(now, line, fill)));
        @Nullable String note = line.note();
        if (note != null) {
            notes.add(note);
        }
        String bank = supplies(now).stream()
                .sorted(Comparator.comparing(SupplyView::bank).thenComparing(SupplyView::rank))
                .map(view -> view.supply().details().name() + " " + figures.pressureWithUnit(view.estimate()))
                .collect(Collectors.joining(", "));
        return new PastDonePage(
                now.place(),
                line.entry().seq(),
                bottle.map(found -> found.details().name()).orElse(fill.bottle().value()),
                now.times().full(line.entry().origin().effectiveAt()),
                figures.pressureUnit(),
                figures.pressure(fill.before().pressure().gauge()),
                figures.pressure(fill.after().pressure().gauge()),
                fill.stages().stream().map(stage -> stage(now, stage)).toList(),
                notes,
                now.words().of("past.done.bank", bank));
    }

    /** What the rules had against it on that day. The fill is kept all the same. */
    private List<String> unfit(BenchNow now, JournalLine line, Fact.FillRecorded fill) {
        LocalDate day = LocalDate.ofInstant(
                line.entry().origin().effectiveAt(), now.times().zone());
        return workplace
                .benches()
                .judgingFitness()
                .onDay(now.id(), fill.bottle(), fill.before(), day)
                .lines()
                .refusals()
                .stream()
                .map(finding -> now.words().of("past.done.unfit", finding.sentence()))
                .toList();
    }

    private static String stage(BenchNow now, Stage stage) {
        String supply = now.bench()
                .findSupply(stage.supply())
                .map(found -> found.details().name())
                .orElse(stage.supply().value());
        return now.words()
                .of(
                        "done.stage",
                        supply,
                        now.figures()
                                .pressureWithUnit(stage.bottleAfter().pressure().gauge()));
    }

    /** Says from which of several banks, just before the fill itself; what stands against it, or nothing. */
    private String chooseBank(BenchNow now, Form form, FillId fill, Instant at, Sender sender) {
        List<String> banks = now.bench().bankNames();
        if (banks.size() < 2) {
            return "";
        }
        String bank = banks.contains(form.value("bank")) ? form.value("bank") : banks.get(0);
        return workplace.fault(workplace
                .benches()
                .guidingAFill()
                .choose(
                        now.id(),
                        new BankChosen(fill, bank.isEmpty() ? null : bank),
                        submission(sender, sender.key() + ".bank", at)));
    }

    private static Submission submission(Sender sender, String key, Instant at) {
        return new Submission(new EntryKey(key), sender.who(), at, sender.confirmed());
    }

    private PastFillPage page(BenchNow now, Form form) {
        Figures figures = now.figures();
        List<PastFillPage.Choice> bottles = workplace.benches().registeringBottles().listBottles(now.id()).stream()
                .map(bottle -> new PastFillPage.Choice(
                        bottle.id().value(),
                        now.words()
                                .of(
                                        bottle.inUse() ? "past.bottle" : "past.bottle.retired",
                                        bottle.details().name(),
                                        figures.asTyped(
                                                bottle.details().waterVolume().stated()))))
                .toList();
        List<PastFillPage.Choice> supplies = supplies(now).stream()
                .map(view -> new PastFillPage.Choice(
                        view.supply().id().value(), view.supply().details().name()))
                .toList();
        return new PastFillPage(
                now.place(),
                bottles,
                supplies,
                now.bench().bankNames(),
                figures.pressureUnit(),
                figures.temperatureUnit(),
                figures.temperature(
                        now.bench().settings().surroundings().usualTemperature().temperature()),
                form,
                workplace.ids().next());
    }

    private List<SupplyView> supplies(BenchNow now) {
        BankView view = workplace.benches().keepingTheBank().bank(now.id());
        return view.supplies();
    }

    private JournalLine line(BenchNow now, long seq) {
        try {
            return workplace.benches().readingTheJournal().getLine(now.id(), seq);
        } catch (NoSuchElementException none) {
            throw new NoSuchThing("entry " + seq);
        }
    }
}
