package org.lowfirst.web.view;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;

/** Writes the page about trouble for filters, which have no view of their own. */
public final class TroublePages {

    private final Screens screens;

    public TroublePages(Screens screens) {
        this.screens = screens;
    }

    public void write(Trouble trouble, HttpServletRequest request, HttpServletResponse response) throws IOException {
        new Screen(screens, new TroublePage(trouble, ""), trouble.status()).render(Map.of(), request, response);
    }
}
