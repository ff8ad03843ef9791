package org.lowfirst.web.server;

import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Set;

/**
 * What counts as this machine talking to itself. Without sign-in nobody else may be answered: a page of another site
 * can point a name of its own at 127.0.0.1, so the name in the request counts, not only the address it came from.
 */
final class Loopback {

    private static final Set<String> NAMES = Set.of("localhost", "127.0.0.1", "[::1]", "::1");

    private Loopback() {}

    /**
     * Whether a request's Host header names this machine.
     *
     * @param host host and optional port, as sent
     */
    static boolean isHost(String host) {
        return NAMES.contains(withoutPort(host.strip().toLowerCase(Locale.ROOT)));
    }

    /**
     * Whether an Origin header is this very server.
     *
     * @param origin scheme, host and port, as sent
     * @param host the Host header of the same request
     */
    static boolean isOrigin(String origin, String host) {
        try {
            URI uri = new URI(origin);
            return "http".equals(uri.getScheme()) && host.strip().equalsIgnoreCase(uri.getRawAuthority());
        } catch (URISyntaxException notAnOrigin) {
            return false;
        }
    }

    /** Whether a bind address is reached from this machine only. */
    static boolean isAddress(InetAddress address) {
        return address.isLoopbackAddress();
    }

    private static String withoutPort(String host) {
        if (host.startsWith("[")) {
            return host.substring(0, host.indexOf(']') + 1);
        }
        int colon = host.indexOf(':');
        return colon >= 0 && colon == host.lastIndexOf(':') ? host.substring(0, colon) : host;
    }
}
