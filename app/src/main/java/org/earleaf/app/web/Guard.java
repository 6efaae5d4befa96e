// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.earleaf.app.words.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/** Turns away what another site's page would have read or written here. */
class Guard extends OncePerRequestFilter {
    private static final String BYTE = "(25[0-5]|2[0-4]\\d|1\\d\\d|[1-9]?\\d)";
    private static final Pattern IPV4 = Pattern.compile(BYTE + "(\\." + BYTE + "){3}");
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN_FETCH_SITES = Set.of("same-origin", "none");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Words.begin(Frame.isMetric(request));
        if (!isNamedAsHere(request.getServerName())) {
            refuse(response, tell("page.guard.open-earleaf-by-the-address", "host", request.getServerName()));
            return;
        }
        if (!READING.contains(request.getMethod()) && !comesFromHere(request)) {
            refuse(response, tell("page.guard.this-form-was-sent-from"));
            return;
        }
        chain.doFilter(request, response);
    }

    private static void refuse(HttpServletResponse response, String why) throws IOException {
        response.setStatus(HttpServletResponse.SC_FORBIDDEN);
        response.setContentType("text/plain;charset=UTF-8");
        response.getWriter().write(why);
    }

    /**
     * An address, or a name of the local network. A name of the wide net that leads here is a page elsewhere trying to
     * read this farm. The server has refused what stands in brackets and is no IPv6 address.
     */
    static boolean isNamedAsHere(String host) {
        String name = host.toLowerCase(Locale.ROOT);
        return IPV4.matcher(name).matches()
                || name.startsWith("[")
                || !name.contains(".") && !name.contains(":")
                || name.endsWith(".local");
    }

    /**
     * A browser says where a form stood. Without either header the sender is no browser, or one too old to tell, and is
     * turned away.
     */
    private static boolean comesFromHere(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (site != null && !OWN_FETCH_SITES.contains(site)) {
            return false;
        }
        return origin == null ? site != null : isOwn(origin, request.getHeader(HttpHeaders.HOST));
    }

    private static boolean isOwn(String origin, @Nullable String host) {
        try {
            return host != null && host.equalsIgnoreCase(URI.create(origin).getAuthority());
        } catch (IllegalArgumentException malformed) {
            return false;
        }
    }
}
