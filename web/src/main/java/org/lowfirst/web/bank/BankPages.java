package org.lowfirst.web.bank;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Supply;
import org.lowfirst.web.bank.BankPage.Arrival;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Shows the bank. */
@Controller
public final class BankPages {

    private final Workplace workplace;

    public BankPages(Workplace workplace) {
        this.workplace = workplace;
    }

    /** @param came a supply that was just connected */
    @GetMapping("/at/{bench}/bank")
    View bank(@PathVariable String bench, @RequestParam(defaultValue = "") String came) {
        BenchNow now = workplace.open(bench);
        @Nullable
        Arrival arrival =
                find(now, came).flatMap(new Deliveries(workplace, now)::arrival).orElse(null);
        BankPage page = new Bank(
                        now,
                        workplace.benches().planningAFill(),
                        workplace.benches().judgingReadings().history(now.id()))
                .page(workplace.benches().keepingTheBank().bank(now.id()), arrival);
        return workplace.screens().show(page);
    }

    @GetMapping("/at/{bench}/supplies/{id}/delivery")
    View delivery(@PathVariable String bench, @PathVariable String id) {
        BenchNow now = workplace.open(bench);
        Supply supply = find(now, id).orElseThrow(() -> new NoSuchThing("supply " + id));
        return workplace
                .screens()
                .show(new DeliveryPage(
                        now.place(),
                        supply.details().name(),
                        now.place().path("/supplies/" + id),
                        new Deliveries(workplace, now).sheet(supply)));
    }

    private static Optional<Supply> find(BenchNow now, String id) {
        return now.bench().bank().stream()
                .filter(supply -> supply.id().value().equals(id))
                .findFirst();
    }
}
