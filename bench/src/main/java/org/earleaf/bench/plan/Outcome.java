// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Properties;

/** What one farm came to, kept in a file of its own so that a run may be taken up again. */
record Outcome(Properties figures) {
    static Path file(Path folder, long seed, double limit_s) {
        return folder.resolve("farm-" + seed + "-" + Math.round(limit_s) + "s.properties");
    }

    static Outcome read(Path file) throws IOException {
        Properties p = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            p.load(in);
        }
        return new Outcome(p);
    }

    void write(Path file) throws IOException {
        Path half = file.resolveSibling(file.getFileName() + ".half");
        try (Writer out = Files.newBufferedWriter(half)) {
            figures.store(out, null);
        }
        Files.move(half, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    Outcome with(String key, double value) {
        figures.setProperty(key, Double.toString(value));
        return this;
    }

    double of(String key) {
        return Double.parseDouble(figures.getProperty(key));
    }

    /** The larger of the lower bounds that were worked out; each has a key that ends in this word. */
    double bound_usd() {
        return figures.stringPropertyNames().stream()
                .filter(k -> k.endsWith("bound_usd"))
                .mapToDouble(this::of)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** A plan's cost above the larger bound [%]. */
    double gap_pct(String key) {
        return 100 * (of(key) / bound_usd() - 1);
    }

    /** Above the best of the plans of the same seconds [%]; endless: no plan at all. */
    double behind_pct(String key) {
        double best = Math.min(of("ours_usd"), Math.min(of("library_usd"), of("solver_usd")));
        return 100 * (of(key) / best - 1);
    }

    boolean proven() {
        return of("proven") > 0;
    }
}
