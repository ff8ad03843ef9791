package org.lowfirst.web.stamp;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingMarkings;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.fitness.StampInWords;
import org.lowfirst.app.fitness.StampWords;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Command.AmendBottle;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Material;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.rules.ConnectionAccepted;
import org.lowfirst.station.rules.GasAccepted;
import org.lowfirst.station.rules.PlusEntry;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Stamp;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.gate.VerdictSheet;
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

/** Takes a bottle's stamp as one line, shows what it means, and enters the marking once it is confirmed. */
@Controller
public final class StampPages {

    /** Name of the field that chooses another meaning, before the place of its part. */
    private static final String PART = "part-";

    private final Workplace workplace;

    public StampPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/bottles/{id}/stamp")
    View show(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, id);
        Map<String, String> fields = StampFields.of(bottle.details(), now.figures());
        @Nullable Marking marking = keeping().findMarking(now.id(), bottle.id()).orElse(null);
        if (marking != null) {
            StampFields.put(marking, fields, now.figures());
        }
        boolean typedLine = typed.containsKey("line");
        if (typedLine) {
            fields.putAll(typed);
        }
        fields.putIfAbsent("convention", now.bench().settings().rules().name().equals("US") ? "us" : "european");
        @Nullable Stamp stamp = stamp(now, fields);
        if (stamp != null && typedLine) {
            StampFields.put(stamp, fields, now.figures());
        }
        if (typedLine || marking != null) {
            fields.put("step", "confirm");
        }
        return workplace.screens().show(page(now, bottle, stamp, Form.with(fields)));
    }

    @PostMapping("/at/{bench}/bottles/{id}/stamp")
    View confirm(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure marked = reader.pressure("marked");
        @Nullable StatedVolume volume = reader.waterVolume("volume");
        @Nullable
        Marking marking = new MarkingReader(
                        reader,
                        now.words(),
                        YearMonth.from(workplace.benches().judgingFitness().today()))
                .read();
        who(reader, now);
        if (marking == null
                || marked == null
                || volume == null
                || !reader.form().sound()) {
            return again(now, bottle, reader.form());
        }
        Sender sender = Sender.of(typed);
        String fault = workplace.fault(amend(
                now,
                bottle,
                amended(bottle.details(), marked, volume, marking.plate().material()),
                sender));
        if (!fault.isEmpty()) {
            return again(now, bottle, reader.form().faulting("marked", fault));
        }
        Recording recording = keeping().mark(now.id(), bottle.id(), marking, sender.submission());
        return sent(now, bottle, reader.form(), recording, sender);
    }

    @PostMapping("/at/{bench}/bottles/{id}/plus")
    View plus(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        boolean withdraw = typed.containsKey("withdraw");
        String text = reader.required("plus-source", withdraw ? "fault.reason" : "fault.source");
        who(reader, now);
        if (!reader.form().sound()) {
            return again(now, bottle, entered(now, bottle, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = withdraw
                ? keeping().withdrawPlus(now.id(), bottle.id(), text, sender.submission())
                : keeping().enterPlus(now.id(), bottle.id(), text, sender.submission());
        return sent(now, bottle, entered(now, bottle, reader.form()), recording, sender);
    }

    /** The marking as entered, with what was typed into the small form and its faults. */
    private Form entered(BenchNow now, Bottle bottle, Form typed) {
        Map<String, String> fields = StampFields.of(bottle.details(), now.figures());
        keeping()
                .findMarking(now.id(), bottle.id())
                .ifPresent(marking -> StampFields.put(marking, fields, now.figures()));
        fields.putAll(typed.typed());
        return Form.with(fields).withFaultsOf(typed);
    }

    private View sent(BenchNow now, Bottle bottle, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/bottles/" + bottle.id() + "/stamp"),
                        Answers.entry(recording).orElse(0L),
                        sender.who())
                : again(now, bottle, form.faulting("form", fault));
    }

    /** Only what differs is entered. */
    private Recording amend(BenchNow now, Bottle bottle, BottleDetails amended, Sender sender) {
        return amended.equals(bottle.details())
                ? new Recording.Recorded(List.of(), true)
                : workplace
                        .benches()
                        .registeringBottles()
                        .amend(now.id(), new AmendBottle(bottle.id(), amended), sender.submission("details"));
    }

    private static BottleDetails amended(
            BottleDetails known, StatedPressure marked, StatedVolume volume, WallMaterial material) {
        boolean sameVolume = Math.abs(known.waterVolume().stated().volume().toLitres()
                        - volume.volume().toLitres())
                < 0.005;
        boolean samePressure = known.servicePressure().compareTo(marked) == 0;
        Material wall = wall(material);
        StatedPressure usual = known.usualTarget();
        return new BottleDetails(
                known.name(),
                known.owner(),
                sameVolume ? known.waterVolume() : WaterVolume.stamped(volume),
                samePressure ? known.servicePressure() : marked,
                wall == null ? known.material() : wall,
                usual != null && usual.compareTo(marked) > 0 ? marked : usual);
    }

    private static @Nullable Material wall(WallMaterial material) {
        return switch (material) {
            case STEEL -> Material.STEEL;
            case ALUMINIUM, ALUMINIUM_6351 -> Material.ALUMINIUM;
            case COMPOSITE -> Material.COMPOSITE;
            case UNKNOWN -> null;
        };
    }

    private View again(BenchNow now, Bottle bottle, Form form) {
        Form confirming = form.filled("step", "confirm");
        return workplace.screens().refused(page(now, bottle, stamp(now, confirming.typed()), confirming));
    }

    private StampPage page(BenchNow now, Bottle bottle, @Nullable Stamp stamp, Form form) {
        @Nullable PlusEntry plus = keeping().papers(now.id(), bottle.id()).plus();
        @Nullable
        StampInWords said = stamp == null ? null : new StampWords(now.words().locale()).of(stamp);
        boolean marked = keeping().findMarking(now.id(), bottle.id()).isPresent();
        return new StampPage(
                now.place(),
                new StampPage.BottleLine(bottle.id().value(), bottle.details().name()),
                now.figures().pressureUnit(),
                said,
                choices(workplace.benches().keepingRules().book(now.id())),
                plus == null ? "" : plus.source(),
                marked
                        ? VerdictSheet.of(workplace.benches().judgingFitness().beforeReading(now.id(), bottle.id()))
                        : null,
                form,
                workplace.ids().next());
    }

    private static StampPage.Choices choices(RuleBook book) {
        List<String> gases = new ArrayList<>();
        List<String> connections = new ArrayList<>();
        book.rules().forEach(rule -> {
            if (rule instanceof GasAccepted accepted) {
                gases.addAll(accepted.gases());
            } else if (rule instanceof ConnectionAccepted accepted) {
                connections.addAll(accepted.connections());
            }
        });
        return new StampPage.Choices(gases, connections);
    }

    private @Nullable Stamp stamp(BenchNow now, Map<String, String> fields) {
        return read(fields, now, workplace);
    }

    /** The line in the fields with the meanings chosen; null when there is none. */
    static @Nullable Stamp read(Map<String, String> fields, BenchNow now, Workplace workplace) {
        String line = fields.getOrDefault("line", "").strip();
        if (line.isEmpty()) {
            return null;
        }
        Stamp read = Stamp.read(
                line,
                StampFields.convention(fields.getOrDefault("convention", "")),
                workplace.benches().judgingFitness().today());
        List<Integer> otherwise = new ArrayList<>();
        for (int part = 0; part < read.parts().size(); part++) {
            if ("other".equals(fields.get(PART + part))) {
                otherwise.add(part);
            }
        }
        return StampWords.choosing(read, otherwise);
    }

    private static void who(Reader reader, BenchNow now) {
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
    }

    private KeepingMarkings keeping() {
        return workplace.benches().keepingMarkings();
    }

    private static Bottle bottle(BenchNow now, String id) {
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("bottle " + id));
    }
}
