// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.decide.Outlooks;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.Farm;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.FieldPart;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.outlook.PastYields.Use;
import org.earleaf.outlook.PastYields.Year;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.parameter.FieldLevel;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherGap;
import org.junit.jupiter.api.Test;

/** What the yields of years before make of a field's level, on an invented farm. */
class PastYieldsTest {
    private static final int[] YEARS = {2020, 2021, 2022, 2023};

    private static PastYields of(TestFarm farm) {
        return PastYields.of(farm.farm(), farm.zone());
    }

    private static double modelled_kgHa(int year) {
        return of(new TestFarm().grew(year, 10_000)).years().get(0).modelled_kgHa();
    }

    /** A farm whose years made so many times what the model makes of them. */
    private static TestFarm made(double times) {
        TestFarm farm = new TestFarm();
        for (int year : YEARS) {
            farm.grew(year, times * modelled_kgHa(year));
        }
        return farm;
    }

    private static List<String> codes(PastYields past) {
        return past.said().stream().map(Said::code).toList();
    }

    @Test
    void without_past_yields_nothing_moves_and_nothing_is_told() {
        TestFarm farm = new TestFarm()
                .grew(new PastYear(new FieldPart("Home", ""), 2023, PreviousCrop.SOYBEAN, Double.NaN, 0))
                .grew(new PastYear(new FieldPart("Home", ""), 2022, PreviousCrop.CORN, Double.NaN, 150));
        assertThat(of(farm)).isEqualTo(PastYields.NONE);
        assertThat(of(farm).said()).isEmpty();
    }

    @Test
    void years_as_the_model_has_them_leave_the_level_where_it_was_and_make_it_surer() {
        PastYields past = of(made(1));
        assertThat(past.level().years()).isEqualTo(YEARS.length);
        assertThat(past.level().shift()).isCloseTo(0, within(1e-9));
        assertThat(past.level().weight()).isPositive();
        assertThat(codes(past)).containsExactly("past-yields.as-usual");
    }

    @Test
    void the_better_the_years_the_higher_the_level_and_the_yield_ahead() {
        double level = Double.NEGATIVE_INFINITY;
        double ahead = 0;
        for (double times : new double[] {.8, .9, 1, 1.1, 1.2}) {
            TestFarm farm = made(times);
            double now = of(farm).level().shift();
            double yield = Outlooks.of(farm.farm(), farm.zone(), TestFarm.ON, false)
                    .yield_kgHa()
                    .p50();
            assertThat(now).as("level at %s", times).isGreaterThan(level);
            assertThat(yield).as("yield at %s", times).isGreaterThan(ahead);
            level = now;
            ahead = yield;
        }
        assertThat(codes(of(made(1.2)))).containsExactly("past-yields.above");
        assertThat(codes(of(made(.8)))).containsExactly("past-yields.below");
    }

    /** What is believed lies between what the model says and what was harvested. */
    @Test
    void part_of_what_was_harvested_above_the_model_counts() {
        PastYields past = of(made(1.2));
        double believed = past.years().get(0).followed() * past.level().shift();
        assertThat(believed).isGreaterThan(.02).isLessThan(Math.log(1.2));
    }

    @Test
    void one_year_made_with_the_usual_rows_says_less_than_four() {
        TestFarm one = new TestFarm().grew(2023, 1.2 * modelled_kgHa(2023));
        assertThat(of(one).level().shift())
                .isPositive()
                .isLessThan(of(made(1.2)).level().shift());
    }

    @Test
    void one_absurd_year_is_left_out_and_told() {
        for (double absurd : new double[] {0, 300, 60_000}) {
            PastYields past = of(made(1.1).grew(2019, absurd));
            assertThat(past.level())
                    .as("%s kg/ha", absurd)
                    .isEqualTo(of(made(1.1)).level());
            assertThat(past.years()).filteredOn(y -> y.use() == Use.DOUBTFUL).hasSize(1);
            assertThat(codes(past)).containsExactly("past-yields.above", "past-yields.left-out");
        }
    }

    /** The worst measured years made about half of what is modelled; left out, they would leave only good ones to speak. */
    @Test
    void a_year_as_bad_as_a_real_drought_counts_in_part_and_is_told() {
        PastYields past = of(made(1.1).grew(2019, .5 * modelled_kgHa(2019)));
        Year drought = past.years().get(YEARS.length);
        assertThat(drought.use()).isEqualTo(Use.CAPPED);
        assertThat(drought.log()).isNegative().isGreaterThan(Math.log(.5) / drought.followed());
        assertThat(past.level().years()).isEqualTo(YEARS.length + 1);
        assertThat(past.level().shift()).isLessThan(of(made(1.1)).level().shift());
        assertThat(codes(past)).hasSize(2).last().isEqualTo("past-yields.in-part");
    }

    @Test
    void a_year_without_weather_on_record_is_left_out_and_told() {
        PastYields past = of(made(1.1).grew(1998, 9000));
        assertThat(past.level()).isEqualTo(of(made(1.1)).level());
        assertThat(past.years())
                .filteredOn(y -> y.use() == Use.NO_WEATHER)
                .extracting(y -> y.told().year())
                .containsExactly(1998);
        assertThat(codes(past)).contains("past-yields.left-out");
    }

    @Test
    void a_year_whose_weather_was_filled_in_for_long_does_not_count() {
        TestFarm made = made(1.1);
        Farm farm = made.farm();
        WeatherBook w = farm.weather();
        WeatherGap gap = new WeatherGap(LocalDate.of(2021, 7, 1), LocalDate.of(2021, 8, 10));
        WeatherBook filled =
                new WeatherBook(w.observed(), w.forecast(), w.rainChance(), w.hours(), List.of(gap), w.flags());
        Farm with = new Farm(
                farm.name(),
                farm.site(),
                farm.timeZone(),
                farm.ground(),
                farm.work(),
                farm.shelf(),
                filled,
                farm.rules(),
                farm.flags());
        assertThat(PastYields.of(with, made.zone()).years())
                .filteredOn(y -> y.use() == Use.NO_WEATHER)
                .extracting(y -> y.told().year())
                .containsExactly(2021);
    }

    @Test
    void years_of_an_irrigated_field_count_where_their_water_is_entered() {
        TestFarm farm = new TestFarm()
                .grew(2022, 11_000)
                .grew(2023, 11_000)
                .irrigated(LocalDate.of(2024, 6, 20), 25)
                .irrigated(LocalDate.of(2023, 7, 10), 25);
        assertThat(of(farm).years()).extracting(Year::use).containsExactly(Use.COUNTED, Use.NO_WATER);
    }

    @Test
    void a_zones_own_yield_goes_before_that_of_its_whole_field() {
        TestFarm farm = new TestFarm();
        Zone home = farm.zone();
        Zone west = new Zone(
                ZoneName.of("Home", "west"),
                home.area_ha(),
                home.planting(),
                home.land(),
                home.seedbed(),
                home.disease());
        farm.grew(2023, 11_000)
                .grew(new PastYear(new FieldPart("Home", "west"), 2023, PreviousCrop.CORN, 8_000, Double.NaN));
        assertThat(PastYields.of(farm.farm(), west).years())
                .extracting(y -> y.told().yield_kgHa())
                .containsExactly(8_000.);
        assertThat(of(farm).years()).extracting(y -> y.told().yield_kgHa()).containsExactly(11_000.);
    }

    /** Without nitrogen a field makes less: the same yield then speaks for a better one. */
    @Test
    void nitrogen_of_that_year_is_held_to_it() {
        PastYear starved = new PastYear(new FieldPart("Home", ""), 2023, PreviousCrop.CORN, 9_000, 0);
        PastYields poor = of(new TestFarm().grew(starved));
        PastYields fed = of(new TestFarm().grew(2023, 9_000));
        assertThat(poor.years().get(0).modelled_kgHa())
                .isLessThan(fed.years().get(0).modelled_kgHa());
        assertThat(poor.level().shift()).isGreaterThan(fed.level().shift());
    }

    @Test
    void the_ensemble_is_drawn_around_the_level() {
        TestFarm farm = made(1.2);
        ZoneEnsemble futures = ZoneEnsemble.of(farm.farm(), farm.zone(), TestFarm.ON, false);
        TestFarm plain = new TestFarm();
        ZoneEnsemble usual = ZoneEnsemble.of(plain.farm(), plain.zone(), TestFarm.ON, false);
        assertThat(mean(futures) / mean(usual)).isGreaterThan(1.01);
        assertThat(futures.grew()).isEqualTo(of(farm));
    }

    private static double mean(ZoneEnsemble futures) {
        SeasonRun run = futures.members();
        double sum = 0;
        for (int m = 0; m < run.members(); m++) {
            sum += run.parameters(m).of(FieldLevel.OF);
        }
        return sum / run.members();
    }
}
