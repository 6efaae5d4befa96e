// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows as the text of a CSV file; lines end as on Unix. */
public final class CsvRows {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private CsvRows() {}

    public static String text(List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
            csv.printRecords(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
