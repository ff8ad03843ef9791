package org.lowfirst.web.due;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.due.CalendarText;
import org.springframework.web.servlet.View;

/** A calendar file as a calendar program gets it. */
final class CalendarFile implements View {

    private final String text;

    CalendarFile(String text) {
        this.text = text;
    }

    @Override
    public String getContentType() {
        return CalendarText.MEDIA_TYPE;
    }

    @Override
    public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        byte[] octets = text.getBytes(StandardCharsets.UTF_8);
        response.setContentType(CalendarText.MEDIA_TYPE);
        response.setHeader("Content-Disposition", "inline; filename=\"due.ics\"");
        response.setHeader("Cache-Control", "no-cache");
        response.setContentLength(octets.length);
        response.getOutputStream().write(octets);
    }
}
