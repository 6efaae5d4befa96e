// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TraitTest {
    @Test
    void a_share_may_be_a_fifth_off_to_both_sides() {
        assertThat(Trait.LEAF_AREA.isWithin(Trait.LEAF_AREA.error(5, 5.9))).isTrue();
        assertThat(Trait.LEAF_AREA.isWithin(Trait.LEAF_AREA.error(5, 3.9))).isFalse();
    }

    @Test
    void roots_may_be_so_many_centimetres_off_however_deep() {
        assertThat(Trait.ROOTS.isWithin(Trait.ROOTS.error(10, 29))).isTrue();
        assertThat(Trait.ROOTS.isWithin(Trait.ROOTS.error(100, 121))).isFalse();
    }

    @Test
    void a_factor_counts_alike_upwards_and_downwards() {
        assertThat(Trait.NITRATE.isWithin(Trait.NITRATE.error(3, 2.1))).isTrue();
        assertThat(Trait.NITRATE.isWithin(Trait.NITRATE.error(3, 1.9))).isFalse();
        assertThat(Trait.NITRATE.isWithin(Trait.NITRATE.error(3, 4.6))).isFalse();
    }
}
