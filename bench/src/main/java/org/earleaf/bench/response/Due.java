// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The tables of values due: what this model gave when they were derived, regression and not validation. */
final class Due {
    private Due() {}

    static List<CSVRecord> table(String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (InputStream in = Objects.requireNonNull(Due.class.getResourceAsStream(name), name);
                InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return format.parse(text).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double of(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
