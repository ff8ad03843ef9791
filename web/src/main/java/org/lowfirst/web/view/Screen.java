package org.lowfirst.web.view;

import gg.jte.output.Utf8ByteOutput;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.View;

/** One page, with the HTTP status it is sent with. */
final class Screen implements View {

    private final Screens screens;
    private final Page page;
    private final int status;

    Screen(Screens screens, Page page, int status) {
        this.screens = screens;
        this.page = page;
        this.status = status;
    }

    @Override
    public String getContentType() {
        return "text/html;charset=UTF-8";
    }

    @Override
    public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        Utf8ByteOutput html = new Utf8ByteOutput();
        screens.templates()
                .render(page.template() + ".jte", Map.of("frame", screens.frame(page, request), "page", page), html);
        response.setStatus(status);
        response.setContentType(getContentType());
        response.setHeader("Cache-Control", "no-store");
        response.setContentLength(html.getContentLength());
        html.writeTo(response.getOutputStream());
    }
}
