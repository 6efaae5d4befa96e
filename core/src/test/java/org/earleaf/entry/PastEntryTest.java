// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PastEntryTest {
    private static final Plots PLOTS = new Plots() {
        @Override
        public List<Plot> of(String field) {
            if (field.equals("Wheat")) {
                LocalDate fall = LocalDate.of(2025, 10, 5);
                return List.of(new Plot("Wheat", "", Optional.of(fall), false, Optional.empty()));
            }
            return field.equalsIgnoreCase("Home")
                    ? List.of(
                            new Plot("Home", "east", Optional.of(LocalDate.of(2026, 5, 1)), true, Optional.empty()),
                            new Plot("Home", "west", Optional.of(LocalDate.of(2026, 5, 2)), true, Optional.empty()))
                    : List.of();
        }

        @Override
        public List<String> fields() {
            return List.of("Home");
        }

        @Override
        public boolean isWhole() {
            return true;
        }
    };

    private static Entered<PastYear> entered(String... parts) {
        return PastEntry.of(Draft.of(parts), PLOTS);
    }

    /** 200 bu/ac is 200 x 56 lb x .845 = 9,464 lb/ac dry, 10,608 kg/ha; 160 lb/ac is 179.3 kg/ha; by hand. */
    @Test
    void a_year_is_read_into_dry_grain_and_nitrogen() {
        PastYear past = entered(
                        "field",
                        "home",
                        "zone",
                        "East",
                        "year",
                        "2021",
                        "crop",
                        "Corn",
                        "yield",
                        "200 bu/ac",
                        "nitrogen",
                        "160 lb N/ac")
                .orThrow(false);
        assertThat(past.part().label()).isEqualTo("Home, east");
        assertThat(past.year()).isEqualTo(2021);
        assertThat(past.crop()).isEqualTo(PreviousCrop.CORN);
        assertThat(past.yield_kgHa()).isCloseTo(10_608, within(1.0));
        assertThat(past.nitrogen_kgHa()).isCloseTo(179.3, within(.05));
    }

    @Test
    void a_yield_by_tons_is_at_the_moisture_of_the_trade_as_well() {
        assertThat(entered("field", "Home", "year", "2021", "yield", "10 t/ha")
                        .orThrow()
                        .yield_kgHa())
                .isCloseTo(8450, within(1e-6));
    }

    @Test
    void a_unit_may_stand_beside_its_number() {
        PastYear past = entered(
                        "field",
                        "Home",
                        "year",
                        "2021",
                        "yield",
                        "10",
                        "yield_unit",
                        "t/ha",
                        "nitrogen",
                        "90 kg N/ha",
                        "nitrogen_unit",
                        "lb N/ac")
                .orThrow();
        assertThat(past.yield_kgHa()).isCloseTo(8450, within(1e-6));
        assertThat(past.nitrogen_kgHa()).isEqualTo(90);
    }

    @Test
    void a_year_may_tell_its_crop_alone() {
        PastYear past =
                entered("field", "Home", "year", "2020", "crop", "soybean").orThrow();
        assertThat(past.crop()).isEqualTo(PreviousCrop.SOYBEAN);
        assertThat(past.hasYield()).isFalse();
        assertThat(past.hasNitrogen()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "Hom, 2021, corn, 200 bu/ac, , field.unknown, field",
        "'', 2021, corn, 200 bu/ac, , field.missing, field",
        "Home, 1949, corn, 200 bu/ac, , past.year, year",
        "Home, 2026, corn, 200 bu/ac, , past.year, year",
        "Home, 21, corn, 200 bu/ac, , past.year, year",
        "Home, '', corn, 200 bu/ac, , past.year, year",
        "Home, 2021, beans, , , word.unknown, crop",
        "Home, 2021, corn, 200, , quantity.unreadable, yield",
        "Home, 2021, corn, 200 bushels, , unit.unknown, yield",
        "Home, 2021, corn, 401 bu/ac, , number.out-of-range, yield",
        "Home, 2021, corn, -1 bu/ac, , number.out-of-range, yield",
        "Home, 2021, corn, '1,234 bu/ac', , number.comma-unclear, yield",
        "Home, 2021, corn, 200 bu/ac, 402 lb N/ac, number.out-of-range, nitrogen",
        "Home, 2021, corn, 200 bu/ac, -1 lb N/ac, number.out-of-range, nitrogen",
        "Home, 2021, '', '', '', past.nothing, yield",
    })
    void what_cannot_be_is_refused_at_its_part(
            String field, String year, String crop, String yield, String nitrogen, String code, String part) {
        List<Problem> problems = entered(
                        "field",
                        field,
                        "year",
                        year,
                        "crop",
                        crop == null ? "" : crop,
                        "yield",
                        given(yield),
                        "nitrogen",
                        given(nitrogen))
                .problems();
        assertThat(problems).extracting(Problem::code).containsExactly(code);
        assertThat(problems.get(0).where()).isEqualTo(part);
    }

    private static String given(String text) {
        return text == null ? "" : text;
    }

    @Test
    void the_ends_of_every_range_are_taken() {
        PastYear past = entered("field", "Home", "year", "1950", "yield", "400 bu/ac", "nitrogen", "450 kg N/ha")
                .orThrow(true);
        assertThat(past.nitrogen_kgHa()).isEqualTo(450);
        assertThat(entered("field", "Home", "year", "2025", "yield", "0 bu/ac")
                        .orThrow(false)
                        .yield_kgHa())
                .isZero();
    }

    @Test
    void what_was_harvested_before_a_fall_planting_is_of_a_past_year() {
        assertThat(entered("field", "Wheat", "year", "2025", "crop", "soybean").problems())
                .isEmpty();
        assertThat(entered("field", "Wheat", "year", "2026", "crop", "soybean").problems())
                .extracting(Problem::code)
                .containsExactly("past.year");
    }

    @Test
    void a_yield_that_is_seldom_made_is_asked_about_before_it_is_kept() {
        Entered<PastYear> much = entered("field", "Home", "year", "2021", "yield", "321 bu/ac");
        assertThat(codes(much)).containsExactly(Entered.LOOK_AGAIN);
        assertThat(much.orThrow(true).hasYield()).isTrue();
        assertThat(codes(entered("field", "Home", "year", "2021", "yield", "320 bu/ac")))
                .isEmpty();
    }

    @Test
    void a_yield_of_another_crop_is_asked_about_and_not_kept_as_corn() {
        Entered<PastYear> beans = entered("field", "Home", "year", "2021", "crop", "soybean", "yield", "60 bu/ac");
        assertThat(codes(beans)).containsExactly(Entered.LOOK_AGAIN);
        assertThat(beans.orThrow(true).hasYield()).isFalse();
    }

    @Test
    void a_year_is_named_by_its_place_and_number_alone() {
        assertThat(PastEntry.named(Draft.of("field", "home", "year", "2021", "yield", "x"), PLOTS)
                        .orThrow()
                        .part()
                        .label())
                .isEqualTo("Home");
    }

    private static List<String> codes(Entered<PastYear> entered) {
        try {
            entered.orThrow(false);
            return List.of();
        } catch (EarleafException refused) {
            return refused.problems().stream().map(Problem::code).toList();
        }
    }
}
