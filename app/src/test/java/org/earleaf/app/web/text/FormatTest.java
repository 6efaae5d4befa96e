// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class FormatTest {
    @Test
    void a_minus_is_a_true_minus_and_nought_has_none() {
        assertThat(Format.number(-4.4, 0)).isEqualTo("\u22124");
        assertThat(Format.number(-.2, 0)).isEqualTo("0");
        assertThat(Format.number(1234.5, 1)).isEqualTo("1,234.5");
        assertThat(Format.number(Double.NaN, 1)).isEqualTo("not known");
    }

    @Test
    void forty_pounds_of_nitrogen_are_11_3_gallons_of_uan_32() {
        // 32 % N at 11.06 lb/gal (fertilizer manual) is 3.54 lb N/gal: 40 / 3.54 = 11.3.
        NitrogenProduct uan = NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
        double litresHa = uan.litresHa(Units.kgHa(40));
        assertThat(Format.US.product(litresHa, true) + " " + Format.US.productUnit(true))
                .isEqualTo("11.3 gal/ac");
    }

    @Test
    void each_quantity_has_both_its_units() {
        assertThat(Format.US.nitrogen(Units.kgHa(50))).isEqualTo("50");
        assertThat(Format.METRIC.nitrogen(56)).isEqualTo("56");
        // One acre is 0.40468564224 ha (international yard), so $100/ha is $40/ac.
        assertThat(Format.US.money(100)).isEqualTo("40");
        assertThat(Format.METRIC.money(100)).isEqualTo("100");
        assertThat(Format.US.length(182.88)).isEqualTo("72");
        assertThat(Format.METRIC.length(182.88)).isEqualTo("183");
        assertThat(Format.US.temperature(20)).isEqualTo("68");
        assertThat(Format.US.rain(25.4)).isEqualTo("1.0");
        // 62.77 kg/ha at 15.5 % moisture is one bushel of 56 lb an acre.
        assertThat(Format.US.yield(62.77 * .845 * 180)).isEqualTo("180");
    }

    @Test
    void text_in_markup_is_made_safe() {
        assertThat(new Say().text("<b>\"Mill\" & 'Co'").done().html())
                .isEqualTo("&lt;b&gt;&quot;Mill&quot; &amp; &#39;Co&#39;");
    }
}
