package org.lowfirst.web.bank;

import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Shows the bank. */
@Controller
public final class BankPages {

    private final Workplace workplace;

    public BankPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/bank")
    View bank(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        BankPage page = new Bank(
                        now,
                        workplace.benches().planningAFill(),
                        workplace.benches().judgingReadings().history(now.id()))
                .page(workplace.benches().keepingTheBank().bank(now.id()));
        return workplace.screens().show(page);
    }
}
