package org.lowfirst.web.view;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.View;

/** A file as the browser gets it, under a name of its own. */
public final class Attachment implements View {

    private final String type;
    private final String disposition;
    private final byte[] bytes;

    private Attachment(String type, String disposition, byte[] bytes) {
        this.type = type;
        this.disposition = disposition;
        this.bytes = bytes.clone();
    }

    /**
     * A file that the browser shows if it can.
     *
     * @param fileName small letters, digits, points and hyphens
     */
    public static Attachment shown(String type, String fileName, byte[] bytes) {
        return new Attachment(type, "inline; filename=\"" + fileName + "\"", bytes);
    }

    /** A file that the browser saves. */
    public static Attachment saved(String type, String fileName, byte[] bytes) {
        return new Attachment(type, "attachment; filename=\"" + fileName + "\"", bytes);
    }

    @Override
    public String getContentType() {
        return type;
    }

    @Override
    public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        response.setCharacterEncoding((String) null);
        response.setContentType(type);
        response.setHeader("Content-Disposition", disposition);
        response.setHeader("Cache-Control", "no-store");
        response.setContentLength(bytes.length);
        response.getOutputStream().write(bytes);
    }
}
