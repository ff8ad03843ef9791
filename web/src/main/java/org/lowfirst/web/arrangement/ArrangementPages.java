package org.lowfirst.web.arrangement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.lowfirst.app.bench.Arrangement;
import org.lowfirst.app.bench.BankView;
import org.lowfirst.app.bench.SupplyView;
import org.lowfirst.station.Turn;
import org.lowfirst.web.arrangement.ArrangementPage.OneBank;
import org.lowfirst.web.picture.ArrangementPicture;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Shows how the supplies stand in a row, what joins them, and which valve is which. */
@Controller
public final class ArrangementPages {

    private final Workplace workplace;

    public ArrangementPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/arrangement")
    View show(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        BankView view = workplace.benches().keepingTheBank().bank(now.id());
        List<OneBank> banks = new ArrayList<>();
        for (String name : view.supplies().isEmpty() ? List.<String>of() : view.names()) {
            String unnamed = view.names().size() > 1 ? now.words().of("bank.unnamed") : "";
            banks.add(one(now.words(), name.isEmpty() ? unnamed : name, Arrangement.of(view, name)));
        }
        return workplace.screens().show(new ArrangementPage(now.place(), banks));
    }

    private static OneBank one(Words words, String name, Arrangement arrangement) {
        List<SupplyView> places = arrangement.places();
        String lead = words.count("arrangement.supplies", places.size()) + ", "
                + words.count("arrangement.interconnects", arrangement.interconnects()) + ".";
        List<String> order = order(words, places);
        ArrangementPicture picture = new ArrangementPicture(
                places.stream().map(ArrangementPages::place).toList(),
                new ArrangementPicture.Wording(
                        lead + " " + String.join(" ", order),
                        words.of("arrangement.interconnect"),
                        words.of("arrangement.transfer"),
                        words.of("arrangement.bottle"),
                        words.of("arrangement.out")));
        return new OneBank(name, lead, picture.draw(), order, valves(words, places));
    }

    private static ArrangementPicture.Place place(SupplyView view) {
        double part = view.estimate().pascals()
                / view.supply().details().servicePressure().gauge().pascals();
        return new ArrangementPicture.Place(
                view.rank(),
                view.supply().details().name(),
                part,
                view.standing().turn() == Turn.TAGGED_OUT);
    }

    private static List<String> order(Words words, List<SupplyView> places) {
        List<String> order = new ArrayList<>();
        for (int i = 0; i + 1 < places.size(); i++) {
            order.add(words.of("arrangement.joins", i + 1, name(places.get(i)), name(places.get(i + 1))));
        }
        order.add(words.of("arrangement.hose", name(places.get(places.size() - 1))));
        order.add(words.of("arrangement.last"));
        return order;
    }

    /** In the order they are opened in a fill. */
    private static List<String> valves(Words words, List<SupplyView> places) {
        List<String> valves = new ArrayList<>();
        places.stream().sorted(Comparator.comparingInt(SupplyView::rank)).forEach(view -> {
            String said = words.of("arrangement.valve", name(view), view.rank());
            String turn = view.standing().turn().name().toLowerCase(Locale.ROOT);
            valves.add(
                    view.standing().turn() == Turn.BY_RANK
                            ? said
                            : words.of("arrangement.valve.turn", said, words.of("turn." + turn)));
        });
        valves.add(words.of("arrangement.valve.transfer"));
        valves.add(words.of("arrangement.valve.bottle"));
        return valves;
    }

    private static String name(SupplyView view) {
        return view.supply().details().name();
    }
}
