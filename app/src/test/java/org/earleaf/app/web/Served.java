// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.Notebook;

/**
 * The real server over a farm of a test's own, given back when the test is done: the next one hands it another farm. A
 * server knows its farm by {@link Days} and {@link Notebook} alone, and starting one costs more than most tests.
 */
final class Served implements AutoCloseable {
    private static final Queue<Served> FREE = new ConcurrentLinkedQueue<>();

    private final WebServer server;
    private volatile Days days;
    private volatile Notebook notebook;

    private Served(Days days, Notebook notebook) {
        this.days = days;
        this.notebook = notebook;
        this.server = WebServer.start(
                passedOn(Days.class, () -> this.days), passedOn(Notebook.class, () -> this.notebook), "127.0.0.1", 0);
    }

    static Served over(Days days, Notebook notebook) {
        Served free = FREE.poll();
        if (free == null) {
            return new Served(days, notebook);
        }
        free.days = days;
        free.notebook = notebook;
        return free;
    }

    int port() {
        return server.port();
    }

    /** A part of the server, such as the table of its pages. */
    <T> T part(Class<T> type) {
        return server.part(type);
    }

    @Override
    public void close() {
        FREE.add(this);
    }

    private interface Now {
        Object is();
    }

    private static <T> T passedOn(Class<T> what, Now now) {
        return what.cast(Proxy.newProxyInstance(what.getClassLoader(), new Class<?>[] {what}, (proxy, asked, args) -> {
            try {
                return asked.invoke(now.is(), args);
            } catch (InvocationTargetException e) {
                throw e.getCause();
            }
        }));
    }
}
