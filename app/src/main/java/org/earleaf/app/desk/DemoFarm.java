// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The invented farm that travels in the jar, laid out as a folder for as long as it is open. */
public final class DemoFarm implements AutoCloseable {
    /** A jar has no folders to list; a test holds this list to the files of demo-farm. */
    static final List<String> FILES = List.of(
            "boundaries.geojson",
            "farm.csv",
            "fields.csv",
            "forecast.csv",
            "hours.csv",
            "irrigation.csv",
            "labels.csv",
            "manure.csv",
            "passes.csv",
            "products.csv",
            "readings.csv",
            "recipes.csv",
            "rigs.csv",
            "soil.csv",
            "stock.csv",
            "weather.csv",
            "yields.csv");

    private final Path folder;

    private DemoFarm(Path folder) {
        this.folder = folder;
    }

    public static DemoFarm unpack() {
        try {
            DemoFarm demo = new DemoFarm(Files.createTempDirectory("earleaf-demo-"));
            for (String name : FILES) {
                try (InputStream in = DemoFarm.class.getResourceAsStream("/demo-farm/" + name)) {
                    if (in != null) {
                        Files.copy(in, demo.folder.resolve(name));
                    }
                }
            }
            return demo;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path folder() {
        return folder;
    }

    @Override
    public void close() {
        try {
            for (String name : FILES) {
                Files.deleteIfExists(folder.resolve(name));
            }
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
