package org.lowfirst.web.flight;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.flight.FlownTrack;
import org.lowfirst.app.flight.ReadingATrack;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.planning.flight.FlightOutcome;
import org.lowfirst.planning.flight.FlightRequest;
import org.lowfirst.planning.flight.PlanningAFlight;
import org.lowfirst.station.Bottle;
import org.lowfirst.web.data.Uploads;
import org.lowfirst.web.flight.FlightPage.Choice;
import org.lowfirst.web.flight.FlightPage.FlightSheet;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Works out the oxygen of a flight: typed, or with the track of a recorder. Enters nothing. */
@Controller
public final class FlightPages {

    private static final int MOST_BYTES = 16_777_216;

    private final Workplace workplace;

    public FlightPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/flight")
    View ask(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, Form.with(FlightFields.filled(now, typed)), List.of(), null));
    }

    @PostMapping("/at/{bench}/flight")
    View plan(@PathVariable String bench, @RequestParam Map<String, String> fields, HttpServletRequest sent) {
        BenchNow now = workplace.open(bench);
        Map<String, String> typed = new HashMap<>(fields);
        typed.putAll(Uploads.typed(sent));
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        byte[] track = Uploads.file(sent, "track");
        if (track.length > 0) {
            return withTrack(now, reader, Uploads.nameOf(sent, "track"), track);
        }
        @Nullable FlightRequest request = new FlightFields(reader, now).read();
        @Nullable FlightSheet sheet = request == null ? null : sheet(now, reader, request);
        FlightPage page = page(now, reader.form(), List.of(), sheet);
        return reader.form().sound()
                ? workplace.screens().show(page)
                : workplace.screens().refused(page);
    }

    /** The track becomes the profile that was typed, so that it can be looked at and changed. */
    private View withTrack(BenchNow now, Reader reader, String name, byte[] bytes) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (bytes.length > MOST_BYTES || !(lower.endsWith(".igc") || lower.endsWith(".csv"))) {
            reader.fault("track", now.words().of("fault.flight.track.kind", name));
            return workplace.screens().refused(page(now, reader.form(), List.of(), null));
        }
        Asked<FlownTrack> asked = ReadingATrack.read(name, bytes, now.words().locale());
        if (asked instanceof Asked.Refused<FlownTrack> refused) {
            Problem first = refused.problems().get(0);
            Place place = first.place();
            reader.fault(
                    "track",
                    place == null
                            ? now.words().of("fault.flight.track", first.sentence())
                            : now.words().of("fault.flight.track.line", place.line(), first.sentence()));
            return workplace.screens().refused(page(now, reader.form(), List.of(), null));
        }
        FlownTrack track = ((Asked.Answered<FlownTrack>) asked).answer();
        String text = new ProfileText(new FlightFields(reader, now).feet(), now.words()).of(track);
        List<String> said = new ArrayList<>();
        said.add(now.words()
                .of("flight.track.read", track.fixes(), track.points().size()));
        said.addAll(track.notes());
        return workplace.screens().show(page(now, reader.form().filled("profile", text), said, null));
    }

    private @Nullable FlightSheet sheet(BenchNow now, Reader reader, FlightRequest request) {
        FlightOutcome outcome = PlanningAFlight.plan(request, Oxygen.schmidtWagner());
        FlightWriter writer = new FlightWriter(
                now,
                workplace.benches(),
                request,
                reader.text("temperature").strip(),
                new FlightFields(reader, now).feet());
        if (outcome instanceof FlightOutcome.Planned planned) {
            return writer.sheet(planned.plan());
        }
        FlightOutcome.Refused refused = (FlightOutcome.Refused) outcome;
        reader.fault(field(refused, reader), writer.refusal(refused));
        return null;
    }

    private static String field(FlightOutcome.Refused refused, Reader reader) {
        return switch (refused.problem()) {
            case NO_OCCUPANTS -> "name-1";
            case MARGIN_BELOW_ZERO -> "margin";
            case RESERVE_BELOW_ZERO -> "reserve";
            case DESCENT_NOT_ABOVE_ZERO -> "descent";
            case TEMPERATURE_OUT_OF_RANGE -> "temperature";
            case KEEP_BELOW_ZERO -> "keep";
            case READING_ABOVE_SERVICE_PRESSURE, READING_BELOW_ZERO, PRESSURE_OUT_OF_RANGE -> "reading-1";
            case DUPLICATE_NAME -> duplicate(refused.subject(), reader);
        };
    }

    private static String duplicate(String name, Reader reader) {
        for (int i = FlightFields.PEOPLE; i > 0; i--) {
            if (reader.text("name-" + i).equals(name)) {
                return "name-" + i;
            }
        }
        return "bottle-2";
    }

    private FlightPage page(BenchNow now, Form form, List<String> track, @Nullable FlightSheet sheet) {
        return new FlightPage(
                now.place(),
                form,
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                now.bench().listBottles().stream()
                        .filter(Bottle::inUse)
                        .map(bottle ->
                                new Choice(bottle.id().value(), bottle.details().name()))
                        .toList(),
                track,
                workplace.ids().next(),
                sheet);
    }
}
