// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.List;
import java.util.Optional;
import org.earleaf.units.Said;
import org.earleaf.units.Sha256;

/**
 * Records in the order in which they were filed, each bound to the one before it.
 *
 * <p>{@code hash = SHA-256(ASCII bytes of the previous hash in lower-case hexadecimal, then the UTF-8 bytes of the
 * canonical text)}, FIPS 180-4; the first entry follows 64 zeros. Promises: any edit, removal, insertion or change of
 * order inside the chain is found. Does not promise: that entries cut off at the end are found, or a chain rewritten
 * whole, unless a head published earlier (on a sheet or an export) is given.
 */
public final class Chain {
    /** What the first entry follows. */
    public static final String START = "0".repeat(64);

    private Chain() {}

    /**
     * One link.
     *
     * @param number 1, 2, 3 ...
     * @param previous hash of the entry before
     * @param text canonical text of the record
     * @param hash over previous and text
     */
    public record Entry(long number, String previous, String text, String hash) {
        public FiledRecord record() {
            return FiledRecord.parse(text);
        }
    }

    /** The first entry that does not hold, and why. */
    public record Break(long number, Said why) {}

    /** The link for a record that follows {@code last}; empty for the first. */
    public static Entry next(Optional<Entry> last, FiledRecord record) {
        String previous = last.map(Entry::hash).orElse(START);
        String text = record.canonical();
        return new Entry(last.map(e -> e.number() + 1).orElse(1L), previous, text, hash(previous, text));
    }

    /** The first broken entry of the chain, or empty when all hold. */
    public static Optional<Break> verify(List<Entry> entries) {
        String previous = START;
        long number = 1;
        for (Entry e : entries) {
            if (e.number() != number) {
                return Optional.of(
                        new Break(number, Said.of("chain.misplaced", "stands", e.number(), "belongs", number)));
            }
            if (!e.previous().equals(previous)) {
                return Optional.of(new Break(number, Said.of("chain.does-not-follow")));
            }
            if (!e.hash().equals(hash(previous, e.text()))) {
                return Optional.of(new Break(number, Said.of("chain.text-changed")));
            }
            previous = e.hash();
            number++;
        }
        return Optional.empty();
    }

    /** As {@link #verify(List)}, and the chain must contain the head that was published earlier. */
    public static Optional<Break> verify(List<Entry> entries, String publishedHead) {
        Optional<Break> broken = verify(entries);
        boolean known = publishedHead.equals(START)
                || entries.stream().anyMatch(e -> e.hash().equalsIgnoreCase(publishedHead.trim()));
        return broken.isPresent() || known
                ? broken
                : Optional.of(new Break(entries.size() + 1L, Said.of("chain.cut", "head", publishedHead)));
    }

    /** Hash of the last entry. */
    public static String head(List<Entry> entries) {
        return entries.isEmpty() ? START : entries.get(entries.size() - 1).hash();
    }

    private static String hash(String previous, String text) {
        return Sha256.hex(previous, text);
    }
}
