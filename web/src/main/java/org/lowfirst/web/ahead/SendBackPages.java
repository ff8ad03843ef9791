package org.lowfirst.web.ahead;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.BenchToday;
import org.lowfirst.app.outlook.PastUse;
import org.lowfirst.planning.exchange.AdvisingExchange;
import org.lowfirst.planning.exchange.ExchangeAdvice;
import org.lowfirst.planning.exchange.ExchangeOutcome;
import org.lowfirst.planning.exchange.ExchangeRequest;
import org.lowfirst.planning.exchange.Rate;
import org.lowfirst.planning.exchange.Terms;
import org.lowfirst.planning.study.Objection;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.web.ahead.SendBackPage.SendBackSheet;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.Defaults;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.objection.ObjectionFields;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Advises which supply or pair to send back, and when to order. Enters nothing. */
@Controller
public final class SendBackPages {

    private static final Map<String, String> FIELDS = Map.of(
            "price of a supply", "content",
            "price of a delivery", "delivery",
            "price of a missed fill", "missed",
            "days from order to delivery", "lead",
            "fills a day", "fills");

    /** Which field holds which figure of the bench. */
    private static final Map<String, AheadFigure> FIGURES = new TreeMap<>(Map.of(
            "content", AheadFigure.CONTENT_PRICE,
            "delivery", AheadFigure.DELIVERY_PRICE,
            "missed", AheadFigure.MISSED_FILL_PRICE,
            "lead", AheadFigure.LEAD_DAYS));

    private static final double DAYS_A_YEAR = 365.0;
    private static final String USUAL_FILLS = "100";
    private static final long SEED = 1;

    private final Workplace workplace;

    public SendBackPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/send-back")
    View sendBack(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        ZoneId zone = workplace.clock().getZone();
        LocalDate today = now.now().atZone(zone).toLocalDate();
        PastUse past = workplace.benches().askingAhead().past(now.id(), zone, today);
        Map<String, String> fields = new HashMap<>(typed);
        Defaults defaults = Defaults.of(now, workplace);
        boolean first = !typed.containsKey("content");
        if (first) {
            FIGURES.forEach((field, figure) -> defaults.fill(fields, field, figure, ""));
        }
        fields.putIfAbsent("lead", "3");
        if (past.tells()) {
            fields.putIfAbsent("fills", Long.toString(Math.round(past.fillsPerYear())));
        } else {
            defaults.fill(fields, "fills", AheadFigure.FILLS_PER_YEAR, USUAL_FILLS);
        }
        Reader reader = new Reader(fields, now.bench().settings().units(), now.words());
        @Nullable
        SendBackSheet sheet = first && !defaults.knows(AheadFigure.CONTENT_PRICE) ? null : sheet(now, reader, past);
        SendBackPage page = new SendBackPage(
                now.place(),
                reader.form(),
                past(now, past),
                FIGURES.entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, field -> defaults.hint(field.getValue()))),
                sheet,
                sheet == null
                        ? null
                        : KeepPart.of(
                                now,
                                defaults,
                                reader.form().typed(),
                                FIGURES,
                                "/send-back",
                                workplace.ids().next()));
        return reader.form().sound()
                ? workplace.screens().show(page)
                : workplace.screens().refused(page);
    }

    private @Nullable SendBackSheet sheet(BenchNow now, Reader reader, PastUse past) {
        @Nullable BigDecimal content = reader.numberIfTyped("content");
        if (reader.empty("content")) {
            reader.fault("content", now.words().of("fault.price.empty"));
        }
        double delivery = number(reader, "delivery");
        double lead = number(reader, "lead");
        double missed = number(reader, "missed");
        double fills = number(reader, "fills");
        if (past.uses().isEmpty()) {
            reader.fault("form", now.words().of("fault.no-bottles"));
        }
        if (content == null || !reader.form().sound()) {
            return null;
        }
        BenchToday today = workplace.benches().askingAhead().today(now.id(), null);
        ExchangeOutcome outcome = AdvisingExchange.advise(new ExchangeRequest(
                today.conditions(),
                today.bank(),
                past.uses(),
                new Terms(now.bench().settings().fullSupply().gauge(), content.doubleValue(), delivery, lead, missed),
                new Rate(fills / DAYS_A_YEAR, spread(past)),
                SEED));
        if (outcome instanceof ExchangeAdvice advice) {
            return new SendBackWriter(now).sheet(advice);
        }
        Objection why = ((ExchangeOutcome.Refused) outcome).why();
        reader.fault(ObjectionFields.of(why, FIELDS), why.inWords(now.shownUnits()));
        return null;
    }

    /** A count of n is known to about one part in the root of n. */
    private static double spread(PastUse past) {
        return past.tells() ? 1.0 / Math.sqrt(past.history().fills().size()) : 0.5;
    }

    private static double number(Reader reader, String field) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        return typed == null ? 0.0 : typed.doubleValue();
    }

    private static String past(BenchNow now, PastUse past) {
        return past.tells()
                ? now.words()
                        .of(
                                "send-back.past",
                                past.history().fills().size(),
                                past.history().days(),
                                now.figures().number(past.fillsPerYear(), 0))
                : now.words().of("send-back.past.little");
    }
}
