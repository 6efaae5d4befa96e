// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.Texture;
import org.earleaf.units.Figure;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The soil of a field or zone as a person enters it, horizon by horizon: top, bottom, sand and clay or texture, om, ph,
 * cec, bulk_density, wilting_point, field_capacity.
 */
public final class SoilEntry {
    private static final double EQUAL_MM = 0.6;
    private static final double MODEL_DEPTH_MM = 1524;
    private static final double NEUTRAL_PH = 6.5;
    private static final double PERCENT_ROUNDING = 1e-6;

    private SoilEntry() {}

    /** A horizon with the parts that it was entered by, to which a rule between horizons is told. */
    public record Layer(Parts parts, Horizon horizon) {}

    /** One horizon; wrong where its parts are no longer good. */
    public static Layer layer(Parts parts) {
        Optional<Texture> texture = texture(parts);
        Horizon h = new Horizon(
                parts.needed("top", Ranges.SOIL_TOP),
                parts.needed("bottom", Ranges.SOIL_BOTTOM),
                texture.map(Texture::sand_pct).orElseGet(() -> parts.needed("sand", Ranges.SAND)),
                texture.map(Texture::clay_pct).orElseGet(() -> parts.needed("clay", Ranges.CLAY)),
                parts.number("om", Ranges.ORGANIC_MATTER),
                parts.number("ph", Ranges.PH),
                parts.number("cec", Ranges.CEC),
                new Horizon.Measured(
                        parts.number("bulk_density", Ranges.BULK_DENSITY),
                        parts.number("wilting_point", Ranges.WILTING_POINT),
                        parts.number("field_capacity", Ranges.FIELD_CAPACITY)));
        double both = h.sand_pct() + h.clay_pct();
        if (both > 100 + PERCENT_ROUNDING) {
            parts.refuse("soil.sand-and-clay-above-all", "clay", Figure.text(both, 4) + " %");
        }
        if (h.top_mm() >= h.bottom_mm()) {
            parts.refuse("soil.depths-turned", "bottom", parts.text("bottom"));
        }
        return new Layer(parts, h);
    }

    /** The class that stands for sand and clay; figures of them go before it. */
    private static Optional<Texture> texture(Parts parts) {
        if (parts.has("sand") || parts.has("clay") || !parts.has("texture")) {
            return Optional.empty();
        }
        Optional<Texture> found = parts.word("texture", Texture::findByWord, Texture.words());
        found.ifPresent(c -> parts.remark(
                "texture",
                Said.of(
                        "soil.texture-middle",
                        "sand",
                        Measure.SHARE.of(c.sand_pct() / 100),
                        "clay",
                        Measure.SHARE.of(c.clay_pct() / 100))));
        // What is no class was refused; its middle is never used.
        return found.or(() -> Optional.of(Texture.LOAM));
    }

    /** Horizons top first, as the model takes them; what is wrong between them is told to the parts of each. */
    public static List<Horizon> horizons(List<Layer> layers) {
        List<Layer> down = new ArrayList<>(layers);
        down.sort(Comparator.comparingDouble(x -> x.horizon().top_mm()));
        refuseApart(down);
        remarkMissing(down);
        return down.stream()
                .map(x -> x == down.get(0) ? withPh(x.horizon()) : x.horizon())
                .toList();
    }

    private static void refuseApart(List<Layer> down) {
        double reached = 0;
        for (Layer x : down) {
            double top = x.horizon().top_mm();
            if (Math.abs(top - reached) > EQUAL_MM) {
                String said = x.parts().text("top");
                x.parts()
                        .refuse(Problem.of(
                                "soil.horizons-apart",
                                Said.text("top"),
                                top > reached
                                        ? Said.of("found.horizon-gap", "top", said)
                                        : Said.of("found.horizon-overlap", "top", said),
                                "reached",
                                Measure.DEPTH.of(reached)));
            }
            reached = x.horizon().bottom_mm();
        }
        if (Double.isNaN(down.get(0).horizon().om_pct())) {
            down.get(0).parts().refuse("cell.empty", "om", "");
        }
    }

    private static void remarkMissing(List<Layer> down) {
        Layer first = down.get(0);
        if (Double.isNaN(first.horizon().ph())) {
            first.parts().remark("ph", Said.of("soil.ph-assumed", "ph", NEUTRAL_PH));
        }
        for (Layer x : down.subList(1, down.size())) {
            for (String part : List.of("om", "ph")) {
                if (!x.parts().has(part)) {
                    x.parts().remark(part, Said.of("soil.as-above"));
                }
            }
        }
        Layer last = down.get(down.size() - 1);
        if (last.horizon().bottom_mm() < MODEL_DEPTH_MM - EQUAL_MM) {
            last.parts().remark("bottom", Said.of("soil.ends-early", "depth", Measure.DEPTH.of(MODEL_DEPTH_MM)));
        }
        for (Layer x : down) {
            if (x.parts().has("wilting_point") != x.parts().has("field_capacity")) {
                x.parts().remark("wilting_point", Said.of("soil.one-of-two"));
            }
        }
    }

    private static Horizon withPh(Horizon h) {
        return Double.isNaN(h.ph())
                ? new Horizon(
                        h.top_mm(),
                        h.bottom_mm(),
                        h.sand_pct(),
                        h.clay_pct(),
                        h.om_pct(),
                        NEUTRAL_PH,
                        h.cec_cmolKg(),
                        h.measured())
                : h;
    }
}
