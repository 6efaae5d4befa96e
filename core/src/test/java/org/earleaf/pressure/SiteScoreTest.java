// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.earleaf.field.PreviousCrop;
import org.earleaf.protection.Cases;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;

/** The points are an assumption; what is held here is that each sign counts once and in the right direction. */
class SiteScoreTest {
    @Test
    void the_safest_field_has_no_point_and_the_worst_has_twelve() {
        SiteFacts safe = Cases.site(8, PreviousCrop.SOYBEAN, Optional.of(WeatherRisk.LOW));
        assertThat(SiteScore.of(safe, false).points()).isZero();
        SiteFacts worst = Cases.facts(
                2, PreviousCrop.CORN, 0.5, true, true, true, 220 * Cases.BU, Optional.of(WeatherRisk.HIGH), false);
        assertThat(SiteScore.of(worst, true).points()).isEqualTo(12);
        assertThat(SiteScore.of(worst, true).level()).isEqualTo(SiteScore.Level.HIGH);
    }

    @Test
    void levels_part_after_two_and_after_five_points() {
        assertThat(new SiteScore(2).level()).isEqualTo(SiteScore.Level.LOW);
        assertThat(new SiteScore(3).level()).isEqualTo(SiteScore.Level.MODERATE);
        assertThat(new SiteScore(5).level()).isEqualTo(SiteScore.Level.MODERATE);
        assertThat(new SiteScore(6).level()).isEqualTo(SiteScore.Level.HIGH);
    }

    @Test
    void what_is_not_known_adds_no_point() {
        SiteFacts unknown = Cases.facts(
                Double.NaN, PreviousCrop.OTHER, Double.NaN, false, false, false, Double.NaN, Optional.empty(), false);
        assertThat(SiteScore.of(unknown, false).points()).isEqualTo(1);
    }

    @Test
    void a_rating_off_the_scale_is_refused() {
        assertThatThrownBy(() -> HybridClass.ofRating(10))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("rating.out-of-range");
    }
}
