// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.Recipes.gal;
import static org.earleaf.load.Recipes.gpa;
import static org.earleaf.load.Recipes.line;

import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseTest {
    private static Dose dose(double rate, String unit, String form) {
        return Dose.parse(rate, unit, MixForm.parse(form, Said.text("")), null, Said.text("recipe.csv, row 2"));
    }

    // Source: unit algebra for a load of 150 gal on 10 ac (15 gal/ac).
    @ParameterizedTest
    @CsvSource({
        "10, fl oz/ac, SC, 100, fl oz",
        "1, pt/ac, SC, 10, pt",
        "1, qt/ac, EC, 10, qt",
        "2, gal/ac, SL, 20, gal",
        "2, gpa, SL, 20, gal",
        "1, L/ha, SC, 4.0468564, L",
        "100, mL/ha, SC, 404.68564, mL",
        "2, oz/ac, WG, 20, oz",
        "1, lb/ac, WG, 10, lb",
        "1, kg/ha, WP, 4.0468564, kg",
        "50, g/ha, WP, 202.34282, g",
        "0.25, % v/v, NIS, 0.375, gal",
        "1, %, COC, 1.5, gal",
        "8.5, lb/100 gal, AMS, 12.75, lb",
        "32, fl oz/100 gal, NIS, 48, fl oz",
        "1, qt/100 gal, MSO, 1.5, qt",
        "1, kg/100 L, AMS, 5.6781177, kg",
        "100, ppm, ANTIFOAM, 0.015, gal",
        "1, Fl Oz / Acre, SC, 10, fl oz"
    })
    void every_unit_of_a_rate_is_understood(double rate, String unit, String form, double amount, String word) {
        Amount got = dose(rate, unit, form).in(gal(150), gpa(15));
        assertThat(got.in(word)).isCloseTo(amount, within(amount * 1e-6));
    }

    // Source: arithmetic: 0.25 % of 15 gal/ac is 0.0375 gal/ac; what is counted by ground is the same at every rate.
    @Test
    void what_is_counted_by_the_volume_follows_the_rate_on_ground() {
        Dose spreader = dose(.25, "% v/v", "NIS");
        assertThat(spreader.onGround(gpa(15))).isCloseTo(gpa(.0375), within(1e-15));
        assertThat(spreader.onGround(gpa(30))).isCloseTo(gpa(.075), within(1e-15));
        assertThat(dose(2, "gal/ac", "SL").onGround(gpa(30))).isCloseTo(gpa(2), within(1e-15));
    }

    // Source: arithmetic by hand for a jar of 500 mL at 15 gal/ac: 10 fl oz/ac is 2.604 mL, 2 lb/ac is 7.988 g.
    @Test
    void a_jar_test_takes_the_same_share() {
        assertThat(dose(10, "fl oz/ac", "SC").in(5e-4, gpa(15)).in("ml")).isCloseTo(2.604, within(0.0005));
        assertThat(dose(2, "lb/ac", "WG").in(5e-4, gpa(15)).in("g")).isCloseTo(7.988, within(0.0005));
    }

    // Source: extension density tables: 3.539 lb N/gal of 32 % UAN, 46 % nitrogen in urea.
    @Test
    void nitrogen_is_turned_into_product() {
        Dose uan = line("UAN 32", 40, "lb N/ac", "SL").dose();
        assertThat(uan.in(gal(150), gpa(15)).in("gal")).isCloseTo(113.02, within(0.02));
        NitrogenProduct urea = NitrogenProduct.findBuiltIn("urea").orElseThrow();
        Dose dry = Dose.parse(46, "lb N/ac", MixForm.parse("SG", Said.text("")), urea, Said.text(""));
        assertThat(dry.in(gal(150), gpa(15)).in("lb")).isCloseTo(1000, within(1e-6));
        Dose weighed = line("UAN 32", 110.6, "lb/ac", "SL").dose();
        assertThat(weighed.in(gal(150), gpa(15)).in("gal")).isCloseTo(100, within(1e-6));
    }

    @Test
    void ounces_that_may_be_weight_or_volume_are_refused() {
        assertThatThrownBy(() -> dose(2, "oz/ac", "SC"))
                .hasMessageContaining("found.ounces-of-liquid")
                .hasMessageContaining("row 2");
        assertThatThrownBy(() -> dose(2, "fl oz/ac", "WG")).hasMessageContaining("dose.volume-of-dry");
        assertThatThrownBy(() -> dose(2, "lb/ac", "EC")).hasMessageContaining("found.weight-of-liquid");
    }

    @Test
    void what_is_no_rate_is_refused() {
        assertThatThrownBy(() -> dose(2, "stone/ac", "WG")).hasMessageContaining("stone/ac");
        assertThatThrownBy(() -> dose(2, "gal", "SL")).hasMessageContaining("dose.unit-unknown");
        assertThatThrownBy(() -> dose(2, "gal/mile", "SL")).hasMessageContaining("gal/mile");
        assertThatThrownBy(() -> dose(0, "gal/ac", "SL")).hasMessageContaining("dose.rate-missing");
        assertThatThrownBy(() -> dose(-1, "gal/ac", "SL")).hasMessageContaining("dose.rate-missing");
        assertThatThrownBy(() -> dose(Double.NaN, "gal/ac", "SL")).hasMessageContaining("dose.rate-missing");
        assertThatThrownBy(() -> dose(101, "% v/v", "NIS")).hasMessageContaining("dose.percent");
        assertThatThrownBy(() -> dose(40, "lb N/ac", "SL")).hasMessageContaining("dose.nitrogen-unknown");
        assertThatThrownBy(() -> line("anhydrous ammonia", 40, "lb N/ac", "SL")).hasMessageContaining("dose.ammonia");
    }
}
