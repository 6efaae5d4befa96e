// SPDX-License-Identifier: Apache-2.0

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Checks an export of filed records without any code of the program that wrote it:
 * {@code java VerifyRecords.java records.json [HEAD]}, or {@code records.csv}. Every entry's hash must be SHA-256 over the hash before it (64 zeros before the first) and the
 * entry's text; numbers must run 1, 2, 3 ...; every other column of the table must say what the text says. HEAD is a
 * hash printed earlier, on a sheet or in an export: without it nobody can see that entries were cut off at the end, or
 * that all was written anew.
 */
public final class VerifyRecords {
    private static final Pattern BEGIN = Pattern.compile("\\s*\\{\\s*\"records\"\\s*:\\s*\\[\\s*");
    private static final Pattern ENTRY = Pattern.compile(",?\\s*\\{\\s*\"number\"\\s*:\\s*(\\d+)\\s*,\\s*\"previous\"\\s*:\\s*"
            + "\"([0-9a-f]{64})\"\\s*,\\s*\"hash\"\\s*:\\s*\"([0-9a-f]{64})\"\\s*,\\s*\"text\"\\s*:\\s*"
            + "\"((?:[^\"\\\\]++|\\\\.)*+)\"\\s*\\}");
    private static final Pattern END = Pattern.compile("\\s*\\]\\s*,\\s*\"head\"\\s*:\\s*\"([0-9a-f]{64})\"\\s*\\}\\s*\\z");

    private VerifyRecords() {}

    /** One entry of the chain as it stands in the file. */
    private record Entry(String number, String previous, String hash, String text) {}

    public static void main(String[] args) throws Exception {
        String found = check(Files.readString(Path.of(args[0])), args.length > 1 ? args[1] : "");
        System.out.println(found.isEmpty() ? "All as filed." : "NOT as filed: " + found);
        System.exit(found.isEmpty() ? 0 : 1);
    }

    /** What does not hold, empty when all does. */
    public static String check(String file, String head) throws Exception {
        try {
            return file.strip().startsWith("{") ? json(file, head) : csv(file, head);
        } catch (IllegalArgumentException | IndexOutOfBoundsException | ClassCastException e) {
            return "the file cannot be read: " + e.getMessage();
        }
    }

    private static String chain(List<Entry> entries, String head) throws Exception {
        String previous = "0".repeat(64);
        boolean headSeen = head.isEmpty() || head.equals(previous);
        int number = 0;
        for (Entry e : entries) {
            number++;
            if (!e.number().equals(String.valueOf(number))) {
                return "entry \"" + e.number() + "\" stands where entry " + number + " belongs";
            }
            if (!e.previous().equals(previous)) {
                return "entry " + number + " does not follow the one before it";
            }
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            sha.update(previous.getBytes(StandardCharsets.US_ASCII));
            sha.update(e.text().getBytes(StandardCharsets.UTF_8));
            if (!HexFormat.of().formatHex(sha.digest()).equals(e.hash())) {
                return "the text of entry " + number + " is not the text that was filed";
            }
            previous = e.hash();
            headSeen |= previous.equals(head);
        }
        return headSeen ? "" : "the head printed earlier is not in it: entries were cut off or written anew";
    }

    private static String json(String file, String head) throws Exception {
        Matcher begin = BEGIN.matcher(file);
        int at = begin.lookingAt() ? begin.end() : -1;
        List<Entry> entries = new ArrayList<>();
        for (Matcher m = ENTRY.matcher(file); at >= 0 && m.find(at) && m.start() == at; at = m.end()) {
            entries.add(new Entry(m.group(1), m.group(2), m.group(3), unescaped(m.group(4))));
        }
        Matcher end = END.matcher(file);
        if (at < 0 || !end.find(at) || end.start() != at) {
            return "the file cannot be read behind entry " + entries.size();
        }
        String found = chain(entries, head);
        String last = entries.isEmpty() ? "0".repeat(64) : entries.get(entries.size() - 1).hash();
        return found.isEmpty() && !last.equals(end.group(1)) ? "its head is not its last entry" : found;
    }

    private static String unescaped(String json) {
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < json.length(); k++) {
            char c = json.charAt(k);
            if (c != '\\') {
                text.append(c);
                continue;
            }
            char e = json.charAt(++k);
            if (e == 'u') {
                text.append((char) Integer.parseInt(json.substring(k + 1, k + 5), 16));
                k += 4;
            } else {
                int known = "ntrbf".indexOf(e);
                text.append(known < 0 ? e : "\n\t\r\b\f".charAt(known));
            }
        }
        return text.toString();
    }

    /** A table has a row a product; rows of one entry stand together and repeat its text. */
    private static String csv(String file, String head) throws Exception {
        List<List<String>> rows = rows(file);
        List<String> names = rows.get(0);
        List<Entry> entries = new ArrayList<>();
        int product = 0;
        for (List<String> row : rows.subList(1, rows.size())) {
            if (row.size() != names.size()) {
                return "a row with " + row.size() + " cells of " + names.size();
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int k = 0; k < names.size(); k++) {
                cells.put(names.get(k), row.get(k));
            }
            Entry e = new Entry(cells.remove("number"), cells.remove("previous"), cells.remove("hash"), cells.remove("text"));
            Entry last = entries.isEmpty() ? null : entries.get(entries.size() - 1);
            product = e.equals(last) ? product + 1 : 0;
            String wrong = product == 0 ? complete(entries, rows, names) : "";
            if (!e.equals(last)) {
                entries.add(e);
            }
            Map<String, List<String>> text = said(e.text());
            for (Map.Entry<String, String> cell : cells.entrySet()) {
                List<String> said = text.getOrDefault(cell.getKey(), List.of());
                String expected = said.size() > product ? said.get(product) : said.isEmpty() ? "" : said.get(0);
                if (!plain(cell.getValue()).equals(expected)) {
                    return "entry " + e.number() + ": the column " + cell.getKey() + " does not say what the text says";
                }
            }
            if (!wrong.isEmpty()) {
                return wrong;
            }
        }
        String wrong = complete(entries, rows, names);
        return wrong.isEmpty() ? chain(entries, head) : wrong;
    }

    /** Every product of the last entry has its row. */
    private static String complete(List<Entry> entries, List<List<String>> rows, List<String> names) {
        if (entries.isEmpty()) {
            return "";
        }
        Entry e = entries.get(entries.size() - 1);
        int text = names.indexOf("text");
        long there = rows.stream().filter(r -> r.size() > text && r.get(text).equals(e.text())).count();
        return there == said(e.text()).getOrDefault("product", List.of()).size() ? "" : "entry " + e.number() + ": a row too many or too few";
    }

    /** Cells that a spreadsheet would take for a formula are written with a quote before them. */
    private static String plain(String cell) {
        return cell.length() > 1 && cell.startsWith("'") && "=+-@\t\r".indexOf(cell.charAt(1)) >= 0 ? cell.substring(1) : cell;
    }

    /** What each name of a text says, in the order of its lines. */
    private static Map<String, List<String>> said(String text) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (String line : text.split("\n")) {
            int colon = line.indexOf(": ");
            if (colon >= 0) {
                said.computeIfAbsent(line.substring(0, colon), name -> new ArrayList<>()).add(line.substring(colon + 2));
            }
        }
        return said;
    }

    private static List<List<String>> rows(String file) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int k = 0; k < file.length(); k++) {
            char c = file.charAt(k);
            if (quoted && c == '"' && k + 1 < file.length() && file.charAt(k + 1) == '"') {
                cell.append('"');
                k++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\n')) {
                row.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    rows.add(List.copyOf(row));
                    row.clear();
                }
            } else {
                cell.append(c);
            }
        }
        if (quoted || cell.length() > 0 || !row.isEmpty()) {
            throw new IllegalArgumentException("the last row is cut off");
        }
        return rows;
    }
}
