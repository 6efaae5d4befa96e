// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.server;

import static org.earleaf.app.words.Words.tell;

import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.apache.coyote.ActionCode;
import org.jspecify.annotations.Nullable;

/** One plain sentence where nothing else has answered: no page of the server's own, nothing of what was sent. */
final class PlainFault extends ErrorReportValve {
    private static final int FAULT = 500;

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
            response.getWriter().write(sentence(status));
            response.finishResponse();
        } catch (IOException | IllegalStateException gone) {
            getContainer().getLogger().debug(tell("page.plain-fault.nobody-waits-for-this-answer"), gone);
        }
    }

    private static String sentence(int status) {
        return switch (status) {
            case 404 -> tell("page.plain-fault.no-page");
            case 405 -> tell("page.plain-fault.no-such-request");
            case 411 -> tell("page.plain-fault.no-length");
            case 413 -> tell("page.plain-fault.too-large");
            case 431 -> tell("page.plain-fault.head-too-large");
            case 503 -> tell("page.plain-fault.too-many-forms");
            default -> status < FAULT ? tell("page.plain-fault.unreadable") : tell("page.plain-fault.mistake");
        };
    }
}
