// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The check values of the model, CK-0 to CK-38: what each asks, where its value comes from, and the test that holds it.
 * The list is kept true by this test: every number is there, and every test named exists.
 */
class CheckValuesTest {
    private static final String LIST = """
            0   | bushels and pounds an acre          | NIST SP 811; US grain standards           | units.UnitsTest.ten_tonnes_of_dry_grain_are_188_5_bushels_an_acre
            0   | pounds an acre                      | NIST SP 811                               | units.UnitsTest.a_hundred_kilograms_a_hectare_are_89_2_pounds_an_acre
            1   | amounts by area of their column     | geometry                                  | season.SameThingTwiceTest.an_amount_laid_in_one_column_is_larger_there_and_the_same_on_the_field
            2   | growing degree days 86/50           | Purdue, Ohio State extension              | season.PhenologyTest.growing_degree_days_clamp_both_temperatures
            3   | leaf collars                        | R. L. Nielsen, Purdue                     | season.PhenologyTest.leaf_collars_follow_thermal_time
            4   | silk, black layer, leaf number      | eastern Corn Belt regressions, memory     | season.PhenologyTest.maturity_gives_silk_black_layer_and_leaf_number
            5   | late planting                       | Nielsen et al. 2002                       | season.PhenologyTest.late_planting_brings_black_layer_forward
            6   | height                              | Mississippi State extension to V6         | season.PhenologyTest.height_follows_collars
            7   | leaf area                           | own, in Suyker & Verma 2008               | season.PhenologyTest.leaf_area_peaks_at_silk_and_fades
            8   | radiation above the air             | FAO-56 example 8                          | weather.ReferenceEvapotranspirationTest.example_8_radiation_above_the_air_at_20_south_on_3_september
            9   | radiation from sunshine             | FAO-56 example 10                         | weather.ReferenceEvapotranspirationTest.example_10_radiation_from_sunshine_in_rio_de_janeiro_in_may
            10  | net long wave                       | FAO-56 example 11                         | weather.ReferenceEvapotranspirationTest.example_11_net_long_wave_in_rio_de_janeiro_in_may
            11  | reference evapotranspiration, month | FAO-56 example 17                         | weather.ReferenceEvapotranspirationTest.example_17_bangkok_in_april
            12  | reference evapotranspiration, day   | FAO-56 example 18                         | weather.ReferenceEvapotranspirationTest.example_18_brussels_on_6_july
            13  | from temperatures alone             | FAO-56 example 20                         | weather.ReferenceEvapotranspirationTest.example_20_lyon_in_july_from_temperatures_alone
            14  | Hargreaves                          | FAO-56 example 20                         | weather.ReferenceEvapotranspirationTest.example_20_the_same_days_by_hargreaves
            15  | basal coefficient                   | FAO-56 eq. 97 form, memory                | season.EvapotranspirationTest.basal_coefficient_rises_with_leaf_area_and_flattens
            15  | water of a season                   | Suyker & Verma 2008                       | season.EvapotranspirationTest.a_season_uses_what_maize_was_measured_to_use
            15b | drying surface                      | own, in Brun et al. 1986                  | season.EvapotranspirationTest.a_drying_surface_gives_less_and_less
            15b | bare ground under residue           | own, in Klocke et al. 2009                | season.EvapotranspirationTest.bare_ground_under_residue_evaporates_as_computed_by_hand
            16  | water of twelve textures            | Saxton & Rawls 2006                       | soil.SoilWaterTest.the_twelve_textures_hold_what_the_paper_prints
            17  | stemflow                            | own, in Parkin & Codling 1990             | season.RainfallTest.light_rain_runs_to_the_row_and_storms_do_less_so
            17  | rain of the columns adds up         | conservation                              | season.RainfallTest.water_of_the_two_columns_adds_up_to_what_came_in
            18  | runoff                              | NRCS NEH 630 ch. 10                       | season.RainfallTest.runoff_follows_the_curve_number
            19  | daily drainage                      | own construct                             | season.SoilWaterFlowTest.conductivity_sets_the_daily_drainage
            20  | solutes                             | own construct                             | season.SoilWaterFlowTest.nitrate_moves_with_water_and_ammonium_hardly
            21  | root front                          | roots dug near Ames, 2018 and 2019        | season.RootsTest.the_front_follows_the_collars_and_then_warmth
            22  | root length by depth                | Jackson et al. 1996, memory               | season.RootsTest.length_is_shared_by_depth
            23  | water supply and demand             | Dardanelles et al., memory                | season.EvapotranspirationTest.roots_in_reach_of_plenty_meet_demand_and_of_little_do_not
            24  | gallons of nitrogen solutions       | extension fertilizer tables               | farm.NitrogenProductTest.forty_pounds_as_uan_32_are_11_3_gallons_and_a_hundred_as_uan_28_are_33_4
            24  | composition of UAN                  | extension fertilizer tables               | farm.NitrogenProductTest.uan_28_holds_what_its_salts_bring
            25  | washing in                          | Fox et al. 1986; Montana State extension  | season.SurfaceNitrogenTest.rain_moves_the_surface_in
            26  | ammonia from urea                   | own, in Silva et al. 2017                 | season.SurfaceNitrogenTest.urea_left_dry_at_22_degrees_loses_a_third_and_half_of_it_by_day_five
            26  | rain in time                        | own, in Fox et al. 1986                   | season.SurfaceNitrogenTest.rain_in_time_saves_it
            27  | residue's demand                    | microbial C:N and efficiency, memory      | season.ResidueTest.wide_residue_takes_and_narrow_residue_gives
            28  | mineralisation                      | own, in published incubations             | season.SoilNitrogenTest.organic_matter_gives_by_warmth_and_acidity
            28  | hydrolysis in soil                  | own construct                             | season.SoilNitrogenTest.half_of_urea_in_warm_moist_soil_is_hydrolysed_in_two_days
            28b | microbes and water                  | own, in Qiu et al. 2023, Linn & Doran     | season.SoilNitrogenTest.microbes_work_best_near_field_capacity_and_less_when_air_runs_short
            29  | nitrification, closed form          | own construct                             | season.SoilNitrogenTest.nitrate_after_three_and_six_weeks_at_16_degrees_follows_the_closed_form
            29  | nitrification, published table      | Kentucky extension                        | season.SoilNitrogenTest.fertiliser_becomes_nitrate_as_the_kentucky_table_says
            29b | share that soil takes first         | own, in Stevens et al. 2005               | season.SoilNitrogenTest.soil_takes_its_share_before_nitrate_forms
            30  | denitrification                     | Kentucky, Illinois extension              | season.SoilNitrogenTest.saturated_soil_loses_nitrate_by_warmth
            31  | critical nitrogen                   | Plenet & Lemaire 2000                     | season.CropNitrogenTest.critical_nitrogen_follows_the_published_curve
            32  | uptake of a cell                    | own construct                             | season.CropNitrogenTest.a_wet_cell_gives_by_diffusion_and_by_mass_flow
            33  | uptake through the season           | Bender et al. 2013                        | season.CropNitrogenTest.a_crop_with_plenty_takes_its_nitrogen_when_published_crops_took_theirs
            34  | light to growth                     | Lindquist et al. 2005, memory             | season.GrowthTest.light_becomes_growth
            35  | kernels                             | Andrade et al. 2002                       | season.GrowthTest.kernels_follow_growth_around_silking
            36  | yield against nutrition             | Ziadi et al. 2008                         | season.CropNitrogenTest.yield_against_nutrition_at_silk_follows_the_published_line
            36  | grain per nitrogen                  | Setiyono et al. 2010; Bender et al. 2013  | season.GrowthTest.grain_per_nitrogen_lies_in_the_published_envelope
            37  | soil test to pounds an acre         | extension rule of 3.6 to 4 a foot         | soil.SoilTestTest.ten_ppm_in_a_foot_of_soil_at_1_30_are_35_lb_ac
            37  | the rule of 3.6                     | extension rule                            | soil.SoilTestTest.one_ppm_in_a_foot_at_1_33_is_the_extension_factor_of_3_6
            """;

    private record Row(String number, String asks, String source, String test) {
        static Row of(String line) {
            String[] cells = line.split("\\|");
            return new Row(cells[0].trim(), cells[1].trim(), cells[2].trim(), cells[3].trim());
        }

        boolean exists() {
            int dot = test.lastIndexOf('.');
            try {
                Class<?> type = Class.forName("org.earleaf." + test.substring(0, dot));
                return Arrays.stream(type.getDeclaredMethods())
                        .filter(m -> m.getName().equals(test.substring(dot + 1)))
                        .anyMatch(m -> m.getAnnotations().length > 0);
            } catch (ClassNotFoundException e) {
                return false;
            }
        }
    }

    private static List<Row> rows() {
        return LIST.lines().map(Row::of).toList();
    }

    @Test
    void every_check_value_has_a_test_and_a_source() {
        TreeSet<Integer> found = new TreeSet<>();
        for (Row row : rows()) {
            found.add(Integer.parseInt(row.number().replaceAll("\\D", "")));
            assertThat(row.source()).as(row.number()).isNotEmpty();
            assertThat(row.asks()).as(row.number()).isNotEmpty();
            assertThat(row.exists()).as("CK-%s: %s", row.number(), row.test()).isTrue();
        }
        List<Integer> all = new ArrayList<>();
        // 38, the pre-sidedress nitrate test, is held in bench, whose rule it is.
        for (int k = 0; k <= 37; k++) {
            all.add(k);
        }
        assertThat(found).containsExactlyElementsOf(all);
    }
}
