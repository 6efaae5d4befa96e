// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.earleaf.mix.Cleanout;
import org.earleaf.units.RecordCopy;
import org.junit.jupiter.api.Test;

/** Advice on a load that is kept. Jar: 10 fl oz/ac at 15 gal/ac in 500 mL is 2.604 mL, worked by hand. */
class TankAdviceTest {
    private static final Cleanout AFTER = Cleanout.of(.03, 3, Set.of());

    private static TankAdvice of(TankLoad load) {
        return TankAdvice.of(load, Labels.BOOK, List.of(), AFTER);
    }

    @Test
    void a_mix_has_its_jar_and_the_strictest_limits_of_its_labels() {
        TankAdvice advice = of(TankLoads.planned());
        JarTest jar = advice.jar().orElseThrow();
        assertThat(jar.amounts()).extracting(LoadSheet.Goes::product).containsExactly("Demo I2", "Demo F1");
        assertThat(jar.amounts().get(1).amount().inUnit()).isCloseTo(2.604, within(.001));
        assertThat(advice.limits()).isNotEmpty().allMatch(l -> l.product().startsWith("Demo"));
        assertThat(advice.jarAsked()).isFalse();
        assertThat(advice.isStop()).isFalse();
        assertThat(advice.cleanout()).isEqualTo(AFTER);
    }

    @Test
    void a_product_alone_needs_no_jar_and_one_carried_by_nitrogen_solution_asks_for_it() {
        TankLoad planned = TankLoads.planned();
        assertThat(of(RecordCopy.with(planned, "lines", List.of(TankLoads.f1())))
                        .jar())
                .isEmpty();
        TankLoad carried = RecordCopy.with(planned, "fill.nitrogenCarrier", true);
        assertThat(carried.asksForJar()).isTrue();
        assertThat(of(carried).jarAsked()).isTrue();
        TankLoad plain =
                RecordCopy.with(carried, "lines", List.of(RecordCopy.with(TankLoads.f1(), "goods.labelled", false)));
        assertThat(plain.asksForJar()).isFalse();
        assertThat(planned.asksForJar()).isFalse();
    }
}
