// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.earleaf.app.store.KeptBriefs.Kept;
import org.earleaf.units.EarleafException;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.ContentCachingResponseWrapper;

/**
 * Keeps the morning page as it was shown, in the farm's file, so that the next start has something to read in its first
 * second. It is shown under its time and never as the answer of now.
 */
class KeptMorning extends OncePerRequestFilter {
    /** An older one says too little of today to be worth the reading. */
    private static final int OLDEST_D = 3;
    /** Set by the morning page once its figures stand, with the day that they are of. */
    static final String SHOWN = KeptMorning.class.getName();

    private static final String BEGIN = "<main id=\"main\">";
    private static final String END = "</main>";
    private static final Logger LOG = Logger.getLogger(KeptMorning.class.getName());

    private final Desk desk;
    private final AtomicReference<String> last = new AtomicReference<>("");

    KeptMorning(Desk desk) {
        this.desk = desk;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !"GET".equals(request.getMethod()) || !"/".equals(request.getRequestURI());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        ContentCachingResponseWrapper copy = new ContentCachingResponseWrapper(response);
        chain.doFilter(request, copy);
        if (request.getAttribute(SHOWN) instanceof LocalDate day) {
            keep(
                    new String(copy.getContentAsByteArray(), StandardCharsets.UTF_8),
                    Frame.format(request).isMetric(),
                    day);
        }
        copy.copyBodyToResponse();
    }

    /** A page that cannot be kept is shown all the same. */
    private void keep(String html, boolean metric, LocalDate day) {
        int from = html.indexOf(BEGIN);
        int to = html.lastIndexOf(END);
        if (from < 0 || to < from) {
            return;
        }
        // The page that it is shown on has a heading of its own.
        String page = html.substring(from + BEGIN.length(), to)
                .replace("<h2", "<h3")
                .replace("</h2>", "</h3>")
                .replace("<h1", "<h2")
                .replace("</h1>", "</h2>");
        String of = metric + " " + day + " " + page;
        if (of.equals(last.getAndSet(of))) {
            return;
        }
        try {
            desk.notebook().kept().keep(new Kept(metric, day, desk.days().now(), Frame.VERSION, page));
        } catch (EarleafException cannot) {
            LOG.log(Level.WARNING, "The morning page could not be kept.", cannot);
        }
    }

    /** What may be shown while the page of a day is worked out. */
    static Optional<Kept> find(Desk desk, boolean metric) {
        LocalDate today = desk.today().on();
        return desk.notebook()
                .kept()
                .find(metric)
                .filter(k -> k.program().equals(Frame.VERSION))
                .filter(k -> !k.day().isBefore(today.minusDays(OLDEST_D)))
                .filter(k -> !k.day().isAfter(today.plusDays(OLDEST_D)));
    }
}
