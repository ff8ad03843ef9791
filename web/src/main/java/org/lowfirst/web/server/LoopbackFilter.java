package org.lowfirst.web.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.view.Trouble;
import org.lowfirst.web.view.TroublePages;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/** Answers 403 to a request that does not call this machine by a loopback name, or comes from another site's page. */
final class LoopbackFilter extends OncePerRequestFilter {

    private final TroublePages pages;

    LoopbackFilter(TroublePages pages) {
        this.pages = pages;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        @Nullable String host = request.getHeader(HttpHeaders.HOST);
        if (host == null || !Loopback.isHost(host)) {
            pages.write(Trouble.FOREIGN_HOST, request, response);
        } else if (isForeign(request, host)) {
            pages.write(Trouble.FOREIGN_ORIGIN, request, response);
        } else {
            chain.doFilter(request, response);
        }
    }

    private static boolean isForeign(HttpServletRequest request, String host) {
        @Nullable String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (origin != null) {
            return !Loopback.isOrigin(origin, host);
        }
        @Nullable String referer = changesSomething(request) ? request.getHeader(HttpHeaders.REFERER) : null;
        return referer != null && !Loopback.isOrigin(originOf(referer), host);
    }

    private static boolean changesSomething(HttpServletRequest request) {
        return !request.getMethod().equals("GET") && !request.getMethod().equals("HEAD");
    }

    private static String originOf(String referer) {
        int path = referer.indexOf('/', referer.indexOf("//") + 2);
        return path < 0 ? referer : referer.substring(0, path);
    }
}
