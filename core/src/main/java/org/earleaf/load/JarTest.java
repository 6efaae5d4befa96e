// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Load;
import org.earleaf.mix.MixStep;

/**
 * A mix in a jar before it is made in the tank: each product in its share, in the order of mixing. It looks at clots, oil
 * and heat; it says nothing of crop or pest.
 *
 * <pre>
 * a = A j / V
 *
 * A      product of the load    [m3] or [kg]
 * V      volume of the load     [m3]
 * j      jar                    [m3]
 * Range  j above 0
 * Source arithmetic
 * Check  JarTestTest: 10 fl oz/ac at 15 gal/ac in 500 mL is 2.604 mL, 2 lb/ac is 7.989 g, worked by hand
 * </pre>
 *
 * @param amounts mL and g, the carrier among them
 */
public record JarTest(double jar_m3, List<LoadSheet.Goes> amounts) {
    /** Half a litre: a jar with a lid. */
    public static final double JAR_M3 = .0005;

    public JarTest {
        amounts = List.copyOf(amounts);
    }

    /** What the hand does; common practice of extension guides, from memory. */
    public enum Step {
        TAKE,
        PUT_IN,
        LOOK,
        JUDGE
    }

    public static JarTest of(Load load) {
        List<LoadSheet.Goes> amounts = new ArrayList<>();
        for (MixStep step : load.steps()) {
            amounts.add(goes(step.product(), step.amount(), JAR_M3 / load.volume_m3()));
        }
        return new JarTest(JAR_M3, amounts);
    }

    /** Of a load that is planned; its water fills the jar to the mark. */
    public static JarTest of(TankLoad load) {
        return new JarTest(
                JAR_M3,
                load.lines().stream()
                        .sorted(Comparator.comparingInt(LoadLine::order))
                        .map(l -> goes(l.product(), l.planned(), JAR_M3 / load.volume_m3()))
                        .toList());
    }

    private static LoadSheet.Goes goes(String product, Amount amount, double share) {
        String unit = amount.isMass() ? "g" : "mL";
        return new LoadSheet.Goes(product, new Amount(amount.inside() * share, amount.isMass(), unit));
    }
}
