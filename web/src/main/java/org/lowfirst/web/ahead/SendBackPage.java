package org.lowfirst.web.ahead;

import gg.jte.Content;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Which supply or pair to send back, and when to order.
 *
 * @param place the bench
 * @param form what was typed
 * @param past what the journal says of the use
 * @param hints by field, where its number comes from
 * @param sheet the advice; null when there is none
 * @param keep the offer to keep what was typed; null when there is nothing to keep
 */
public record SendBackPage(
        Place place,
        Form form,
        String past,
        Map<String, String> hints,
        @Nullable SendBackSheet sheet,
        @Nullable KeepPart keep)
        implements Page {

    public SendBackPage {
        hints = Map.copyOf(hints);
    }

    /** Where what stands in a field comes from; empty when somebody typed it. */
    public String hint(String field) {
        return hints.getOrDefault(field, "");
    }

    /**
     * @param advice what to do, as sentences
     * @param waits whether waiting is cheaper
     * @param options what can be done now, cheapest year first
     * @param how what the numbers of the options count
     * @param picture how much more the year costs with each; {@code options} say the same
     * @param orders ordering at each number of fills left
     */
    public record SendBackSheet(
            String advice,
            boolean waits,
            List<OptionLine> options,
            String how,
            Content picture,
            List<OrderLine> orders) {

        public SendBackSheet {
            options = List.copyOf(options);
            orders = List.copyOf(orders);
        }
    }

    /** One thing that can be done now. */
    public record OptionLine(String name, String returned, String worth, String now, String left, String above) {}

    /** Ordering when so many fills are left. */
    public record OrderLine(String left, String missed, String cost, boolean best) {}

    @Override
    public String template() {
        return "send-back";
    }

    @Override
    public String title(Words words) {
        return words.of("send-back.title");
    }

    @Override
    public Section section() {
        return Section.AHEAD;
    }

    @Override
    public Place at() {
        return place;
    }
}
