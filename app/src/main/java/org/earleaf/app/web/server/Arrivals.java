// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.server;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;
import org.springframework.util.unit.DataSize;

/**
 * Forms and photographs as they come in. The server holds a thread for each while it comes, so a few hundred that never
 * end would leave none for a page: only some may be coming at once, each says its length first, and comes at the pace of
 * a poor phone at least. One that is here already, as a short form is, waits for nobody.
 */
final class Arrivals extends ValveBase {
    private static final String AGAIN_AFTER_S = "5";

    private final Pace pace;
    private final Semaphore room;

    Arrivals(Pace pace) {
        this.pace = pace;
        this.room = new Semaphore(pace.atOnce());
    }

    /**
     * @param atOnce so many may be coming
     * @param grace for one of no length
     * @param leastEachSecond more time is given at this pace
     * @param most longer ones are refused unread
     */
    record Pace(int atOnce, Duration grace, DataSize leastEachSecond, DataSize most) {
        long time_ns(long length) {
            return grace.plus(Duration.ofMillis(1000 * length / leastEachSecond.toBytes()))
                    .toNanos();
        }
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        long length = request.getContentLengthLong();
        if (request.getHeader(tell("page.arrivals.transfer-encoding")) != null) {
            refuse(request, response, HttpServletResponse.SC_LENGTH_REQUIRED);
        } else if (length > pace.most().toBytes()) {
            refuse(request, response, HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
        } else if (length <= 0 || isHere(request, length)) {
            getNext().invoke(request, response);
        } else if (room.tryAcquire()) {
            try {
                paced(request, response, length);
            } finally {
                room.release();
            }
        } else {
            response.setHeader("Retry-After", AGAIN_AFTER_S);
            refuse(request, response, HttpServletResponse.SC_SERVICE_UNAVAILABLE);
        }
    }

    private static void refuse(Request request, Response response, int status) throws IOException {
        hangUp(request);
        response.sendError(status);
    }

    /** Without this the server would read on to the end of what it has refused. */
    private static void hangUp(Request request) {
        request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
    }

    private static boolean isHere(Request request, long length) {
        request.getCoyoteRequest().action(ActionCode.AVAILABLE, true);
        return request.getCoyoteRequest().getAvailable() >= length;
    }

    private void paced(Request request, Response response, long length) throws IOException, ServletException {
        org.apache.coyote.Request raw = request.getCoyoteRequest();
        InputBuffer own = raw.getInputBuffer();
        raw.setInputBuffer(new Timed(own, System.nanoTime() + pace.time_ns(length)));
        try {
            getNext().invoke(request, response);
            if (raw.getBytesRead() < length) {
                response.finishResponse();
                readOut(request, length);
            }
        } finally {
            raw.setInputBuffer(own);
        }
    }

    /** The rest of what a page did not want: a browser looks at the answer only when all is sent. */
    private static void readOut(Request request, long length) {
        try {
            Nowhere nowhere = new Nowhere();
            while (request.getCoyoteRequest().getBytesRead() < length) {
                if (request.getCoyoteRequest().doRead(nowhere) < 0) {
                    return;
                }
            }
        } catch (IOException late) {
            hangUp(request);
        }
    }

    /** Ends with the first read after its time; a single read ends with the time limit of the connection. */
    private record Timed(InputBuffer of, long until_ns) implements InputBuffer {
        @Override
        public int doRead(ApplicationBufferHandler handler) throws IOException {
            if (System.nanoTime() - until_ns > 0) {
                throw new IOException(tell("page.arrivals.it-came-too-slowly"));
            }
            return of.doRead(handler);
        }

        @Override
        public int available() {
            return of.available();
        }
    }

    private static final class Nowhere implements ApplicationBufferHandler {
        private ByteBuffer last = ByteBuffer.allocate(0);

        @Override
        public void setByteBuffer(ByteBuffer buffer) {
            last = buffer;
        }

        @Override
        public ByteBuffer getByteBuffer() {
            return last;
        }

        @Override
        public void expand(int size) {
            // The protocol brings its own.
        }
    }
}
