// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table that comes with Earleaf: lines of cells parted by commas, the first line names the columns, lines that begin
 * with # carry the source. The last column may hold commas, so that it can be a sentence.
 */
public final class BundledTable {
    private BundledTable() {}

    /** One line of a table. */
    public record Row(String table, Map<String, String> cells) {
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalStateException("the bundled table " + table + " has no column " + column);
            }
            return cell;
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    /** Rows of {@code tables/NAME} in their order, each by column name. */
    public static List<Row> rows(String name) {
        try (InputStream in = BundledTable.class.getResourceAsStream("/tables/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the bundled table " + name + " is missing");
            }
            return read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Row> read(BufferedReader lines, String name) throws IOException {
        List<Row> rows = new ArrayList<>();
        String[] columns = {};
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (columns.length == 0) {
                columns = line.split(",");
                continue;
            }
            String[] cells = line.split(",", columns.length);
            if (cells.length != columns.length) {
                throw new IllegalStateException(name + ": a line with too few cells: " + line);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int k = 0; k < columns.length; k++) {
                row.put(columns[k].strip(), cells[k].strip());
            }
            rows.add(new Row(name, Map.copyOf(row)));
        }
        return rows;
    }
}
