// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Future;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Standing;
import org.earleaf.app.desk.StoredDays;
import org.earleaf.app.desk.StoredNotebook;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.farm.Farm;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;
import org.earleaf.week.Week;
import org.jspecify.annotations.Nullable;

/** The pages over one store, from start to interrupt. Nothing of the server is loaded before {@link #start}. */
public final class Serving implements AutoCloseable {
    private final FarmStore store;
    private final StoredDays days;
    private final boolean lasting;
    private final CountDownLatch end = new CountDownLatch(1);
    private @Nullable WebServer server;

    private Serving(Wiring wiring, FarmStore store, Optional<LocalDate> on, boolean lasting) {
        this.store = store;
        this.days = new StoredDays(store, wiring.days(), wiring.clock(), on, !lasting);
        this.lasting = lasting;
    }

    public static Serving of(Wiring wiring, Path file, Optional<LocalDate> on) {
        FarmStore store = FarmStore.open(file);
        try {
            store.farm();
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
        return new Serving(wiring, store, on, true);
    }

    /** A folder's farm in a temporary file that goes when the serving ends. */
    public static Serving onTrial(Wiring wiring, Path folder, Optional<LocalDate> on) {
        Farm farm = wiring.folders().farm(folder);
        List<WeatherDay> written = wiring.folders().weather(folder).observed();
        try {
            FarmStore store =
                    FarmStore.create(Files.createTempDirectory("earleaf-trial-").resolve("trial.db"));
            store.importFarm(farm, written);
            return new Serving(wiring, store, on, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path file() {
        return store.file();
    }

    /** The farm on the day that the pages open on. */
    public FarmDay today() {
        return days.day(days.today());
    }

    /** Starts the pages and says where they are. */
    public String start(String address, int port) {
        Runtime.getRuntime().addShutdownHook(new Thread(this::close, "earleaf-stop"));
        refuseTaken(address, port);
        WebServer started = WebServer.start(days, new StoredNotebook(store, lasting), address, port);
        server = started;
        // Whoever opens the first page finds its figures ready, or nearly so.
        FarmDay today = today();
        Future<Week> unused = today.ask(Standing.week(today.told()));
        String host = address.equals("0.0.0.0") || address.equals("::") ? "localhost" : address;
        return "Earleaf is at http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + started.port() + "/";
    }

    /** The server itself would say it in forty lines. */
    private static void refuseTaken(String address, int port) {
        try (ServerSocket probe = new ServerSocket()) {
            probe.setReuseAddress(true);
            probe.bind(new InetSocketAddress(address, port));
        } catch (IOException | IllegalArgumentException e) {
            throw new EarleafException(Problem.of(
                    "serve.port-taken",
                    Said.text("--port"),
                    Said.of(
                            "found.taken-port",
                            "address",
                            address,
                            "port",
                            String.valueOf(port),
                            "why",
                            String.valueOf(e.getMessage()))));
        }
    }

    public void untilInterrupted() {
        try {
            end.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public synchronized void close() {
        if (end.getCount() == 0) {
            return;
        }
        end.countDown();
        if (server != null) {
            server.close();
        }
        store.close();
        if (!lasting) {
            clear();
        }
    }

    private void clear() {
        Path file = store.file();
        String name = String.valueOf(file.getFileName());
        try {
            for (String each : List.of(name, name + "-wal", name + "-shm")) {
                Files.deleteIfExists(file.resolveSibling(each));
            }
            Files.deleteIfExists(file.toAbsolutePath().getParent());
        } catch (IOException e) {
            System.err.println("The trial's file could not be removed: " + e.getMessage());
        }
    }
}
