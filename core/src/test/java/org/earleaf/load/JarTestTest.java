// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixLine;
import org.junit.jupiter.api.Test;

/** Amounts for a jar, worked by hand from the rates. */
class JarTestTest {
    private static LoadPlan plan(MixLine... lines) {
        return LoadPlanner.plan(
                LoadJob.of(List.of(lines), Recipes.ac(40), Recipes.gpa(15), Recipes.gal(1000), LoadJob.Split.EQUAL));
    }

    @Test
    void a_jar_takes_the_same_share_of_each_product_as_the_tank() {
        JarTest jar = JarTest.of(
                plan(Recipes.line("Demo F1", 10, "fl oz/ac", "SC"), Recipes.line("Demo I2", 2, "lb/ac", "WG"))
                        .loads()
                        .get(0));
        assertThat(jar.jar_m3()).isEqualTo(.0005);
        assertThat(jar.amounts())
                .extracting(LoadSheet.Goes::product)
                .containsExactly("water", "Demo I2", "Demo F1", "water");
        assertThat(jar.amounts().get(1).amount().unit()).isEqualTo("g");
        assertThat(jar.amounts().get(1).amount().inUnit()).isCloseTo(7.9884, within(.0005));
        assertThat(jar.amounts().get(2).amount().unit()).isEqualTo("mL");
        assertThat(jar.amounts().get(2).amount().inUnit()).isCloseTo(2.604, within(.0005));
    }

    @Test
    void a_planned_load_tells_its_jar_in_the_order_of_mixing() {
        TankLoad load = TankLoads.planned();
        JarTest jar = JarTest.of(load);
        assertThat(jar.amounts()).extracting(LoadSheet.Goes::product).containsExactly("Demo I2", "Demo F1");
        double f1_mL = TankLoads.f1().planned().inside() / load.volume_m3() * 500;
        assertThat(jar.amounts().get(1).amount().inUnit()).isCloseTo(f1_mL, within(1e-9));
    }
}
