package org.lowfirst.web.view;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.springframework.http.ResponseCookie;

/** The person at this browser, as last chosen; remembered in a cookie so that a form is filled in beforehand. */
public final class Person {

    private static final String COOKIE = "lowfirst-who";

    private Person() {}

    /** The person the browser remembers; empty when it remembers none. */
    public static String remembered(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        if (cookies != null) {
            for (Cookie cookie : cookies) {
                if (cookie.getName().equals(COOKIE)) {
                    return URLDecoder.decode(cookie.getValue(), StandardCharsets.UTF_8);
                }
            }
        }
        return "";
    }

    /** The cookie that makes the browser remember a person for a month. */
    public static String remembering(String who) {
        return ResponseCookie.from(COOKIE, URLEncoder.encode(who, StandardCharsets.UTF_8))
                .path("/")
                .maxAge(Duration.ofDays(30))
                .httpOnly(true)
                .sameSite("Strict")
                .build()
                .toString();
    }
}
