package org.lowfirst.web.data;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.table.ExportingTables;
import org.lowfirst.app.table.TableKind;
import org.lowfirst.app.words.FileName;
import org.lowfirst.web.data.DataPage.Line;
import org.lowfirst.web.data.JournalFiles.Told;
import org.lowfirst.web.view.Attachment;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Hands out tables and journals, and takes journals in. */
@Controller
public final class DataPages {

    private static final String CSV = "text/csv;charset=UTF-8;header=present";
    private static final String JSON_LINES = "application/jsonl";

    private final Workplace workplace;
    private final CheckedFile checked = new CheckedFile();

    public DataPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/data")
    View show(@PathVariable String bench) {
        return workplace.screens().show(page(workplace.open(bench), new Told(true, List.of()), "", ""));
    }

    @GetMapping("/at/{bench}/data/tables/{kind}")
    View table(@PathVariable String bench, @PathVariable String kind) {
        BenchNow now = workplace.open(bench);
        TableKind table = Arrays.stream(TableKind.values())
                .filter(known -> known.key().equals(kind))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("table " + kind));
        Locale locale = Locale.forLanguageTag(now.words().language());
        String text = new ExportingTables(workplace.benches(), locale).csv(now.id(), table);
        byte[] csv = text.getBytes(StandardCharsets.UTF_8);
        return Attachment.saved(CSV, fileName(now, now.words().of("data.file." + table.key()), "csv"), csv);
    }

    @GetMapping("/at/{bench}/data/journal")
    View journal(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return Attachment.saved(
                JSON_LINES,
                fileName(now, now.words().of("data.file.journal"), "jsonl"),
                files(now).of(now.id()));
    }

    @PostMapping("/at/{bench}/data/check")
    View check(@PathVariable String bench, HttpServletRequest request) {
        BenchNow now = workplace.open(bench);
        byte[] file = Uploads.file(request, "file");
        if (file.length == 0) {
            return refused(now, new Told(false, List.of()), now.words().of("data.import.none"));
        }
        Told told = files(now).read(file, true);
        if (!told.good()) {
            return refused(now, told, "");
        }
        String key = workplace.ids().next();
        checked.keep(key, file);
        return workplace.screens().show(page(now, told, key, ""));
    }

    @PostMapping("/at/{bench}/data/import")
    View take(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Optional<byte[]> file = checked.take(typed.getOrDefault("checked", ""));
        if (file.isEmpty()) {
            return refused(now, new Told(false, List.of()), now.words().of("data.import.gone"));
        }
        Told told = files(now).read(file.get(), false);
        return told.good() ? workplace.screens().show(page(now, told, "", "")) : refused(now, told, "");
    }

    private JournalFiles files(BenchNow now) {
        return new JournalFiles(workplace.benches().journal(), now.words());
    }

    private View refused(BenchNow now, Told told, String fault) {
        return workplace.screens().refused(page(now, told, "", fault));
    }

    private DataPage page(BenchNow now, Told told, String key, String fault) {
        List<Line> tables = Arrays.stream(TableKind.values())
                .map(kind -> new Line(
                        now.place().path("/data/tables/" + kind.key()),
                        now.words().of("data.table." + kind.key()),
                        now.words().of("data.table." + kind.key() + ".what")))
                .toList();
        return new DataPage(
                now.place(),
                tables,
                told.sentences(),
                told.good(),
                key,
                fault,
                workplace.ids().next());
    }

    private String fileName(BenchNow now, String what, String ending) {
        LocalDate day = now.now().atZone(workplace.clock().getZone()).toLocalDate();
        return FileName.of(what, now.place().name(), day, ending);
    }
}
