// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SideBySideTest {
    private final ForkJoinPool pool = new ForkJoinPool(2);
    private final SideBySide two = SideBySide.in(pool);

    @AfterEach
    void stop() {
        pool.shutdownNow();
    }

    private static List<Integer> upTo(int count) {
        return IntStream.range(0, count).boxed().toList();
    }

    /** Thousands of sums in pieces of pieces: their order shows in the last bit. */
    private static double nested(SideBySide how) {
        return how
                .each(upTo(20), a -> how.each(upTo(30), b -> Math.sin(1 + a * 31 + b) / 3).stream()
                        .reduce(0.0, Double::sum))
                .stream()
                .reduce(0.0, Double::sum);
    }

    @Test
    void results_come_in_the_order_of_the_pieces_and_are_the_same_to_the_bit() {
        assertThat(two.each(upTo(500), k -> k * k)).isEqualTo(SideBySide.IN_TURN.each(upTo(500), k -> k * k));
        assertThat(nested(two)).isEqualTo(nested(SideBySide.IN_TURN));
    }

    @Test
    void two_pieces_are_under_way_at_once() {
        CyclicBarrier both = new CyclicBarrier(2);
        assertThat(two.each(List.of("a", "b"), piece -> {
                    try {
                        both.await(60, TimeUnit.SECONDS);
                        return piece;
                    } catch (Exception alone) {
                        throw new IllegalStateException("the other piece never came", alone);
                    }
                }))
                .containsExactly("a", "b");
    }

    @Test
    void what_a_piece_throws_is_thrown() {
        for (SideBySide how : List.of(SideBySide.IN_TURN, two)) {
            assertThatThrownBy(() -> how.each(upTo(9), k -> 12 / (k - 4)))
                    .isInstanceOf(ArithmeticException.class)
                    .hasMessageContaining("zero");
        }
    }
}
