// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.season.parameter.Parameter;
import org.junit.jupiter.api.Test;

/** What readings see of a known state; ppm by kg/ha = ppm x BD x depth in cm x 0.1 (extension soil-test guides). */
class ObservingTest {
    private static Reading reading(Reading.Kind kind, double top, double bottom, Reading.Position position) {
        return new Reading(
                "r",
                new FieldPart("F", ""),
                LocalDate.of(2025, 6, 1),
                kind,
                0,
                "",
                new Reading.Sampled(top, bottom, position),
                "",
                Scouted.NOTHING);
    }

    @Test
    void a_nitrate_test_of_the_start_gives_back_the_start() {
        SeasonRun run = SyntheticSeason.zone().start(SyntheticSeason.weather());
        double expected = 0;
        double weight = 0;
        double[] ppm = {6, 5, 4};
        double share = Parameter.START_NITRATE.usual();
        for (int i = 0; i < 3; i++) {
            expected += share * ppm[i] * run.site().ppm[i];
            weight += run.site().ppm[i];
        }
        Reading foot = reading(Reading.Kind.NITRATE, 0, 304.8, Reading.Position.RANDOM);
        assertThat(Observing.of(run, 0, foot)).isCloseTo(expected / weight, within(1e-9));
        Reading second = reading(Reading.Kind.NITRATE, 304.8, 609.6, Reading.Position.RANDOM);
        assertThat(Observing.of(run, 0, second)).isCloseTo(3 * share, within(1e-9));
        Reading moist = reading(Reading.Kind.MOISTURE, 0, 50.8, Reading.Position.RANDOM);
        assertThat(Observing.of(run, 0, moist)).isCloseTo(.3421, within(.001));
    }

    @Test
    void a_band_is_seen_at_its_distance_from_the_row_and_in_part_by_random_cores() {
        SeasonRun run = SyntheticSeason.zone().start(SyntheticSeason.weather());
        run.apply(0, new NitrogenPass(90, 0, 0, 1, Placement.MID_INJECT, org.earleaf.field.Inhibitor.NONE));
        double row = Observing.of(run, 0, reading(Reading.Kind.NITRATE, 0, 304.8, Reading.Position.ROW));
        double middle = Observing.of(run, 0, reading(Reading.Kind.NITRATE, 0, 304.8, Reading.Position.MIDDLE));
        double random = Observing.of(run, 0, reading(Reading.Kind.NITRATE, 0, 304.8, Reading.Position.RANDOM));
        assertThat(middle).isGreaterThan(row + 20);
        assertThat(random).isCloseTo(row / 3 + middle * 2 / 3, within(1e-9));
    }

    @Test
    void stage_height_and_cover_are_read_off_the_crop() {
        SeasonRun run = SyntheticSeason.zone().until(179, SyntheticSeason.weather(), SyntheticSeason.pre(180));
        Reading stage = reading(Reading.Kind.STAGE, Double.NaN, Double.NaN, Reading.Position.RANDOM);
        assertThat(Observing.of(run, 0, stage)).isCloseTo(run.collars(0), within(1e-12));
        Reading cover = reading(Reading.Kind.COVER, Double.NaN, Double.NaN, Reading.Position.RANDOM);
        assertThat(Observing.of(run, 0, cover)).isCloseTo(1 - Math.exp(-.55 * run.state().lai[0]), within(1e-12));
        SeasonRun ripe = SyntheticSeason.zone().run(SyntheticSeason.weather());
        assertThat(Observing.of(ripe, 0, stage)).isEqualTo(36);
        Reading lesions = reading(Reading.Kind.LESIONS, Double.NaN, Double.NaN, Reading.Position.RANDOM);
        assertThat(Observing.of(run, 0, lesions)).isNaN();
    }
}
