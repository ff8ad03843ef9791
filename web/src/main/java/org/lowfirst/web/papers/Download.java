package org.lowfirst.web.papers;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.paper.PrintedPaper;
import org.springframework.web.servlet.View;

/** A paper as the browser gets it: shown, and saved under its own name. */
final class Download implements View {

    private static final String TYPE = "application/pdf";

    private final PrintedPaper paper;

    Download(PrintedPaper paper) {
        this.paper = paper;
    }

    @Override
    public String getContentType() {
        return TYPE;
    }

    @Override
    public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        byte[] pdf = paper.pdf();
        response.setCharacterEncoding((String) null);
        response.setContentType(TYPE);
        response.setHeader("Content-Disposition", "inline; filename=\"" + paper.fileName() + "\"");
        response.setHeader("Cache-Control", "no-store");
        response.setContentLength(pdf.length);
        response.getOutputStream().write(pdf);
    }
}
