// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Invented labels. */
class SprayLabelTest {
    private static final SprayLabel FUNGICIDE = new SprayLabel(
            LabelLimit.of(3), LabelLimit.of(10), LabelLimit.noneStated(), LabelLimit.of(2), Optional.of(false));
    private static final SprayLabel INSECTICIDE = new SprayLabel(
            LabelLimit.noneStated(), LabelLimit.of(15), LabelLimit.of(32), LabelLimit.of(1), Optional.of(true));

    @Test
    void of_a_mix_the_strictest_of_each_holds() {
        SprayLabel mix = SprayLabel.ofMix(List.of(FUNGICIDE, INSECTICIDE));
        assertThat(mix.windMin_ms()).isEqualTo(LabelLimit.of(3));
        assertThat(mix.windMax_ms()).isEqualTo(LabelLimit.of(10));
        assertThat(mix.airMax_C()).isEqualTo(LabelLimit.of(32));
        assertThat(mix.rainfast_h()).isEqualTo(LabelLimit.of(2));
        assertThat(mix.inversionBan()).contains(true);
        assertThat(SprayLabel.ofMix(List.of(INSECTICIDE, FUNGICIDE))).isEqualTo(mix);
    }

    @Test
    void one_label_not_entered_leaves_the_mix_without_an_entry() {
        SprayLabel mix = SprayLabel.ofMix(List.of(FUNGICIDE, SprayLabel.NOT_ENTERED));
        assertThat(mix.missing()).hasSize(5);
        assertThat(FUNGICIDE.missing()).isEmpty();
    }

    @Test
    void no_limit_stated_is_not_the_same_as_not_entered() {
        assertThat(LabelLimit.noneStated().isEntered()).isTrue();
        assertThat(LabelLimit.notEntered().isEntered()).isFalse();
        assertThat(LabelLimit.noneStated().or(7)).isEqualTo(7);
    }
}
