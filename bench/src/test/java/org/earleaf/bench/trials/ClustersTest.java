// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClustersTest {
    private static final double[] VALUE = {1, 1, 3, 3, 5, 5, 7, 7};

    @Test
    void cases_of_a_cluster_are_drawn_together_so_that_they_count_once() {
        Figure together = new Clusters(List.of("a", "a", "b", "b", "c", "c", "d", "d")).mean(VALUE);
        Figure apart = new Clusters(List.of("a", "b", "c", "d", "e", "f", "g", "h")).mean(VALUE);
        assertThat(together.value()).isEqualTo(4);
        assertThat(apart.value()).isEqualTo(4);
        assertThat(together.high() - together.low()).isGreaterThan(1.2 * (apart.high() - apart.low()));
    }

    @Test
    void one_cluster_alone_has_no_interval_to_tell() {
        Figure figure = new Clusters(List.of("a", "a", "a", "a", "a", "a", "a", "a")).mean(VALUE);
        assertThat(figure.low()).isEqualTo(figure.high()).isEqualTo(4);
    }

    @Test
    void a_straight_line_correlates_however_it_is_drawn() {
        double[] down = {-1, -1, -3, -3, -5, -5, -7, -7};
        Figure figure = new Clusters(List.of("a", "b", "c", "d", "e", "f", "g", "h")).correlation(VALUE, down);
        assertThat(figure.value()).isCloseTo(-1, within(1e-12));
        assertThat(figure.high()).isCloseTo(-1, within(1e-12));
    }
}
