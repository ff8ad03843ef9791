package org.lowfirst.web.server;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.view.Trouble;
import org.lowfirst.web.view.TroublePage;
import org.lowfirst.web.words.Spoken;
import org.lowfirst.web.words.Words;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Answers what is refused before any page is asked, such as a malformed request line, in plain words and without telling what
 * program serves. Made by Tomcat, by its class name.
 */
public final class PlainErrors extends ErrorReportValve {

    private static final Logger LOG = LoggerFactory.getLogger(PlainErrors.class);
    private static final int REFUSED = 400;
    private static final int SERVER_FAULT = 500;

    @Override
    protected void report(Request request, Response response, @Nullable Throwable fault) {
        if (response.getStatus() < REFUSED || response.getContentWritten() > 0 || !response.setErrorReported()) {
            return;
        }
        Words words = Spoken.words(RequestedLanguage.of(request));
        TroublePage page =
                new TroublePage(response.getStatus() >= SERVER_FAULT ? Trouble.FAILED : Trouble.NOT_UNDERSTOOD, "");
        response.setContentType("text/html");
        response.setCharacterEncoding("UTF-8");
        response.setHeader("X-Content-Type-Options", "nosniff");
        try {
            PrintWriter out = response.getReporter();
            if (out != null) {
                out.printf(
                        Locale.ROOT,
                        "<!doctype html><html lang=\"%s\"><title>%s</title><h1>%s</h1><p>%s</p><p><a href=\"/\">%s</a></p>",
                        words.language(),
                        page.title(words),
                        page.title(words),
                        page.what(words),
                        page.todo(words));
                response.finishResponse();
            }
        } catch (IOException gone) {
            LOG.debug("The client was gone before it could be answered.", gone);
        }
    }
}
