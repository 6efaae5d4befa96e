// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Words;
import org.earleaf.load.LoadSheet;
import org.earleaf.mix.MixStep;
import org.earleaf.rig.FlowPart;
import org.earleaf.units.Dimension;
import org.earleaf.units.Figure;

/** Load sheets as text. */
final class LoadText {
    private final PrintWriter out;
    private final boolean metric;

    LoadText(PrintWriter out, boolean metric) {
        this.out = out;
        this.metric = metric;
    }

    void print(LoadSheet sheet) {
        String field = sheet.field().isEmpty() ? "" : ", " + sheet.field();
        out.println(tell(
                "cli.load.load-of-for-at",
                "number",
                String.valueOf(sheet.load().number()),
                "of",
                sheet.load().of(),
                "field",
                field,
                "volume",
                Amounts.volume(sheet.load().volume_m3(), metric),
                "area",
                area(sheet.load().area_m2()),
                "rate",
                FlowPart.RATE.text(sheet.rate_m3m2(), metric)));
        sheet.settings().ifPresent(this::print);
        sheet.load().steps().forEach(this::print);
        sheet.limits().forEach(limit -> out.println("  " + Words.in(metric).say(limit)));
        LoadSheet.PartLoad part = sheet.part();
        String goes = part.products().stream()
                .map(p -> Amounts.text(p.amount(), metric) + " " + p.product())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        out.println("  "
                + tell(
                        "cli.load.for-each-moved-to-another",
                        "volume",
                        Amounts.volume(part.volume_m3(), metric),
                        "area",
                        area(part.area_m2()),
                        "goes",
                        goes));
        out.println();
    }

    private void print(LoadSheet.Settings rig) {
        out.println("  "
                + tell(
                        "cli.load.to",
                        "rig",
                        rig.rig(),
                        "speed",
                        FlowPart.SPEED.text(rig.speed_ms(), metric),
                        "slowest",
                        FlowPart.SPEED.text(rig.slowest_ms(), metric),
                        "fastest",
                        FlowPart.SPEED.text(rig.fastest_ms(), metric),
                        "pressure",
                        FlowPart.PRESSURE.text(rig.pressure_Pa(), metric),
                        "outlet",
                        Words.in(metric).say(rig.outlet())));
    }

    private void print(MixStep step) {
        String product =
                switch (step.part()) {
                    case CARRIER_FIRST -> tell("cli.load.first-part", "product", step.product());
                    case CARRIER_LAST -> tell("cli.load.to-the-mark", "product", step.product());
                    case PRODUCT -> step.product();
                };
        out.printf(
                "%4d. %-26s %-24s %s%n",
                step.order(),
                product,
                Amounts.text(step.amount(), metric),
                Words.in(metric).say(step.how()));
    }

    private String area(double area_m2) {
        String unit = metric ? "ha" : "ac";
        return Figure.text(Dimension.AREA.outside(area_m2, unit), 3) + " " + unit;
    }
}
