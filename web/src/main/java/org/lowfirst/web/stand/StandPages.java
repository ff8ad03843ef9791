package org.lowfirst.web.stand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.Stand;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.Standing;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Turn;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
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

/** Says when a supply is opened, in which bank it stands, and what came on paper with it. */
@Controller
public final class StandPages {

    private final Workplace workplace;

    public StandPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/supplies/{id}/stand")
    View show(@PathVariable String bench, @PathVariable String id) {
        BenchNow now = workplace.open(bench);
        Supply supply = supply(now, id);
        return workplace.screens().show(page(now, supply, filled(now, supply.id())));
    }

    @PostMapping("/at/{bench}/supplies/{id}/stand")
    View say(@PathVariable String bench, @PathVariable String id, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply supply = supply(now, id);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        List<StandFact> facts = facts(now, supply.id(), reader);
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (facts.isEmpty() && reader.form().sound()) {
            reader.fault("form", now.words().of("stand.same"));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, supply, reader.form()));
        }
        long last = 0;
        for (int i = 0; i < facts.size(); i++) {
            Recording recording = workplace
                    .benches()
                    .keepingTheBank()
                    .stand(now.id(), facts.get(i), sender.submission(Integer.toString(i)));
            String fault = workplace.fault(recording);
            if (!fault.isEmpty()) {
                return workplace
                        .screens()
                        .refused(page(now, supply, reader.form().faulting("form", fault)));
            }
            last = Answers.entry(recording).orElse(last);
        }
        return Redirects.saved(now.place().path("/bank"), last, sender.who());
    }

    /** One fact for each part that differs from what is known. */
    private static List<StandFact> facts(BenchNow now, SupplyId supply, Reader reader) {
        Stand stand = now.bench().stand();
        List<StandFact> facts = new ArrayList<>();
        @Nullable StandFact turn = turn(stand.standing(supply), supply, reader, now);
        if (turn != null) {
            facts.add(turn);
        }
        String bank = reader.text("bank");
        if (!bank.equals(stand.bankName(supply))) {
            facts.add(new StandFact.SupplyPlaced(supply, bank.isEmpty() ? null : bank));
        }
        Delivery delivery = DeliveryFields.read(reader);
        if (!delivery.equals(stand.delivery(supply))) {
            facts.add(new StandFact.SupplyDelivered(supply, delivery));
        }
        return facts;
    }

    private static @Nullable StandFact turn(Standing known, SupplyId supply, Reader reader, BenchNow now) {
        Turn turn = turn(reader.text("turn"), known.turn());
        String reason = reader.text("reason");
        if (turn.planned()) {
            if (turn == known.turn()) {
                return null;
            }
            return turn == Turn.FIRST ? new StandFact.SupplyPutFirst(supply) : new StandFact.SupplyReleased(supply);
        }
        if (reason.isEmpty()) {
            reader.fault("reason", now.words().of("fault.reason"));
        }
        if (turn == known.turn() && reason.equals(known.reason())) {
            return null;
        }
        return turn == Turn.HELD_BACK
                ? new StandFact.SupplyHeldBack(supply, reason)
                : new StandFact.SupplyTaggedOut(supply, reason);
    }

    private static Turn turn(String typed, Turn otherwise) {
        return Arrays.stream(Turn.values())
                .filter(turn -> value(turn).equals(typed))
                .findFirst()
                .orElse(otherwise);
    }

    private static String value(Turn turn) {
        return turn.name().toLowerCase(Locale.ROOT);
    }

    private StandPage page(BenchNow now, Supply supply, Form form) {
        List<StandPage.Choice> turns = Arrays.stream(Turn.values())
                .map(turn -> new StandPage.Choice(
                        value(turn),
                        now.words().of(TurnMark.key(turn)),
                        now.words().of(TurnMark.key(turn) + ".what")))
                .toList();
        List<String> banks =
                now.bench().bankNames().stream().filter(name -> !name.isEmpty()).toList();
        return new StandPage(
                now.place(),
                supply.id().value(),
                supply.details().name(),
                turns,
                banks,
                form,
                workplace.ids().next());
    }

    private static Form filled(BenchNow now, SupplyId supply) {
        Stand stand = now.bench().stand();
        Map<String, String> fields = new HashMap<>(DeliveryFields.filled(stand.delivery(supply)));
        fields.put("turn", value(stand.turn(supply)));
        fields.put("reason", stand.standing(supply).reason());
        fields.put("bank", stand.bankName(supply));
        return Form.with(fields);
    }

    private static Supply supply(BenchNow now, String id) {
        return now.bench().bank().stream()
                .filter(supply -> supply.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("supply " + id));
    }
}
