package org.lowfirst.web.echo;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.QuantityFormat;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.web.cylinder.VolumeFields;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.util.HtmlUtils;

/**
 * Answers a field with how it was understood: "2,015" in a psi field is two thousand psi, not two. Only for pages with scripts;
 * without them the same faults come when the form is sent.
 */
@Controller
public final class EchoPages {

    private final Workplace workplace;
    private final VolumeFields volumes;

    public EchoPages(Workplace workplace) {
        this.workplace = workplace;
        this.volumes = new VolumeFields(workplace::words);
    }

    @GetMapping(value = "/at/{bench}/echo/pressure/{field}", produces = MediaType.TEXT_HTML_VALUE)
    @ResponseBody
    String pressure(@PathVariable String bench, @PathVariable String field, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure pressure = reader.pressureIfTyped(field);
        return pressure == null
                ? fault(reader, field)
                : said(now, understood(pressure, now.words().locale()));
    }

    @GetMapping(value = "/at/{bench}/echo/nameplate/{field}", produces = MediaType.TEXT_HTML_VALUE)
    @ResponseBody
    String nameplate(@PathVariable String bench, @PathVariable String field, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        if (reader.empty(field)) {
            return "";
        }
        @Nullable
        WaterVolume volume = volumes.waterVolume(reader, now.bench().settings().rules());
        return volume == null ? fault(reader, field) : said(now, now.figures().asTyped(volume.stated()));
    }

    private static String understood(StatedPressure pressure, Locale locale) {
        PressureUnit other = pressure.unit() == PressureUnit.BAR ? PressureUnit.PSI : PressureUnit.BAR;
        GaugePressure gauge = pressure.gauge();
        return grouped(pressure, locale) + ", " + QuantityFormat.of(locale).pressure(gauge, other);
    }

    private static String grouped(StatedPressure pressure, Locale locale) {
        int decimals = Math.max(0, pressure.value().stripTrailingZeros().scale());
        return Figures.number(pressure.value().doubleValue(), decimals, locale) + " " + pressure.symbol();
    }

    private static String said(BenchNow now, String understood) {
        return HtmlUtils.htmlEscape(now.words().of("echo", understood));
    }

    private static String fault(Reader reader, String field) {
        String fault = reader.form().fault(field);
        return fault.isEmpty() ? "" : "<span class=\"error\">" + HtmlUtils.htmlEscape(fault) + "</span>";
    }
}
