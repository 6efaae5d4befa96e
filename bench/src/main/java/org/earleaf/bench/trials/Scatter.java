// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.earleaf.bench.trials.Svg.Place;

/**
 * Site-years as points: what was measured across, what the model says upwards, and the line on which both are the same.
 *
 * @param up what is read upwards
 * @param measured [kg/ha]
 * @param modelled [kg/ha]
 */
record Scatter(String title, String up, Axis axis, ToDoubleFunction<Held> measured, ToDoubleFunction<Held> modelled) {
    private static final int WIDTH = 540;
    private static final int HEIGHT = 584;

    String drawn(Sample all) {
        double most = all.all().stream()
                .mapToDouble(h -> Math.max(measured.applyAsDouble(h), modelled.applyAsDouble(h)))
                .max()
                .orElseThrow();
        double end = axis.end(most);
        Svg svg = new Svg(WIDTH, HEIGHT, title, description(all));
        svg.title(4, 24, title)
                .point(Svg.CORN, new Place(12, 46))
                .words(24, 51, "start", "after corn")
                .point(Svg.SOYBEAN, new Place(122, 46))
                .words(134, 51, "start", "after soybean")
                .line("even", new Place(248, 46), new Place(282, 46))
                .words(288, 51, "start", "both the same");
        axis.drawAcross(svg, end, "measured");
        axis.drawUp(svg, end, up);
        svg.line("even", new Place(Axis.across(0), Axis.up(0)), new Place(Axis.across(1), Axis.up(1)));
        for (Held h : all.all()) {
            Place at =
                    new Place(Axis.across(measured.applyAsDouble(h) / end), Axis.up(modelled.applyAsDouble(h) / end));
            svg.point(h.at().isAfterCorn() ? Svg.CORN : Svg.SOYBEAN, at);
        }
        return svg.toString();
    }

    private String description(Sample all) {
        return String.format(
                Locale.ROOT,
                "%d site-years of Iowa farms, measured across and %s upwards; circles after corn, triangles after"
                        + " soybean. On the average %.0f %s measured and %.0f by the %s; correlation %.2f.",
                all.all().size(),
                up,
                axis.usOf() * all.mean(measured),
                axis.us(),
                axis.usOf() * all.mean(modelled),
                up,
                Figures.correlation(all.of(measured), all.of(modelled)));
    }
}
