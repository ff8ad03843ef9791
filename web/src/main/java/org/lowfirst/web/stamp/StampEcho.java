package org.lowfirst.web.stamp;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.fitness.StampInWords;
import org.lowfirst.app.fitness.StampWords;
import org.lowfirst.station.stamp.Stamp;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.util.HtmlUtils;

/** Answers a line typed from a stamp with what each part means, while it is typed. Without scripts the page says the same. */
@Controller
public final class StampEcho {

    private final Workplace workplace;

    public StampEcho(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping(value = "/at/{bench}/echo/stamp/line", produces = MediaType.TEXT_HTML_VALUE)
    @ResponseBody
    String line(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        @Nullable Stamp stamp = StampPages.read(typed, now, workplace);
        if (stamp == null) {
            return "";
        }
        StringBuilder list = new StringBuilder("<ul class=\"dots\">");
        for (StampInWords.Part part :
                new StampWords(now.words().locale()).of(stamp).parts()) {
            list.append("<li><b>")
                    .append(HtmlUtils.htmlEscape(part.text()))
                    .append("</b> ")
                    .append(HtmlUtils.htmlEscape(part.meaning()));
            part.notes().forEach(note -> list.append(' ').append(HtmlUtils.htmlEscape(note)));
            list.append("</li>");
        }
        return list.append("</ul>").toString();
    }
}
