// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is read of the measured corn, against figures that its source gives of it. */
class MeasuredCornTest {
    private List<SiteYear> all;

    @BeforeEach
    void read() {
        Optional<Path> folder = Rows.findFolder();
        assumeTrue(folder.isPresent(), "skipped: no folder of measured corn beside the project");
        all = SiteYear.readAll(folder.orElseThrow());
    }

    /** Ames 2000 after corn: 4070 + 47.544 N - 0.13163 N2, flat at 8363 from 181 kg/ha on (vanichols/ghproj_ccgap). */
    @Test
    void a_response_is_the_quadratic_with_its_plateau() {
        Measured ames = all.get(0).measured();
        assertThat(ames.at(0)).isEqualTo(4070);
        assertThat(ames.at(100)).isCloseTo(4070 + 4754.4 - 1316.3, within(1e-9));
        assertThat(ames.at(250)).isEqualTo(8363);
        assertThat(ames.at(180)).isCloseTo(8363, within(10.0));
    }

    /** 2 c N + b = price ratio: (47.544 - 3.4)/(2 x 0.13163) = 168 kg/ha at $4.50 a bushel and $0.60 a pound. */
    @Test
    void the_rate_that_pays_best_is_where_the_slope_meets_the_prices() {
        double ratio = Money.NITROGEN_USD_KG / Money.GRAIN_USD_KG;
        assertThat(Money.best_kgHa(all.get(0).measured()::at))
                .isEqualTo((int) Math.round((47.544 - ratio) / (2 * 0.13163)));
    }

    /** A year in which nitrogen gained nothing asks for none. */
    @Test
    void a_flat_year_asks_for_no_nitrogen() {
        SiteYear flat = all.stream()
                .filter(at -> at.farm().name().equals("mcna") && at.year() == 2012 && !at.isAfterCorn())
                .findFirst()
                .orElseThrow();
        assertThat(Money.best_kgHa(flat.measured()::at)).isZero();
        assertThat(flat.measured().at(280)).isEqualTo(4123);
    }

    @Test
    void there_are_103_site_years_of_four_farms_47_of_them_after_corn() {
        assertThat(all).hasSize(103);
        assertThat(all.stream().filter(SiteYear::isAfterCorn)).hasSize(47);
        assertThat(all.stream().map(at -> at.farm().name()).distinct()).hasSize(4);
    }

    /** The record that the advice may see ends on its day, and holds nothing of the year after it. */
    @Test
    void what_is_known_on_a_day_ends_there_and_is_the_other_years_before() {
        SiteYear at = all.get(0);
        LocalDate on = LocalDate.of(at.year(), 6, 10);
        WeatherSeries known = at.farm().known(on);
        assertThat(known.last()).isEqualTo(on);
        assertThat(known.at(on)).isEqualTo(at.farm().weather().at(on));
        int years = at.farm().weather().last().getYear()
                - at.farm().weather().first().getYear();
        assertThat(known.first()).isEqualTo(LocalDate.of(at.year() - years, 1, 1));
    }
}
