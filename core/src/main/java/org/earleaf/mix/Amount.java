// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.earleaf.units.Dimension;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/**
 * How much of a product: a volume or a mass.
 *
 * @param inside m3 of a volume, kg of a mass
 * @param unit in which the product is measured out ("fl oz", "gal", "lb"), as its rate was written
 */
public record Amount(double inside, boolean isMass, String unit) {
    private static final int DIGITS = 4;

    public static Amount volume(double volume_m3, String unit) {
        return new Amount(volume_m3, false, unit);
    }

    public Dimension dimension() {
        return isMass ? Dimension.MASS : Dimension.VOLUME;
    }

    /** The number in its own unit. */
    public double inUnit() {
        return dimension().outside(inside, unit);
    }

    /** The number in another unit of the same kind. */
    public double in(String otherUnit) {
        return dimension().outside(inside, otherUnit);
    }

    /** As it is measured out, four digits, for messages. */
    public Said told() {
        double count = inUnit();
        return Double.isFinite(count)
                ? Said.of("amount.measured", "amount", new Quantity(rounded(count), unit, inside))
                : Said.of("amount.unknown");
    }

    private static double rounded(double count) {
        return new BigDecimal(count)
                .round(new MathContext(DIGITS, RoundingMode.HALF_UP))
                .doubleValue();
    }

    public Amount times(double factor) {
        return new Amount(inside * factor, isMass, unit);
    }

    public Amount plus(Amount other) {
        return new Amount(inside + other.inside, isMass, unit);
    }
}
