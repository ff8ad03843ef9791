package org.lowfirst.web.exchange;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.web.cylinder.VolumeFields;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.stand.DeliveryFields;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.Answers;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.web.servlet.View;

/** Takes the newcomer of an exchange in: who it is, what it reads, what came on paper. */
final class NewcomerForm {

    private static final Map<Rule, String> FIELDS = Map.ofEntries(
            Map.entry(Rule.NAME_EMPTY, "name"),
            Map.entry(Rule.NAME_TAKEN, "name"),
            Map.entry(Rule.WATER_VOLUME_NOT_ABOVE_ZERO, "volume"),
            Map.entry(Rule.WATER_VOLUME_UNUSUAL, "volume"),
            Map.entry(Rule.SERVICE_PRESSURE_UNUSUAL, "marked"),
            Map.entry(Rule.SERVICE_PRESSURE_IMPOSSIBLE, "marked"),
            Map.entry(Rule.SERVICE_PRESSURE_NOT_ABOVE_ZERO, "marked"),
            Map.entry(Rule.READING_BELOW_ZERO, "reading"),
            Map.entry(Rule.READING_ABOVE_TEST_PRESSURE, "reading"),
            Map.entry(Rule.READING_ABOVE_FULL_SCALE, "reading"),
            Map.entry(Rule.READING_LOOKS_LIKE_OTHER_UNIT, "reading"),
            Map.entry(Rule.TEMPERATURE_OUT_OF_RANGE, "temperature"));

    private final Workplace workplace;
    private final VolumeFields volumes;

    NewcomerForm(Workplace workplace) {
        this.workplace = workplace;
        this.volumes = new VolumeFields(workplace::words);
    }

    /** Most often the same kind comes from the same supplier as the one that left. */
    Form blank(BenchNow now, Supply left) {
        SupplyDetails details = left.details();
        Delivery delivery = now.bench().stand().delivery(left.id());
        Map<String, String> fields = new HashMap<>(VolumeFields.filled(details.waterVolume(), now.figures()));
        fields.put("marked", now.figures().toType(details.servicePressure()));
        if (!delivery.equals(Delivery.UNSAID)) {
            fields.put("supplier", DeliveryFields.filled(delivery).getOrDefault("supplier", ""));
        }
        return Form.with(fields);
    }

    View take(BenchNow now, Supply left, Map<String, String> typed) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String name = reader.required("name", "fault.name");
        @Nullable
        WaterVolume volume = volumes.waterVolume(reader, now.bench().settings().rules());
        @Nullable StatedPressure marked = volumes.servicePressure(reader);
        @Nullable StatedPressure reading = reader.pressure("reading");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        Delivery delivery = DeliveryFields.read(reader);
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (reading != null && reader.form().sound()) {
            now.offScale(new SupplyId(sender.key()), reading).ifPresent(fault -> reader.fault("reading", fault));
        }
        if (volume == null
                || marked == null
                || reading == null
                || !reader.form().sound()) {
            return workplace.screens().refused(page(now, left, reader.form()));
        }
        String serial = reader.text("serial");
        ConnectSupply connecting = new ConnectSupply(
                new SupplyId(sender.key()),
                new SupplyDetails(name, serial.isEmpty() ? null : serial, volume, marked),
                now.reading(reading, temperature));
        Recording recording = workplace
                .benches()
                .exchangingASupply()
                .takeIn(now.id(), left.id(), connecting, delivery, sender.submission());
        return answer(now, left, reader.form(), recording, sender);
    }

    private View answer(BenchNow now, Supply left, Form typed, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/exchange/" + left.id()),
                    Answers.entry(recording).orElse(0L),
                    sender.who());
        }
        Optional<Rule> rule = Answers.rule(recording);
        Form form = typed.faulting(
                rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form"), fault);
        return workplace
                .screens()
                .refused(page(now, left, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
    }

    NewcomerPage page(BenchNow now, Supply left, Form form) {
        return new NewcomerPage(
                now.place(),
                now.place().path("/exchange/" + left.id()),
                left.details().name(),
                new ExchangeWriter(now, workplace.benches().exchangingASupply()).returned(left),
                now.figures().pressureUnit(),
                now.figures().temperatureUnit(),
                now.figures()
                        .temperature(now.bench()
                                .settings()
                                .surroundings()
                                .usualTemperature()
                                .temperature()),
                volumes.choices(),
                form,
                workplace.ids().next());
    }
}
