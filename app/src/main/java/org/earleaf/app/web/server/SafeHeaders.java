// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.server;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;

/** Sets the headers that keep an answer to itself, before anything can go wrong. */
final class SafeHeaders extends ValveBase {
    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none';"
                    + " form-action 'self'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            // Files that may be kept say so themselves.
            "Cache-Control",
            "no-store");

    static void put(HttpServletResponse response) {
        HEADERS.forEach(response::setHeader);
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        put(response);
        getNext().invoke(request, response);
    }
}
