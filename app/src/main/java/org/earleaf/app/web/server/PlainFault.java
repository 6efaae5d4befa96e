// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.server;

import static org.earleaf.app.words.Words.tell;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.apache.coyote.ActionCode;
import org.jspecify.annotations.Nullable;

/** One plain sentence where nothing else has answered: no page of the server's own, nothing of what was sent. */
final class PlainFault extends ErrorReportValve {
    private static final int FAULT = 500;
    private static final Map<Integer, String> SENTENCES = Map.of(
            404, "There is no such page.",
            405, "Earleaf does not answer this kind of request.",
            411, "What was sent does not say how long it is. Send it from a page of Earleaf.",
            413, "What was sent is too large.",
            431, "The head of the request is too large. Clear this site's cookies in the browser.",
            503, "Too many forms are coming in at once. Wait a moment, then send yours again.");
    private static final String UNREADABLE =
            "This request cannot be read. Open Earleaf by the address it printed when it started.";
    private static final String MISTAKE = "Earleaf made a mistake. Go back, and try it once more.";

    @Override
    protected void report(Request request, Response response, @Nullable Throwable thrown) {
        int status = response.getStatus();
        AtomicBoolean open = new AtomicBoolean();
        response.getCoyoteResponse().action(ActionCode.IS_IO_ALLOWED, open);
        if (status < 400 || response.getContentWritten() > 0 || !response.setErrorReported() || !open.get()) {
            return;
        }
        // What was thrown took the headers with it.
        SafeHeaders.put(response);
        response.setContentType("text/plain;charset=UTF-8");
        try {
            response.getWriter().write(SENTENCES.getOrDefault(status, status < FAULT ? UNREADABLE : MISTAKE));
            response.finishResponse();
        } catch (IOException | IllegalStateException gone) {
            getContainer().getLogger().debug(tell("page.plain-fault.nobody-waits-for-this-answer"), gone);
        }
    }
}
