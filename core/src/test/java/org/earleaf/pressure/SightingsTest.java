// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.protection.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightingsTest {
    private static final LocalDate DAY = LocalDate.parse("2023-07-10");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "58 | 58 of 100 plants, gray leaf spot, ear leaf -3 | GRAY_LEAF_SPOT | -3 | 58 | 100 | NaN",
                "58 | GLS, EL-3, 58 of 100 | GRAY_LEAF_SPOT | -3 | 58 | 100 | NaN",
                "0 | northern corn leaf blight 12 out of 50 third leaf below the ear | NORTHERN_LEAF_BLIGHT | -3 | 12 | 50 | NaN",
                "40 | tar spot, % of plants | TAR_SPOT |  | 20 | 50 | NaN",
                "8 | southern rust, 8 % of the ear leaf | SOUTHERN_RUST | 0 |  |  | 0.08",
                "2 | NLB severity, ear leaf +1 | NORTHERN_LEAF_BLIGHT | 1 |  |  | 0.02",
                "0.7 | gray leaf spot | GRAY_LEAF_SPOT |  | 25 | 50 | NaN",
                "0 |  |  |  | 0 | 50 | NaN"
            })
    void a_note_says_which_disease_which_leaf_and_what_was_counted(
            double value, String note, Disease disease, Integer leaf, Integer shows, Integer plants, double severity) {
        LesionSighting seen = Sightings.lesions(
                reading(Reading.Kind.LESIONS, value, note == null ? "" : note, DAY), ProtectionSettings.USUAL);
        assertThat(seen.disease().orElse(null)).isEqualTo(disease);
        assertThat(seen.leaf()).isEqualTo(leaf == null ? OptionalInt.empty() : OptionalInt.of(leaf));
        assertThat(seen.incidence().orElse(null)).isEqualTo(shows == null ? null : new Incidence(shows, plants));
        assertThat(seen.severity()).isEqualTo(Double.valueOf(severity));
    }

    @Test
    void a_count_of_insects_carries_their_enemies_along() {
        Reading r = reading(
                Reading.Kind.INSECTS, 80, "corn leaf aphids, 40 of 100 plants, lady beetles 0.3, mummies 2", DAY);
        AphidSighting seen = Sightings.aphids(r);
        assertThat(seen.perPlant()).isEqualTo(80);
        assertThat(seen.mean()).isCloseTo(32, within(1e-12));
        assertThat(seen.enemies()).isCloseTo(0.3 + 0.2, within(1e-12));
    }

    @Test
    void the_latest_of_each_disease_counts_until_it_is_too_old() {
        List<Reading> readings = List.of(
                reading(Reading.Kind.LESIONS, 0, "gray leaf spot 5 of 100", DAY.minusDays(7)),
                reading(Reading.Kind.LESIONS, 0, "gray leaf spot 30 of 100", DAY),
                reading(Reading.Kind.LESIONS, 0, "tar spot 1 of 100", DAY.minusDays(3)),
                reading(Reading.Kind.LESIONS, 0, "southern rust 9 of 100", DAY.minusDays(40)),
                reading(Reading.Kind.LESIONS, 0, "common rust 9 of 100", DAY.plusDays(1)));
        List<LesionSighting> seen = Sightings.lesions(readings, Cases.zone(), DAY, ProtectionSettings.USUAL);
        assertThat(seen)
                .extracting(
                        s -> s.disease().orElseThrow(),
                        s -> s.incidence().orElseThrow().shows())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Disease.GRAY_LEAF_SPOT, 30),
                        org.assertj.core.groups.Tuple.tuple(Disease.TAR_SPOT, 1));
    }

    @Test
    void insects_that_are_no_aphids_are_left_alone() {
        List<Reading> readings = List.of(reading(Reading.Kind.INSECTS, 3, "rootworm beetles", DAY));
        assertThat(Sightings.aphids(readings, Cases.zone(), DAY, ProtectionSettings.USUAL))
                .isEmpty();
    }

    @Test
    void severity_behind_a_count_of_plants_rises_with_it_and_spans_its_interval() {
        double before = 0;
        for (int shows = 5; shows <= 95; shows += 10) {
            double[] now = Cases.counted(Disease.GRAY_LEAF_SPOT, shows).severities(ProtectionSettings.USUAL);
            assertThat(now[0]).isLessThan(now[1]);
            assertThat(now[1]).isLessThan(now[2]).isGreaterThan(before);
            before = now[1];
        }
        // Half of the plants are free of lesions when the mean count is ln 2.
        assertThat(Cases.counted(Disease.GRAY_LEAF_SPOT, 50).severities(ProtectionSettings.USUAL)[1])
                .isCloseTo(0.0004 * Math.log(2), within(1e-12));
    }

    @Test
    void none_found_still_leaves_room_for_a_few() {
        double[] now = Cases.counted(Disease.GRAY_LEAF_SPOT, 0).severities(ProtectionSettings.USUAL);
        assertThat(now[1]).isZero();
        assertThat(now[2]).isGreaterThan(0);
    }

    private static Reading reading(Reading.Kind kind, double value, String note, LocalDate date) {
        return new Reading(
                "r1",
                "Home",
                "",
                date,
                kind,
                value,
                String.valueOf(value),
                Double.NaN,
                Double.NaN,
                Reading.Position.RANDOM,
                note);
    }
}
