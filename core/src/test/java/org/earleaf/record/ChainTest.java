// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ChainTest {
    /** {@code -Dearleaf.tamperings=10000} tries as many. */
    private static final int TRIES = Integer.getInteger("earleaf.tamperings", 1000);

    private static List<Chain.Entry> chain(int length, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Chain.Entry> entries = new ArrayList<>();
        for (int k = 1; k <= length; k++) {
            Optional<Chain.Entry> last = entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(k - 2));
            entries.add(Chain.next(last, Records.random(random, k)));
        }
        return entries;
    }

    @Test
    void an_untouched_chain_holds() {
        assertThat(Chain.verify(List.of())).isEmpty();
        List<Chain.Entry> entries = chain(200, 1);
        assertThat(Chain.verify(entries)).isEmpty();
        assertThat(Chain.verify(entries, Chain.head(entries))).isEmpty();
        assertThat(Chain.verify(entries, entries.get(70).hash())).isEmpty();
    }

    @Test
    void random_tamperings_are_all_found_at_the_first_entry_touched() {
        List<Chain.Entry> good = chain(40, 2);
        SplittableRandom random = new SplittableRandom(3);
        int found = 0;
        for (int k = 0; k < TRIES; k++) {
            List<Chain.Entry> bad = new ArrayList<>(good);
            int first = tamper(bad, random);
            Optional<Chain.Break> broken = Chain.verify(bad, Chain.head(good));
            assertThat(broken).as("tampering %d", k).isPresent();
            assertThat(broken.get().number()).isEqualTo(first + 1);
            found++;
        }
        System.out.println(TRIES + " tamperings tried, " + (TRIES - found) + " missed");
    }

    /** Changes the list in one of six ways and says the index of the first entry touched. */
    private static int tamper(List<Chain.Entry> entries, SplittableRandom random) {
        int at = random.nextInt(entries.size());
        Chain.Entry e = entries.get(at);
        switch (random.nextInt(6)) {
            case 0 -> entries.set(at, new Chain.Entry(e.number(), e.previous(), flip(e.text(), random), e.hash()));
            case 1 -> entries.set(at, new Chain.Entry(e.number(), e.previous(), e.text(), flip(e.hash(), random)));
            case 2 -> entries.set(at, new Chain.Entry(e.number(), flip(e.previous(), random), e.text(), e.hash()));
            case 3 -> {
                entries.remove(at);
                // Whoever removes an entry at the end is found by the published head alone.
                return at;
            }
            case 4 -> {
                int other = (at + 1 + random.nextInt(entries.size() - 1)) % entries.size();
                Collections.swap(entries, at, other);
                return Math.min(at, other);
            }
            default ->
                entries.add(
                        at,
                        Chain.next(
                                at == 0 ? Optional.empty() : Optional.of(entries.get(at - 1)),
                                Records.random(random, 900)));
        }
        // An inserted entry holds by itself; the one after it is the first that does not.
        return entries.size() > 40 ? at + 1 : at;
    }

    private static String flip(String text, SplittableRandom random) {
        int at = random.nextInt(text.length());
        char other = text.charAt(at) == 'x' ? 'y' : 'x';
        return text.substring(0, at) + other + text.substring(at + 1);
    }

    @Test
    void entries_cut_off_the_end_are_found_by_a_head_published_before() {
        List<Chain.Entry> entries = chain(10, 4);
        List<Chain.Entry> cut = entries.subList(0, 8);
        assertThat(Chain.verify(cut)).isEmpty();
        assertThat(Chain.verify(cut, Chain.head(entries)).orElseThrow().why().code())
                .isEqualTo("chain.cut");
    }

    @Test
    void the_hash_is_that_of_an_independent_tool() {
        // Source: the same bytes typed into a file (64 zeros, then the lines) and GNU coreutils sha256sum 9.1.
        Chain.Entry first = Chain.next(Optional.empty(), Records.fertiliser());
        assertThat(first.hash()).isEqualTo("ca38b4b804fa03f800967a06bb8cb7ca5164269b3bad8dddc376cac66277f16f");
    }

    @Test
    void the_text_gives_back_the_record_it_was_written_from() {
        SplittableRandom random = new SplittableRandom(5);
        for (int k = 0; k < TRIES; k++) {
            FiledRecord record = Records.random(random, k);
            assertThat(FiledRecord.parse(record.canonical())).isEqualTo(record);
        }
    }
}
