package org.lowfirst.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A browser without scripts: it keeps cookies, follows links, fills in forms and sends them with all their hidden fields. */
final class Browser {

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    /** A page as it came, with the address it came from. */
    record Page(URI address, int status, Document document) {

        Element find(String selector) {
            Element found = document.selectFirst(selector);
            if (found == null) {
                throw new AssertionError("Nothing is " + selector + " at " + address + " (" + status + "):\n"
                        + document.body().text());
            }
            return found;
        }
    }

    Page get(URI address) {
        return send(HttpRequest.newBuilder(address).GET().build());
    }

    Page follow(Element link) {
        return get(URI.create(link.absUrl("href")));
    }

    /** @param typed what is typed into the fields, by name; anything else stays as the page has it */
    Page submit(Page page, Element form, Map<String, String> typed) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Element field : form.select("input[name]:not([type=file]), select[name], textarea[name]")) {
            if (field.is("input[type=checkbox]:not([checked]), input[type=radio]:not([checked])")) {
                continue;
            }
            Element chosen = field.selectFirst("option[selected]");
            fields.put(field.attr("name"), chosen == null ? field.attr("value") : chosen.attr("value"));
        }
        for (Map.Entry<String, String> entry : typed.entrySet()) {
            if (form.selectFirst("[name=" + entry.getKey() + "]") == null) {
                throw new AssertionError("The form at " + page.address() + " has no field " + entry.getKey() + ".");
            }
            fields.put(entry.getKey(), entry.getValue());
        }
        String body = fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        String action = form.absUrl("action");
        if (form.attr("method").equalsIgnoreCase("get")) {
            return get(URI.create(action + "?" + body));
        }
        return send(HttpRequest.newBuilder(URI.create(action))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    /**
     * Sends a form with a file.
     *
     * @param action how the form's address ends
     * @param file what is in the field named file; nothing is chosen when it is empty
     */
    Page send(Page page, String action, Map<String, String> typed, String file) {
        Element form = page.find("form[action$=" + action + "]");
        Map<String, String> fields = new LinkedHashMap<>();
        form.select("input[type=hidden]").forEach(field -> fields.put(field.attr("name"), field.attr("value")));
        fields.putAll(typed);
        String boundary = "----------between";
        StringBuilder body = new StringBuilder();
        fields.forEach((name, value) -> body.append(part(boundary, "name=\"" + name + "\"", ""))
                .append(value)
                .append("\r\n"));
        body.append(part(
                        boundary,
                        "name=\"file\"; filename=\"" + (file.isEmpty() ? "" : "sent") + "\"",
                        "Content-Type: application/octet-stream\r\n"))
                .append(file)
                .append("\r\n--")
                .append(boundary)
                .append("--\r\n");
        return send(HttpRequest.newBuilder(URI.create(form.absUrl("action")))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(BodyPublishers.ofString(body.toString()))
                .build());
    }

    private static String part(String boundary, String disposition, String type) {
        return "--" + boundary + "\r\nContent-Disposition: form-data; " + disposition + "\r\n" + type + "\r\n";
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private Page send(HttpRequest request) {
        try {
            HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
            return new Page(
                    answer.uri(),
                    answer.statusCode(),
                    Jsoup.parse(answer.body(), answer.uri().toString()));
        } catch (IOException e) {
            throw new AssertionError(request.uri().toString(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
