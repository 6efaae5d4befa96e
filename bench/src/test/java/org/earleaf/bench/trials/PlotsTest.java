// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PlotsTest {
    private List<SiteYear> all;
    private Path folder;

    @BeforeEach
    void read() {
        Optional<Path> found = Rows.findFolder();
        assumeTrue(found.isPresent(), "skipped: no folder of measured corn beside the project");
        folder = found.orElseThrow();
        all = SiteYear.readAll(folder);
    }

    private SiteYear after(PreviousCrop crop) {
        return all.stream().filter(at -> at.after() == crop).findFirst().orElseThrow();
    }

    private static List<PastYear> past(SiteYear at, double rate_kgHa) {
        return at.farmKeeping(at.farm().weather(), rate_kgHa).past(at.zone());
    }

    @Test
    void a_plot_was_given_its_rate_on_five_crops_of_corn_before() {
        SiteYear at = after(PreviousCrop.CORN);
        assertThat(past(at, 80)).hasSize(5).allMatch(year -> year.nitrogen_kgHa() == 80);
        assertThat(past(at, 80).get(0).year()).isEqualTo(at.year() - 1);
    }

    @Test
    void corn_before_soybean_grew_every_other_year() {
        SiteYear at = after(PreviousCrop.SOYBEAN);
        assertThat(past(at, 0))
                .extracting(PastYear::year)
                .containsExactly(at.year() - 2, at.year() - 4, at.year() - 6, at.year() - 8, at.year() - 10);
        assertThat(past(at, 0)).allMatch(year -> year.crop() == PreviousCrop.CORN);
    }

    @Test
    void the_advice_is_told_nothing_of_the_plots_past() {
        SiteYear at = after(PreviousCrop.CORN);
        assertThat(at.farmKnowing(at.farm().weather(), 45).past(at.zone())).isEmpty();
    }

    /** Side by side or alone, a plot comes to the same: members never touch one another. */
    @Test
    void plots_side_by_side_yield_as_each_alone_and_more_with_nitrogen() {
        SiteYear at = after(PreviousCrop.CORN);
        double[] both = Plots.of(at, 0, 120).grain_kgHa();
        assertThat(Plots.of(at, 0).grain_kgHa()[0]).isEqualTo(both[0]);
        assertThat(Plots.of(at, 120).grain_kgHa()[0]).isEqualTo(both[1]);
        assertThat(both[1]).isGreaterThan(both[0]);
    }

    /** 4 August 2013 after soybean: 130.188 g a plant, 1.055 % nitrogen, 8 plants/m2, by the file's row of the plant. */
    @Test
    void shoots_are_whole_plants_of_the_rotation_that_is_run() {
        List<Marsden.Pair> pairs = Marsden.read(folder).pairs(plots -> plots);
        Marsden.Pair august = pairs.stream()
                .filter(p -> p.seen().trait() == Trait.SHOOT_NITROGEN)
                .filter(p -> p.seen().date().equals(LocalDate.of(2013, 8, 4)))
                .findFirst()
                .orElseThrow();
        assertThat(august.seen().value()).isCloseTo(130.188 * 80 * .01055, within(1e-9));
        assertThat(august.modelled()).isGreaterThan(0);
    }
}
