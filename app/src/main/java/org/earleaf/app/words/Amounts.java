// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import java.util.Set;
import org.earleaf.mix.Amount;
import org.earleaf.units.Figure;

/** How amounts at the tank are written: digits that a meter, a jug or a scale can show, no more. */
public final class Amounts {
    private static final Set<String> US = Set.of("gal", "qt", "pt", "fl oz", "lb", "oz", "ton");

    private Amounts() {}

    /** "490 fl oz (3.83 gal)", "62.5 lb", "437 gal"; metric "14.5 L", "28.3 kg". */
    public static String text(Amount amount, boolean metric) {
        String main = main(amount, metric);
        String own = measured(amount.inUnit()) + " " + amount.unit();
        return metric || !US.contains(amount.unit()) || main.equals(own) ? main : own + " (" + main + ")";
    }

    /** Unit of an amount in data: L or kg; else the US unit it is measured out in. */
    public static String unit(Amount amount, boolean metric) {
        if (metric) {
            return amount.isMass() ? "kg" : "L";
        }
        return US.contains(amount.unit()) ? amount.unit() : unit(amount.isMass(), false, true);
    }

    private static String main(Amount amount, boolean metric) {
        String large = unit(amount.isMass(), metric, true);
        double count = amount.in(large);
        if (count >= 1 || count == 0) {
            return measured(count) + " " + large;
        }
        String small = unit(amount.isMass(), metric, false);
        return measured(amount.in(small)) + " " + small;
    }

    private static String unit(boolean mass, boolean metric, boolean large) {
        if (metric) {
            return mass ? (large ? "kg" : "g") : (large ? "L" : "mL");
        }
        return mass ? (large ? "lb" : "oz") : (large ? "gal" : "fl oz");
    }

    /** Three digits, whole numbers in full. */
    private static String measured(double count) {
        return Figure.text(count, 3);
    }

    /** "735 gal" or "2782 L". */
    public static String volume(double volume_m3, boolean metric) {
        return main(Amount.volume(volume_m3, "gal"), metric);
    }
}
