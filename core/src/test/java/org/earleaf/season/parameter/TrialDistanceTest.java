// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Drainage;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Zone;
import org.earleaf.weather.Site;
import org.junit.jupiter.api.Test;

/** How much wider the doubt is far from the trials (own construct). */
class TrialDistanceTest {
    private static final Site IOWA = new Site(42, -93.7, 300);

    private static Zone on(double sand, double clay, double om) {
        return FieldParametersTest.zone(
                2026, PreviousCrop.CORN, Drainage.TILED, FieldParametersTest.soil(sand, clay, om));
    }

    @Test
    void a_loam_in_iowa_is_like_the_trials() {
        assertThat(TrialDistance.widening(on(30, 20, 4), IOWA)).isEqualTo(1);
        assertThat(TrialDistance.isFar(on(30, 20, 4), IOWA)).isFalse();
    }

    @Test
    void sand_little_organic_matter_and_the_south_widen_the_doubt_up_to_twice() {
        double sand = TrialDistance.widening(on(90, 4, 4), IOWA);
        double poor = TrialDistance.widening(on(90, 4, 1), IOWA);
        assertThat(sand).isEqualTo(1.5);
        assertThat(poor).isCloseTo(1.5 + .25 * 2 / 1.5, within(1e-9));
        assertThat(TrialDistance.widening(on(30, 20, 4), new Site(34, -90, 50))).isEqualTo(1.5);
        assertThat(TrialDistance.widening(on(90, 4, .5), new Site(31, -90, 50))).isEqualTo(2);
        assertThat(TrialDistance.isFar(on(90, 4, 4), IOWA)).isTrue();
    }
}
