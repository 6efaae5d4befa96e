// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.earleaf.field.Disease;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.protection.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightingsTest {
    private static final LocalDate DAY = LocalDate.parse("2023-07-10");

    @ParameterizedTest
    @CsvSource({
        "0.58, 58, 100, PER_PLANT, 58, 100, NaN",
        "0.4,    ,    , OF_PLANTS, 20,  50, NaN",
        "0.08,   ,    , OF_LEAF,     ,    , 0.08",
        "0.7,    ,    , PER_PLANT, 25,  50, NaN",
        "0,      ,    , PER_PLANT,  0,  50, NaN"
    })
    void what_the_value_counts_says_how_many_plants_show_it(
            double value, Integer counted, Integer of, Scouted.By by, Integer shows, Integer plants, double severity) {
        Optional<Incidence> seen = counted == null ? Optional.empty() : Optional.of(new Incidence(counted, of));
        Scouted scouted = new Scouted(
                Optional.of(Disease.TAR_SPOT), "", OptionalInt.of(-3), seen, by, Scouted.Enemies.NONE, false);
        LesionSighting told =
                Sightings.lesions(reading(Reading.Kind.LESIONS, value, DAY, scouted), ProtectionSettings.USUAL);
        assertThat(told.disease()).contains(Disease.TAR_SPOT);
        assertThat(told.leaf()).hasValue(-3);
        assertThat(told.incidence().orElse(null)).isEqualTo(shows == null ? null : new Incidence(shows, plants));
        assertThat(told.severity()).isEqualTo(Double.valueOf(severity));
    }

    @Test
    void a_count_of_insects_carries_their_enemies_along() {
        Scouted scouted = new Scouted(
                Optional.empty(),
                "corn leaf aphids",
                OptionalInt.empty(),
                Optional.of(new Incidence(40, 100)),
                Scouted.By.PER_PLANT,
                new Scouted.Enemies(.3, 0, 2),
                false);
        AphidSighting seen = Sightings.aphids(reading(Reading.Kind.INSECTS, 80, DAY, scouted));
        assertThat(seen.perPlant()).isEqualTo(80);
        assertThat(seen.mean()).isCloseTo(32, within(1e-12));
        assertThat(seen.enemies()).isCloseTo(0.3 + 0.2, within(1e-12));
    }

    /** Before, a note "neighbor treated 90 of 100 acres" was read as a count of plants. */
    @Test
    void no_note_changes_what_was_seen() {
        Random random = new Random(11);
        String[] words = {
            "neighbor treated 90 of 100 acres",
            "tar spot",
            "58 of 100 plants",
            "ear leaf -3",
            "8 % of the ear leaf",
            "aphids above the threshold",
            "lady beetles 4",
            "severity",
            "third leaf below",
            "% of plants",
            "99 out of 99"
        };
        Scouted plain = scouted(Disease.GRAY_LEAF_SPOT, 12);
        LesionSighting before =
                Sightings.lesions(reading(Reading.Kind.LESIONS, .12, DAY, plain), ProtectionSettings.USUAL);
        for (int k = 0; k < 500; k++) {
            StringBuilder note = new StringBuilder();
            for (int n = random.nextInt(5); n >= 0; n--) {
                note.append(words[random.nextInt(words.length)]).append(random.nextBoolean() ? ", " : " ");
            }
            Reading noted = new Reading(
                            "r",
                            new FieldPart("Home", ""),
                            DAY,
                            Reading.Kind.LESIONS,
                            .12,
                            "",
                            Reading.Sampled.NO_SOIL,
                            note.toString(),
                            Scouted.NOTHING)
                    .with(plain);
            assertThat(Sightings.lesions(noted, ProtectionSettings.USUAL)).isEqualTo(before);
            Reading insects = new Reading(
                            "r",
                            new FieldPart("Home", ""),
                            DAY,
                            Reading.Kind.INSECTS,
                            500,
                            "",
                            Reading.Sampled.NO_SOIL,
                            note.toString(),
                            Scouted.NOTHING)
                    .with(Scouted.NOTHING);
            assertThat(Sightings.aphids(List.of(insects), Cases.zone(), DAY, ProtectionSettings.USUAL))
                    .isEmpty();
            assertThat(Sightings.otherInsect(List.of(insects), Cases.zone(), DAY, ProtectionSettings.USUAL))
                    .isEmpty();
        }
    }

    @Test
    void the_latest_of_each_disease_counts_until_it_is_too_old() {
        List<Reading> readings = List.of(
                reading(Reading.Kind.LESIONS, 0, DAY.minusDays(7), scouted(Disease.GRAY_LEAF_SPOT, 5)),
                reading(Reading.Kind.LESIONS, 0, DAY, scouted(Disease.GRAY_LEAF_SPOT, 30)),
                reading(Reading.Kind.LESIONS, 0, DAY.minusDays(3), scouted(Disease.TAR_SPOT, 1)),
                reading(Reading.Kind.LESIONS, 0, DAY.minusDays(40), scouted(Disease.SOUTHERN_RUST, 9)),
                reading(Reading.Kind.LESIONS, 0, DAY.plusDays(1), scouted(Disease.COMMON_RUST, 9)));
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
        List<Reading> readings = List.of(reading(Reading.Kind.INSECTS, 3, DAY, insect("rootworm beetles", false)));
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

    @Test
    void another_insect_above_its_threshold_is_told_by_its_name() {
        List<Reading> readings = List.of(
                reading(Reading.Kind.INSECTS, 3, DAY, insect("rootworm beetles", true)),
                reading(Reading.Kind.INSECTS, 90, DAY, insect("aphids", true)));
        assertThat(Sightings.otherInsect(readings, Cases.zone(), DAY, ProtectionSettings.USUAL))
                .contains("rootworm beetles");
    }

    private static Scouted insect(String name, boolean above) {
        return new Scouted(
                Optional.empty(),
                name,
                OptionalInt.empty(),
                Optional.empty(),
                Scouted.By.PER_PLANT,
                Scouted.Enemies.NONE,
                above);
    }

    private static Scouted scouted(Disease disease, int of100) {
        return new Scouted(
                Optional.of(disease),
                "",
                OptionalInt.empty(),
                Optional.of(new Incidence(of100, 100)),
                Scouted.By.PER_PLANT,
                Scouted.Enemies.NONE,
                false);
    }

    private static Reading reading(Reading.Kind kind, double value, LocalDate date, Scouted scouted) {
        return new Reading(
                        "r1",
                        new FieldPart("Home", ""),
                        date,
                        kind,
                        value,
                        String.valueOf(value),
                        Reading.Sampled.NO_SOIL,
                        "",
                        Scouted.NOTHING)
                .with(scouted);
    }
}
