// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.earleaf.app.desk.AskedDay;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Question;
import org.earleaf.app.desk.QuestionDay;
import org.earleaf.farm.Farm;
import org.earleaf.week.Week;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/**
 * A farm's day that a page waits for only so long, all its questions together. Then {@link NotYet} is thrown; the answer is
 * worked out on, and is there for the next look.
 *
 * @param until_ns on the machine's own clock
 */
record PatientDay(FarmDay of, long until_ns) implements QuestionDay {
    /** Longer than this nobody waits before a page says that work goes on. */
    private static final long PAGE_MS = 900;
    /** What was typed is not to be sent twice for a moment's work. */
    private static final long FORM_MS = 10_000;

    private static final String KEY = PatientDay.class.getName();

    /** One end of patience for each request, however often it asks. */
    static long until() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return after(PAGE_MS);
        }
        Object known = request.getAttribute(KEY, RequestAttributes.SCOPE_REQUEST);
        if (known instanceof Long until) {
            return until;
        }
        long until = after(isForm(request) ? FORM_MS : PAGE_MS);
        request.setAttribute(KEY, until, RequestAttributes.SCOPE_REQUEST);
        return until;
    }

    private static boolean isForm(RequestAttributes request) {
        return request instanceof ServletRequestAttributes web && isForm(web.getRequest());
    }

    static boolean isForm(HttpServletRequest request) {
        return "POST".equals(request.getMethod());
    }

    private static long after(long wait_ms) {
        return System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(wait_ms);
    }

    @Override
    public <T> T get(Question<T> question) {
        try {
            return of.ask(question).get(until_ns - System.nanoTime(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException | RejectedExecutionException still) {
            throw new NotYet(of, question);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RejectedExecutionException) {
                throw new NotYet(of, question);
            }
            throw AskedDay.cause(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new NotYet(of, question);
        }
    }

    @Override
    public <T> CompletableFuture<T> ask(Question<T> question) {
        return of.ask(question);
    }

    @Override
    public List<Week.Told> told() {
        return of.told();
    }

    @Override
    public Farm farm() {
        return of.farm();
    }

    @Override
    public LocalDate on() {
        return of.on();
    }

    @Override
    public Progress progress() {
        return of.progress();
    }
}
