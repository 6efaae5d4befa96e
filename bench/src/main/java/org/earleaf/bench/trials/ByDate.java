// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.earleaf.bench.trials.Svg.Place;

/**
 * One trait over a season: the model as a line, what was measured as points.
 *
 * @param model by day [kg/ha]
 */
record ByDate(String title, Axis axis, SortedMap<LocalDate, Double> model, List<Marsden.Seen> seen) {
    private static final int WIDTH = 540;
    private static final int HEIGHT = 564;

    String drawn() {
        double most = Math.max(
                model.values().stream().mapToDouble(Double::doubleValue).max().orElseThrow(),
                seen.stream().mapToDouble(Marsden.Seen::value).max().orElseThrow());
        double end = axis.end(most);
        String points = seen.stream()
                .map(each -> String.format(
                        Locale.ROOT, "%s %.0f, %.0f", each.date(), us(each.value()), us(modelled(each.date()))))
                .collect(Collectors.joining("; "));
        Svg svg = new Svg(WIDTH, HEIGHT, title, "By date, measured and model in " + axis.us() + ": " + points + ".");
        svg.title(4, 24, title)
                .point(Svg.CORN, new Place(12, 46))
                .words(24, 51, "start", "measured")
                .line("model", new Place(122, 46), new Place(156, 46))
                .words(162, 51, "start", "model");
        months(svg);
        axis.drawUp(svg, end, "nitrogen");
        svg.curve(
                "model",
                model.entrySet().stream()
                        .map(each -> new Place(across(each.getKey()), Axis.up(each.getValue() / end)))
                        .toList());
        seen.forEach(each -> svg.point(Svg.CORN, new Place(across(each.date()), Axis.up(each.value() / end))));
        return svg.toString();
    }

    private double us(double kgHa) {
        return axis.usOf() * kgHa;
    }

    private double modelled(LocalDate date) {
        return model.getOrDefault(date, Double.NaN);
    }

    private double across(LocalDate date) {
        double days = model.lastKey().toEpochDay() - model.firstKey().toEpochDay();
        return Axis.across((date.toEpochDay() - model.firstKey().toEpochDay()) / days);
    }

    private void months(Svg svg) {
        LocalDate first = model.firstKey().withDayOfMonth(1).plusMonths(1);
        for (LocalDate month = first; !month.isAfter(model.lastKey()); month = month.plusMonths(1)) {
            double x = across(month);
            String word = month.getMonth().getDisplayName(TextStyle.SHORT, Locale.US) + " 1";
            svg.line("grid", new Place(x, Axis.TOP), new Place(x, Axis.TOP + Axis.SIZE))
                    .words(x, Axis.TOP + Axis.SIZE + 20, "middle", word);
        }
    }
}
