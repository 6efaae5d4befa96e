// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Six layers of soil down to 60 in, top first; each list has {@link #LAYERS} entries.
 *
 * @param water wilting point, field capacity, saturation, conductivity
 * @param bulkDensity_gcm3 dry bulk density
 * @param om_pct organic matter
 * @param ph reaction in water
 * @param cec_cmolKg cation exchange capacity
 * @param texture of the surface
 */
public record SoilProfile(
        List<SoilWater> water,
        List<Double> bulkDensity_gcm3,
        List<Double> om_pct,
        List<Double> ph,
        List<Double> cec_cmolKg,
        Texture texture) {
    public static final int LAYERS = 6;
    /** Lower edges of the layers: 2, 6, 12, 24, 36, 60 in. */
    private static final double[] BOTTOM_MM = {50.8, 152.4, 304.8, 609.6, 914.4, 1524.0};
    /** Depth of the usual soil test, 12 in: the lower edge of the third layer. */
    public static final double FOOT_MM = BOTTOM_MM[2];
    /** Smallest pore space that drains [share of volume]; own construct, so that water can always leave. */
    private static final double ROOM = 0.01;

    public SoilProfile {
        water = List.copyOf(water);
        bulkDensity_gcm3 = List.copyOf(bulkDensity_gcm3);
        om_pct = List.copyOf(om_pct);
        ph = List.copyOf(ph);
        cec_cmolKg = List.copyOf(cec_cmolKg);
    }

    public static double top_mm(int layer) {
        return layer == 0 ? 0 : BOTTOM_MM[layer - 1];
    }

    public static double bottom_mm(int layer) {
        return BOTTOM_MM[layer];
    }

    public static double thickness_mm(int layer) {
        return bottom_mm(layer) - top_mm(layer);
    }

    /** Mean bulk density between two depths [g/cm3]; NaN where the depths meet no layer. */
    public double bulkDensity_gcm3(double from_mm, double to_mm) {
        double sum = 0;
        double weight = 0;
        for (int layer = 0; layer < LAYERS; layer++) {
            double overlap = Math.max(0, Math.min(to_mm, bottom_mm(layer)) - Math.max(from_mm, top_mm(layer)));
            sum += overlap * bulkDensity_gcm3.get(layer);
            weight += overlap;
        }
        return sum / weight;
    }

    /**
     * Brings horizons to the six layers by overlap-weighted mean; the lowest horizon reaches on downwards. Survey water
     * contents stand before texture where they are given and ordered. Values outside the model's range are clamped and
     * flagged.
     *
     * @param horizons top first, without gaps
     * @param where for flags, "soil.csv, Home Eighty"
     * @param flags receives remarks
     */
    public static SoilProfile of(List<Horizon> horizons, String where, List<Flag> flags) {
        List<SoilWater> water = new ArrayList<>();
        List<Double> bd = new ArrayList<>();
        List<Double> om = new ArrayList<>();
        List<Double> ph = new ArrayList<>();
        List<Double> cec = new ArrayList<>();
        for (int layer = 0; layer < LAYERS; layer++) {
            Horizon h = LayerMean.of(horizons, top_mm(layer), bottom_mm(layer));
            Clamped v =
                    new Clamped(Said.of("where.soil-layer", "where", where, "layer", String.valueOf(layer + 1)), flags);
            double sand = v.to(Said.of("soil.sand"), h.sand_pct(), 0, 95);
            double clay = v.to(Said.of("soil.clay"), h.clay_pct(), 3, 60);
            double o = v.to(Said.of("soil.organic-matter"), h.om_pct(), 0.1, 8);
            SoilWater texture = drainable(SoilWater.ofTexture(sand, clay, o), v);
            SoilWater w = survey(h, texture, v);
            water.add(w);
            om.add(o);
            ph.add(v.to(Said.of("soil.ph"), h.ph(), 4.5, 8.5));
            double c = Double.isNaN(h.cec_cmolKg()) ? 0.5 * clay + 2 * o : h.cec_cmolKg();
            cec.add(v.to(Said.of("soil.cec"), c, 2, 50));
            bd.add(
                    Double.isNaN(h.measured().bulkDensity_gcm3())
                            ? w.bulkDensity_gcm3()
                            : v.to(Said.of("soil.bulk-density"), h.measured().bulkDensity_gcm3(), 0.9, 1.9));
        }
        return new SoilProfile(water, bd, om, ph, cec, Texture.of(horizons.get(0)));
    }

    /** The equations leave no room to drain in a few very clayey soils rich in organic matter; see {@link #ROOM}. */
    private static SoilWater drainable(SoilWater w, Clamped flags) {
        if (w.sat() >= w.fc() + ROOM) {
            return w;
        }
        flags.say(Said.of("flag.soil-no-room", "room", Measure.SHARE.of(ROOM)));
        return SoilWater.of(w.wp(), w.fc(), w.fc() + ROOM);
    }

    private static SoilWater survey(Horizon h, SoilWater texture, Clamped flags) {
        if (Double.isNaN(h.measured().wiltingPoint_share())
                || Double.isNaN(h.measured().fieldCapacity_share())) {
            return texture;
        }
        SoilWater survey =
                SoilWater.of(h.measured().wiltingPoint_share(), h.measured().fieldCapacity_share(), texture.sat());
        if (survey.isOrdered()) {
            return survey;
        }
        flags.say(Said.of("flag.soil-out-of-order", "saturation", Measure.SHARE.of(texture.sat())));
        return texture;
    }

    private record Clamped(Said where, List<Flag> flags) {
        double to(Said name, double value, double low, double high) {
            double in = Math.max(low, Math.min(high, value));
            if (in != value) {
                say(Said.of("flag.soil-clamped", "what", name, "value", value, "low", low, "high", high, "taken", in));
            }
            return in;
        }

        void say(Said what) {
            flags.add(new Flag(where, what));
        }
    }
}
