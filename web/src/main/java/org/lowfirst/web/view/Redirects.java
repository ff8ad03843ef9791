package org.lowfirst.web.view;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.View;

/** Sends the browser on after a form was taken, so that loading the page again sends nothing twice. */
public final class Redirects {

    private Redirects() {}

    /** On to a page. */
    public static View to(String path) {
        return (model, request, response) -> send(path, request, response);
    }

    /**
     * On to a page that says that something was entered.
     *
     * @param entry number of the entry; 0 says nothing
     * @param who the person to remember in the browser
     */
    public static View saved(String path, long entry, String who) {
        String saved = entry > 0 ? path + (path.contains("?") ? "&" : "?") + "saved=" + entry : path;
        return (model, request, response) -> {
            if (!who.isEmpty()) {
                response.addHeader(HttpHeaders.SET_COOKIE, Person.remembering(who));
            }
            send(saved, request, response);
        };
    }

    /** A script that sent a form is told to go on itself, so that the browser loads a whole page and its address is right. */
    private static void send(String path, HttpServletRequest request, HttpServletResponse response) {
        if (request.getHeader("HX-Request") != null) {
            response.setStatus(HttpStatus.OK.value());
            response.setHeader("HX-Redirect", path);
            return;
        }
        response.setStatus(HttpStatus.SEE_OTHER.value());
        response.setHeader(HttpHeaders.LOCATION, path);
    }
}
