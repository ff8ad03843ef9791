package org.lowfirst.web.ahead;

import gg.jte.Content;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.ahead.DayAhead;
import org.lowfirst.planning.ahead.Forecast;
import org.lowfirst.planning.ahead.OrderAdvice;
import org.lowfirst.web.ahead.ForecastPage.ForecastSheet;
import org.lowfirst.web.ahead.ForecastPage.WeekLine;
import org.lowfirst.web.picture.FanPicture;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes a forecast for people. */
final class ForecastWriter {

    private static final int WEEKS = 12;
    private static final int LABELS = 4;

    private final BenchNow now;
    private final Words words;
    private final Locale language;
    private final DateTimeFormatter day;

    ForecastWriter(BenchNow now) {
        this.now = now;
        this.words = now.words();
        this.language = words.locale();
        this.day = DateTimeFormatter.ofPattern(words.of("date.short"), language);
    }

    ForecastSheet sheet(Forecast forecast) {
        OrderAdvice order = forecast.order();
        return new ForecastSheet(
                Integer.toString(forecast.fillsLeft().middle()),
                band(forecast.fillsLeft()),
                days(forecast.daysLeft().middle(), forecast.longestDays()),
                band(forecast.daysLeft()),
                order.inWords(language),
                ForecastPages.pressing(order.alert()),
                words.of(
                        "forecast.today",
                        Chance.percent(order.chanceTooLate(), language),
                        Chance.percent(order.chanceEmpty(), language)),
                words.of("forecast.week", now.figures().number(forecast.fillsPerWeek(), 1)),
                forecast.knowledge().inWords(language),
                picture(forecast),
                weeks(forecast),
                order.orderBy().isEmpty() ? "" : now.place().path("/forecast.ics"));
    }

    private String band(Band band) {
        return band.low90() == band.high90()
                ? words.of("forecast.certain")
                : words.of("forecast.band", band.low50(), band.high50(), band.low90(), band.high90());
    }

    private String days(int days, int longest) {
        return days >= longest ? words.of("forecast.more", longest) : Integer.toString(days);
    }

    private List<WeekLine> weeks(Forecast forecast) {
        List<DayAhead> days = forecast.days();
        int step = Math.max(1, (days.size() + WEEKS - 1) / WEEKS);
        List<WeekLine> lines = new ArrayList<>();
        for (int i = 0; i < days.size(); i += step) {
            Band left = days.get(i).fillsLeft();
            lines.add(new WeekLine(
                    day.format(days.get(i).date()),
                    Integer.toString(left.middle()),
                    words.of("forecast.span", left.low50(), left.high50()),
                    words.of("forecast.span", left.low90(), left.high90())));
        }
        return lines;
    }

    private Content picture(Forecast forecast) {
        LocalDate today = forecast.days().get(0).date();
        List<DayAhead> ahead = forecast.days().size() > 1
                ? forecast.days()
                : List.of(
                        forecast.days().get(0),
                        new DayAhead(today.plusDays(1), forecast.days().get(0).fillsLeft()));
        int every = Math.max(1, ahead.size() / LABELS);
        List<FanPicture.Day> days = new ArrayList<>();
        for (int i = 0; i < ahead.size(); i++) {
            Band left = ahead.get(i).fillsLeft();
            boolean labelled = i % every == 0 && (i == 0 || ahead.size() - i > every / 2);
            days.add(new FanPicture.Day(
                    ChronoUnit.DAYS.between(today, ahead.get(i).date()),
                    labelled ? day.format(ahead.get(i).date()) : "",
                    left.low90(),
                    left.low50(),
                    left.middle(),
                    left.high50(),
                    left.high90()));
        }
        double marked = forecast.order()
                .orderBy()
                .map(date -> (double) ChronoUnit.DAYS.between(today, date))
                .orElse(-1.0);
        return new FanPicture(
                        days,
                        marked,
                        new FanPicture.Wording(
                                words.of(
                                        "forecast.picture",
                                        forecast.fillsLeft().inWords(language),
                                        forecast.daysLeft().inWords(language)),
                                words.of("forecast.picture.title"),
                                words.of("forecast.picture.order")))
                .draw();
    }
}
