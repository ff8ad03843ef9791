package org.lowfirst.web.data;

import jakarta.servlet.MultipartConfigElement;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.Part;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Files that people send with a form. */
@Configuration(proxyBeanMethods = false)
public class Uploads {

    /** Larger journals are brought in on the command line [byte]. */
    private static final long LARGEST = 50L * 1024 * 1024;

    /** What is smaller stays in memory [byte]. */
    private static final int IN_MEMORY = 1024 * 1024;

    @Bean
    MultipartConfigElement multipart() {
        return new MultipartConfigElement("", LARGEST, LARGEST + IN_MEMORY, IN_MEMORY);
    }

    /** A file of the form; empty when none was chosen. */
    public static byte[] file(HttpServletRequest request, String field) {
        return parts(request).stream()
                .filter(part -> part.getName().equals(field) && part.getSubmittedFileName() != null)
                .findFirst()
                .map(Uploads::bytes)
                .orElse(new byte[0]);
    }

    /** The name a file was sent under; empty when none was chosen. */
    public static String nameOf(HttpServletRequest request, String field) {
        return parts(request).stream()
                .filter(part -> part.getName().equals(field) && part.getSubmittedFileName() != null)
                .findFirst()
                .map(Part::getSubmittedFileName)
                .orElse("");
    }

    /** The other fields of the form, which browsers send in the encoding of the page. */
    public static Map<String, String> typed(HttpServletRequest request) {
        Map<String, String> typed = new TreeMap<>();
        for (Part part : parts(request)) {
            if (part.getSubmittedFileName() == null) {
                typed.put(part.getName(), new String(bytes(part), StandardCharsets.UTF_8));
            }
        }
        return typed;
    }

    private static Collection<Part> parts(HttpServletRequest request) {
        try {
            return request.getParts();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ServletException noParts) {
            return List.of();
        }
    }

    private static byte[] bytes(Part part) {
        try (InputStream in = part.getInputStream()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
