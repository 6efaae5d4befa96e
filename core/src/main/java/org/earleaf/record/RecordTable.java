// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.ArrayList;
import java.util.List;

/**
 * Filed records as a table that a spreadsheet opens: a row for each product of each record, what 7 CFR 110.3(a) asks
 * for first, then the text that was hashed with its links, so that the table can be checked without Earleaf. Every cell
 * is the value of that name in the text, as filed.
 */
public final class RecordTable {
    private static final List<String> OF_RECORD = List.of(
            "date",
            "field",
            "zone",
            "location",
            "crop",
            "area",
            "applicator",
            "certification",
            "placement",
            "rig",
            "start",
            "end",
            "id",
            "corrects",
            "why",
            "customer",
            "filed",
            "filed by");
    private static final List<String> OF_PRODUCT =
            List.of("product", "registration", "amount", "rate", "lot", "reentry_h");

    private RecordTable() {}

    /** Column names, then a row for each product of each record. */
    public static List<List<String>> rows(List<Chain.Entry> entries) {
        List<String> head = new ArrayList<>();
        head.add("number");
        head.addAll(OF_PRODUCT);
        head.addAll(OF_RECORD);
        head.addAll(List.of("previous", "hash", "text"));
        List<List<String>> rows = new ArrayList<>(List.of(head));
        for (Chain.Entry e : entries) {
            List<String> products = said(e.text(), "product");
            for (int k = 0; k < products.size(); k++) {
                List<String> row = new ArrayList<>();
                row.add(String.valueOf(e.number()));
                for (String name : OF_PRODUCT) {
                    row.add(safe(said(e.text(), name).get(k)));
                }
                for (String name : OF_RECORD) {
                    row.add(safe(said(e.text(), name).get(0)));
                }
                row.addAll(List.of(e.previous(), e.hash(), e.text()));
                rows.add(row);
            }
        }
        return rows;
    }

    /** Values of a name in the text, as written there. */
    private static List<String> said(String text, String name) {
        return text.lines()
                .filter(line -> line.startsWith(name + ": "))
                .map(line -> line.substring(name.length() + 2))
                .toList();
    }

    /** A spreadsheet takes what begins with these signs for a formula. */
    private static String safe(String cell) {
        return !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
