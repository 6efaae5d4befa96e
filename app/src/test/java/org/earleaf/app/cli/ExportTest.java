// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import javax.tools.ToolProvider;
import org.earleaf.field.FieldPart;
import org.earleaf.record.Amount;
import org.earleaf.record.Applicator;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.ProductUse;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exports against the checker that stands in docs/verify and shares no code with Earleaf: it is compiled by itself. */
class ExportTest {
    @TempDir
    static Path folder;

    private static Method check;

    @BeforeAll
    static void compile() throws Exception {
        Path source = Path.of("../docs/verify/VerifyRecords.java");
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-proc:none",
                        "-cp",
                        folder.toString(),
                        "-d",
                        folder.toString(),
                        source.toString());
        assertThat(failed).isZero();
        URL[] alone = {folder.toUri().toURL()};
        check = new URLClassLoader(alone, ClassLoader.getPlatformClassLoader())
                .loadClass("VerifyRecords")
                .getMethod("check", String.class, String.class);
    }

    private static String check(String file, String head) throws Exception {
        return (String) check.invoke(null, file, head);
    }

    private static FiledRecord record(int number) {
        List<ProductUse> products = new ArrayList<>();
        for (int k = 0; k <= number % 3; k++) {
            products.add(new ProductUse(
                    "Demo \"F" + k + "\", strong",
                    "INVENTED-" + k,
                    Amount.parse(800 + number + ".50 fl oz", "amount"),
                    "10 fl oz/ac",
                    "=L" + k,
                    OptionalInt.of(12)));
        }
        TreeMap<String, String> extras = new TreeMap<>();
        extras.put("wind", "6 mph from SW\nsteady");
        return new FiledRecord(
                FiledRecord.Filing.first("r" + number, Instant.parse("2026-06-30T22:15:00Z"), "A. Grower"),
                "p" + number,
                new FiledRecord.Treated(
                        new FieldPart("Müller's \\ Eighty", ""), "S 12, T 80 N", "corn", Amount.parse("72 ac", "area")),
                new FiledRecord.Work(
                        "over the top",
                        "highboy",
                        LocalDate.of(2026, 6, 1).plusDays(number),
                        Optional.empty(),
                        Optional.empty()),
                products,
                Applicator.onOwnGround("A. Grower", "none"),
                extras);
    }

    private static List<Chain.Entry> chain(int length) {
        List<Chain.Entry> entries = new ArrayList<>();
        for (int k = 1; k <= length; k++) {
            Optional<Chain.Entry> last = entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(k - 2));
            entries.add(Chain.next(last, record(k)));
        }
        return entries;
    }

    @Test
    void an_export_as_it_was_written_holds_and_says_so() throws Exception {
        for (int length : new int[] {0, 1, 20}) {
            List<Chain.Entry> entries = chain(length);
            assertThat(check(RecordText.exportJson(entries), Chain.head(entries)))
                    .isEmpty();
            assertThat(check(RecordText.exportCsv(entries), Chain.head(entries)))
                    .isEmpty();
            assertThat(check(RecordText.exportCsv(entries), "")).isEmpty();
        }
    }

    @Test
    void a_table_has_a_row_for_each_product_and_no_cell_that_a_spreadsheet_takes_for_a_formula() {
        String csv = RecordText.exportCsv(chain(2));
        assertThat(csv).startsWith("number,product,registration,amount,rate,lot,reentry_h,date,field,zone,location,");
        assertThat(csv)
                .contains("1,\"Demo \"\"F0\"\", strong\",INVENTED-0,801.50 fl oz,10 fl oz/ac,'=L0,12,2026-06-02,");
        assertThat(csv.split("INVENTED-")).hasSizeGreaterThan(4);
    }

    @Test
    void ten_thousand_random_tamperings_of_exports_are_all_found() throws Exception {
        List<Chain.Entry> good = chain(8);
        String head = Chain.head(good);
        String csv = RecordText.exportCsv(good);
        SplittableRandom random = new SplittableRandom(11);
        int missed = 0;
        int tried = 0;
        while (tried < 10_000) {
            boolean table = random.nextBoolean();
            String bad;
            if (table && random.nextInt(3) == 0) {
                // Any character of the table but in its column names, which a reader sees are not ours.
                bad = flipped(csv, csv.indexOf('\n') + 1, random);
            } else {
                List<Chain.Entry> entries = new ArrayList<>(good);
                tamper(entries, random);
                bad = table ? RecordText.exportCsv(entries) : RecordText.exportJson(entries);
            }
            tried++;
            if (check(bad, head).isEmpty() && !sameCells(bad, csv)) {
                missed++;
                System.out.println("missed: " + bad.length() + " " + diff(bad, csv));
            }
        }
        System.out.println(tried + " tamperings of exports tried, " + missed + " missed");
        assertThat(missed).isZero();
    }

    /** A quote more that changes no cell ("a" for a) changes nothing that is said. */
    private static boolean sameCells(String bad, String good) {
        return bad.replace("\"", "").equals(good.replace("\"", ""));
    }

    private static String diff(String bad, String good) {
        int at = 0;
        while (at < bad.length() && at < good.length() && bad.charAt(at) == good.charAt(at)) {
            at++;
        }
        return bad.substring(Math.max(0, at - 20), Math.min(bad.length(), at + 20));
    }

    private static String flipped(String text, int from, SplittableRandom random) {
        int at = from + random.nextInt(text.length() - from);
        char other = text.charAt(at) == 'x' ? 'y' : 'x';
        return text.substring(0, at) + other + text.substring(at + 1);
    }

    /** Edit, re-hash one, rewrite from one on, remove, cut off the end, swap, double, insert, back-date. */
    private static void tamper(List<Chain.Entry> entries, SplittableRandom random) throws Exception {
        int at = random.nextInt(entries.size());
        Chain.Entry e = entries.get(at);
        switch (random.nextInt(9)) {
            case 0 ->
                entries.set(at, new Chain.Entry(e.number(), e.previous(), valueFlipped(e.text(), random), e.hash()));
            case 1 -> entries.set(at, hashed(e.number(), e.previous(), valueFlipped(e.text(), random)));
            case 2 -> {
                String previous = e.previous();
                for (int k = at; k < entries.size(); k++) {
                    String text = entries.get(k).text();
                    Chain.Entry anew = hashed(k + 1L, previous, k == at ? valueFlipped(text, random) : text);
                    entries.set(k, anew);
                    previous = anew.hash();
                }
            }
            case 3 -> entries.remove(at);
            case 4 -> entries.subList(at, entries.size()).clear();
            case 5 -> Collections.swap(entries, at, (at + 1 + random.nextInt(entries.size() - 1)) % entries.size());
            case 6 -> entries.add(at, e);
            case 7 -> entries.add(at, hashed(at + 1L, e.previous(), record(77).canonical()));
            default -> {
                String dated = e.text().replaceFirst("date: 2026-06-(\\d\\d)", "date: 2025-06-$1");
                entries.set(at, new Chain.Entry(e.number(), e.previous(), dated, e.hash()));
            }
        }
    }

    /** One character of one value, not of a name. */
    private static String valueFlipped(String text, SplittableRandom random) {
        String changed = text;
        while (changed.equals(text) || changed.split("\n").length != text.split("\n").length) {
            changed = flipped(text, 0, random);
            int at = 0;
            while (changed.charAt(at) == text.charAt(at)) {
                at++;
            }
            int line = text.lastIndexOf('\n', at - 1) + 1;
            int colon = text.indexOf(": ", line);
            changed = colon >= 0 && at >= colon + 2 && text.charAt(at) != '\n' ? changed : text;
        }
        return changed;
    }

    private static Chain.Entry hashed(long number, String previous, String text) throws Exception {
        MessageDigest sha = MessageDigest.getInstance("SHA-256");
        sha.update(previous.getBytes(StandardCharsets.US_ASCII));
        sha.update(text.getBytes(StandardCharsets.UTF_8));
        return new Chain.Entry(number, previous, text, HexFormat.of().formatHex(sha.digest()));
    }
}
