// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.Notebook;

/**
 * The real server over a farm of a test's own, given back when the test is done: the next one hands it another farm. A
 * server knows its farm by {@link Days} and {@link Notebook} alone, and starting one costs more than most tests.
 */
final class Served implements AutoCloseable {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
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

    /**
     * Sends a form from a page of this server.
     *
     * @param form names and values in turn
     */
    HttpResponse<String> post(String path, String... form) throws IOException, InterruptedException {
        String own = "http://127.0.0.1:" + port();
        String body = Stream.iterate(0, k -> k < form.length, k -> k + 2)
                .map(k -> form[k] + "=" + URLEncoder.encode(form[k + 1], StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        HttpRequest request = HttpRequest.newBuilder(URI.create(own + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", own)
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return CLIENT.send(request, BodyHandlers.ofString());
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
