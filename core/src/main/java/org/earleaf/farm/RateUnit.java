// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.jspecify.annotations.Nullable;

/** The units in which people write the rate of a pass. */
public enum RateUnit {
    LB_N_AC("lb N/ac", Dimension.MASS_RATE),
    KG_N_HA("kg N/ha", Dimension.MASS_RATE),
    GAL_AC("gal/ac", Dimension.VOLUME_RATE),
    L_HA("L/ha", Dimension.VOLUME_RATE),
    LB_AC("lb/ac", Dimension.MASS_RATE),
    KG_HA("kg/ha", Dimension.MASS_RATE),
    FLOZ_AC("fl oz/ac", Dimension.VOLUME_RATE),
    PT_AC("pt/ac", Dimension.VOLUME_RATE),
    QT_AC("qt/ac", Dimension.VOLUME_RATE),
    OZ_AC("oz/ac", Dimension.MASS_RATE),
    /** Share of the finished spray; needs the carrier before it says anything about ground. */
    PERCENT_VV("% v/v", Dimension.SHARE);

    private static final double LHA_PER_M3M2 = 1e7;

    private final String word;
    private final Dimension dimension;

    RateUnit(String word, Dimension dimension) {
        this.word = word;
        this.dimension = dimension;
    }

    public String word() {
        return word;
    }

    /** By its word, upper and lower case and blanks being one. */
    public static Optional<RateUnit> findByWord(String word) {
        String plain = plain(word);
        return Arrays.stream(values()).filter(u -> plain(u.word).equals(plain)).findFirst();
    }

    public static String words() {
        return String.join(", ", Arrays.stream(values()).map(RateUnit::word).toList());
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
    }

    /** Whether it counts the nitrogen rather than the product. */
    public boolean isOfNitrogen() {
        return this == LB_N_AC || this == KG_N_HA;
    }

    public boolean isVolume() {
        return dimension == Dimension.VOLUME_RATE;
    }

    public boolean isMass() {
        return dimension == Dimension.MASS_RATE && !isOfNitrogen();
    }

    /** Rate inside: L/ha for a volume, kg/ha for a mass, share for % v/v. */
    public double inside(double rate) {
        if (this == PERCENT_VV) {
            return rate / 100;
        }
        double inside = dimension.findInside(rate, word).orElseThrow();
        return isVolume() ? inside * LHA_PER_M3M2 : inside;
    }

    /**
     * Nitrogen that such a rate puts on [kg N/ha].
     *
     * @param rate in this unit
     * @param product its name, for the message
     * @param nitrogen what the product carries; null when it carries none
     */
    public double nitrogen_kgHa(double rate, String product, @Nullable NitrogenProduct nitrogen) {
        if (nitrogen == null) {
            if (isOfNitrogen()) {
                throw unfit("rate.no-nitrogen", product);
            }
            return 0;
        }
        if (isOfNitrogen()) {
            return inside(rate);
        }
        if (this == PERCENT_VV) {
            throw unfit("rate.share-of-tank", product);
        }
        if (isVolume()) {
            if (!nitrogen.isLiquid()) {
                throw unfit("rate.volume-of-dry", product);
            }
            return inside(rate) * nitrogen.nitrogen_kgL();
        }
        if (this == OZ_AC && nitrogen.isLiquid()) {
            throw unfit("rate.ounces-of-liquid", product);
        }
        return inside(rate) * nitrogen.nitrogen_share();
    }

    private EarleafException unfit(String code, String product) {
        return EarleafException.coded(code, "rate_unit", word, "product", product);
    }
}
