package org.lowfirst.web.server;

import org.lowfirst.web.workplace.Workplace;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ResponseBody;

/** Answers whether the program serves and can read its database; for whoever starts it by a script. */
@Controller
public final class HealthPage {

    private final Workplace workplace;

    public HealthPage(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping(value = "/health", produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseBody
    String health() {
        return "{\"status\":\"up\",\"benches\":"
                + workplace.benches().openingABench().listBenches().size() + "}";
    }
}
