// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class NozzleSizeTest {
    // Source: square-root law from the rating at 40 psi to the metric pressures of ISO 10625.
    @Test
    void sizes_flow_at_metric_pressures_as_computed() {
        assertThat(NozzleSize.parse("04", Said.text("size")).flowAt3Bar_lMin()).isCloseTo(1.579, within(0.002));
        double at2Bar =
                FlowMath.flowAt_m3s(NozzleSize.parse("03", Said.text("size")).rated_m3s(), 2e5, 1) * 60e3;
        assertThat(at2Bar).isCloseTo(0.967, within(0.001));
    }

    // Source: ISO 10625 nominal flows at 3 bar; the two families of rounding differ by about 1.3 %.
    @Test
    void the_number_of_a_size_is_its_flow_and_agrees_with_the_nominal_metric_flow() {
        for (BundledTable.Row row : BundledTable.rows("iso-10625-sizes.csv")) {
            NozzleSize size = NozzleSize.parse(row.text("size"), Said.text("size"));
            assertThat(size.isListed()).isTrue();
            assertThat(size.flowAt3Bar_lMin())
                    .as(size.number())
                    .isCloseTo(row.number("nominal_l_min_3bar"), Percentage.withPercentage(3));
        }
        assertThat(NozzleSize.listAll()).hasSize(16);
    }

    @Test
    void a_size_outside_the_table_is_read_from_its_number() {
        assertThat(NozzleSize.parse("07", Said.text("size")).rated_gpm()).isCloseTo(0.7, within(1e-9));
        assertThat(NozzleSize.parse("12", Said.text("size")).rated_gpm()).isCloseTo(1.2, within(1e-9));
        assertThat(NozzleSize.parse("045", Said.text("size")).rated_gpm()).isCloseTo(0.45, within(1e-9));
        assertThat(NozzleSize.parse("0067", Said.text("size")).rated_gpm()).isCloseTo(0.067, within(1e-9));
        assertThat(NozzleSize.parse("5", Said.text("size"))).isEqualTo(NozzleSize.parse("05", Said.text("size")));
        assertThat(NozzleSize.parse("07", Said.text("size")).isListed()).isFalse();
    }

    @Test
    void what_is_no_size_is_refused_with_an_example() {
        for (String wrong : new String[] {"", "red", "0.5", "00", "-4"}) {
            assertThatThrownBy(() -> NozzleSize.parse(wrong, Said.text("--size")))
                    .as(wrong)
                    .hasMessageContaining("--size")
                    .hasMessageContaining("nozzle.size-unreadable");
        }
    }

    @Test
    void colours_that_were_not_seen_in_print_stay_empty() {
        assertThat(NozzleSize.parse("05", Said.text("size")).said())
                .isEqualTo(Said.of("nozzle.size-colour", "number", "05", "colour", NozzleSize.Colour.BROWN));
        assertThat(NozzleSize.parse("10", Said.text("size")).said()).isEqualTo(Said.of("nozzle.size", "number", "10"));
        assertThat(NozzleSize.parse("05", Said.text("size")).findScreenMesh()).contains(50);
        assertThat(NozzleSize.parse("10", Said.text("size")).findScreenMesh()).isEmpty();
    }

    @Test
    void the_nearest_size_is_nearest_by_ratio() {
        assertThat(NozzleSize.nearest(Us.gpm(0.505)).number()).isEqualTo("05");
        assertThat(NozzleSize.nearest(Us.gpm(0.7)).number()).isEqualTo("08");
    }
}
