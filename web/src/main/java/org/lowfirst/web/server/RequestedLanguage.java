package org.lowfirst.web.server;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Collections;
import java.util.Locale;
import org.lowfirst.station.Language;
import org.lowfirst.web.words.Spoken;
import org.springframework.http.HttpHeaders;
import org.springframework.web.servlet.HandlerInterceptor;

/** Speaks the first language a browser asks for that there is; English when there is none or it does not ask. */
final class RequestedLanguage implements HandlerInterceptor {

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        Spoken.speak(of(request));
        return true;
    }

    static Language of(HttpServletRequest request) {
        if (request.getHeader(HttpHeaders.ACCEPT_LANGUAGE) == null) {
            return Language.ENGLISH;
        }
        for (Locale asked : Collections.list(request.getLocales())) {
            Language nearest = Language.nearest(asked);
            if (nearest.locale().getLanguage().equals(asked.getLanguage())) {
                return nearest;
            }
        }
        return Language.ENGLISH;
    }
}
