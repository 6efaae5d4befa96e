// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.earleaf.units.Said;

/** Cuts comma-separated text into cells and remembers the line on which each record begins. */
final class Records {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get();

    /** One record: the line of the file on which it begins, and its cells without blanks around them. */
    record Line(int row, String[] cells) {}

    private Records() {}

    /** All records, the header first; remarks above the header are left out. */
    static List<Line> of(String name, String text, Findings findings) {
        int start = 0;
        int skipped = 0;
        while (start < text.length() && isRemark(text, start)) {
            int end = text.indexOf('\n', start);
            start = end < 0 ? text.length() : end + 1;
            skipped++;
        }
        List<Line> lines = new ArrayList<>();
        int row = skipped + 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text.substring(start)), FORMAT)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                add(lines, row, records.next());
                row = skipped + (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            findings.problem("csv.quote", new Place(name, row, ""), Said.of("found.odd-quote"));
            return List.of();
        }
        return lines;
    }

    private static boolean isRemark(String text, int start) {
        char c = text.charAt(start);
        return c == '#' || c == '\n' || c == '\r';
    }

    private static void add(List<Line> lines, int row, CSVRecord line) {
        String[] cells = line.values();
        boolean blank = true;
        for (int k = 0; k < cells.length; k++) {
            cells[k] = cells[k].strip();
            blank &= cells[k].isEmpty();
        }
        if (!blank) {
            lines.add(new Line(row, cells));
        }
    }
}
