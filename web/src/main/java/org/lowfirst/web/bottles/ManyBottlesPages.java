package org.lowfirst.web.bottles;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.table.BottleColumn;
import org.lowfirst.app.table.JudgedRow;
import org.lowfirst.app.table.JudgingBottles;
import org.lowfirst.app.table.Pasted;
import org.lowfirst.app.table.ReadingPastedBottles;
import org.lowfirst.app.table.SentText;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command;
import org.lowfirst.station.Refused;
import org.lowfirst.web.bottles.ManyBottlesPage.Field;
import org.lowfirst.web.bottles.ManyBottlesPage.Row;
import org.lowfirst.web.data.Uploads;
import org.lowfirst.web.form.Form;
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

/** Takes many bottles at once from a spreadsheet: pasted or sent, looked at row by row, then entered, all or none. */
@Controller
public final class ManyBottlesPages {

    private final Workplace workplace;

    public ManyBottlesPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/bottles/many")
    View ask(@PathVariable String bench) {
        return workplace.screens().show(asking(workplace.open(bench), Form.blank()));
    }

    @PostMapping("/at/{bench}/bottles/many")
    View look(@PathVariable String bench, HttpServletRequest request) {
        BenchNow now = workplace.open(bench);
        Map<String, String> typed = new HashMap<>(Uploads.typed(request));
        byte[] file = Uploads.file(request, "file");
        if (file.length > 0) {
            typed.put("pasted", SentText.of(file));
        }
        Form form = Form.with(typed);
        Pasted pasted = new ReadingPastedBottles(locale(now)).read(form.value("pasted"));
        if (!(pasted instanceof Pasted.Table table)) {
            return workplace
                    .screens()
                    .refused(asking(now, form.faulting("pasted", ((Pasted.Unreadable) pasted).why())));
        }
        Form rows = Form.with(ManyRows.filled(table.rows())).filled("left-out", String.join(", ", table.leftOut()));
        return workplace.screens().show(judged(now, table.rows(), rows, Sender.of(typed)));
    }

    @PostMapping("/at/{bench}/bottles/many/enter")
    View enter(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Sender sender = Sender.of(typed);
        List<Pasted.Row> rows = ManyRows.read(typed);
        if (rows.isEmpty()) {
            return workplace
                    .screens()
                    .refused(asking(
                            now, Form.blank().faulting("pasted", now.words().of("many.none"))));
        }
        Map<String, String> fields = ManyRows.filled(rows);
        fields.put("left-out", typed.getOrDefault("left-out", ""));
        fields.put(Sender.WHO, sender.who());
        Form form = Form.with(fields);
        if (sender.who().isEmpty()) {
            form = form.faulting(Sender.WHO, now.words().of("fault.who"));
        }
        ManyBottlesPage page = judged(now, rows, form, sender);
        if (!page.form().sound()) {
            return workplace.screens().refused(page);
        }
        Recording recording = workplace
                .benches()
                .enteringManyBottles()
                .enter(now.id(), asked(judge(now, rows, sender.key())), sender.submission());
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/bottles"), Answers.entry(recording).orElse(0L), sender.who())
                : workplace.screens().refused(judged(now, rows, form.faulting("form", fault), sender));
    }

    private static Locale locale(BenchNow now) {
        return Locale.forLanguageTag(now.words().language());
    }

    private List<JudgedRow> judge(BenchNow now, List<Pasted.Row> rows, String key) {
        JudgingBottles judging = new JudgingBottles(now.bench(), now.now(), locale(now));
        List<JudgedRow> judged = new ArrayList<>();
        for (Pasted.Row row : rows) {
            judged.add(judging.judge(row, new BottleId(key + "-" + judged.size())));
        }
        return judged;
    }

    private static List<List<Command>> asked(List<JudgedRow> rows) {
        return rows.stream().map(JudgedRow::asked).toList();
    }

    /** The rows with everything that is wrong with them; the key of the form is that of what was pasted, so ids stay. */
    private ManyBottlesPage judged(BenchNow now, List<Pasted.Row> rows, Form typed, Sender sender) {
        String key = sender.hasKey() ? sender.key() : workplace.ids().next();
        List<JudgedRow> judged = judge(now, rows, key);
        List<Optional<Refused>> refused = workplace
                .benches()
                .enteringManyBottles()
                .check(now.id(), asked(judged), new Sender(sender.who(), key, sender.confirmed()).submission());
        Form form = typed;
        List<Row> shown = new ArrayList<>();
        List<BottleColumn> columns = ManyRows.columns(rows);
        for (int i = 0; i < rows.size(); i++) {
            form = faulting(form, i, judged.get(i), refused.get(i));
            boolean sound = judged.get(i).sound() && refused.get(i).isEmpty();
            shown.add(row(now, i, rows.get(i), columns, sound));
        }
        int faulty = (int) shown.stream().filter(row -> !row.sound()).count();
        return new ManyBottlesPage(now.place(), shown, faulty, typed.value("left-out"), form, key);
    }

    private Form faulting(Form form, int row, JudgedRow judged, Optional<Refused> refused) {
        Form faulty = form;
        for (Map.Entry<BottleColumn, String> fault : judged.faults().entrySet()) {
            faulty = faulty.faulting(ManyRows.field(row, fault.getKey()), fault.getValue());
        }
        if (refused.isPresent()) {
            Recording.NotRecorded not = new Recording.NotRecorded(refused.get());
            String field = BottleFaults.field(Answers.rule(not));
            faulty = faulty.faulting(ManyRows.field(row, field.equals("form") ? "name" : field), workplace.fault(not));
            faulty = Answers.confirmable(not) ? faulty.filled(Form.CONFIRMABLE, "yes") : faulty;
        }
        return faulty;
    }

    private static Row row(BenchNow now, int number, Pasted.Row row, List<BottleColumn> columns, boolean sound) {
        List<Field> fields = columns.stream()
                .map(column -> new Field(
                        ManyRows.field(number, column),
                        now.words().of("many." + column.key(), now.figures().pressureUnit())))
                .toList();
        return new Row(number + 1, ManyRows.summary(row), sound, fields);
    }

    private ManyBottlesPage asking(BenchNow now, Form form) {
        return new ManyBottlesPage(
                now.place(), List.of(), 0, "", form, workplace.ids().next());
    }
}
