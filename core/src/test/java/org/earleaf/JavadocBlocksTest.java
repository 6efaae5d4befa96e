// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class JavadocBlocksTest {
    private static final String SOURCE = """
            package org.earleaf.soil;

            /**
             * Water that drains:  d = k · (w - fc)
             *
             * Source common practice, no source.
             * Check  DrainTest: two layers,
             *        and LayerTest.
             * Range  0 to 1.
             */
            @Deprecated
            public final class Drain {
                /** A Source in the middle of a sentence is none. */
                public static final double K = 0.5;

                /**
                 * Leaves half.
                 * <pre>
                 * Source own construct
                 * </pre>
                 */
                @SuppressWarnings("unused")
                static double half(double x) { return x / 2; }
            }
            """;

    @Test
    void each_block_carries_the_name_of_what_it_stands_above() {
        assertThat(JavadocBlocks.of("Drain", SOURCE))
                .extracting(JavadocBlocks.Block::title)
                .containsExactly("Drain", "Drain.K", "Drain.half");
    }

    @Test
    void a_keyword_counts_only_at_the_start_of_a_line_with_a_capital() {
        List<JavadocBlocks.Block> blocks = JavadocBlocks.of("Drain", SOURCE);
        assertThat(blocks.get(0).has("Source")).isTrue();
        assertThat(blocks.get(0).has("Check")).isTrue();
        assertThat(blocks.get(2).has("Source")).isTrue();
        assertThat(blocks.get(2).has("Check")).isFalse();
    }

    @Test
    void the_check_line_and_its_continuation_name_tests_and_the_next_line_does_not() {
        assertThat(JavadocBlocks.of("Drain", SOURCE).get(0).testsNamed()).containsExactly("DrainTest", "LayerTest");
    }

    @Test
    void lines_lose_their_stars_and_nothing_else() {
        assertThat(JavadocBlocks.of("Drain", SOURCE).get(0).lines())
                .containsExactly(
                        "Water that drains:  d = k · (w - fc)",
                        "",
                        "Source common practice, no source.",
                        "Check  DrainTest: two layers,",
                        "       and LayerTest.",
                        "Range  0 to 1.");
    }
}
