package org.lowfirst.web.money;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.View;

/** A file as the browser gets it, to be kept under its own name. */
final class SavedFile implements View {

    private final String type;
    private final String name;
    private final byte[] content;

    /** @param name small letters, digits, points and hyphens */
    SavedFile(String type, String name, byte[] content) {
        this.type = type;
        this.name = name;
        this.content = content.clone();
    }

    @Override
    public String getContentType() {
        return type;
    }

    @Override
    public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (!type.contains("charset")) {
            response.setCharacterEncoding((String) null);
        }
        response.setContentType(type);
        response.setHeader("Content-Disposition", "attachment; filename=\"" + name + "\"");
        response.setHeader("Cache-Control", "no-store");
        response.setContentLength(content.length);
        response.getOutputStream().write(content);
    }
}
