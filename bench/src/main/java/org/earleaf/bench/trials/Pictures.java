// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Draws what was measured against what the model says, a file a picture. */
final class Pictures {
    private static final int YEAR = 2013;

    private Pictures() {}

    static Map<String, String> of(Sample all, Marsden marsden) {
        Map<String, String> byName = new TreeMap<>();
        scatter(byName, all, "full-yield", fullYield());
        scatter(byName, all, "zero-yield", zeroYield());
        scatter(byName, all, "gain", gain());
        scatter(byName, all, "optimum", optimum());
        scatter(byName, all, "advice", advice());
        ByDate nitrogen = new ByDate(
                "Nitrogen in the shoots near Ames, 2013",
                Axis.NITROGEN,
                marsden.daily(Trait.SHOOT_NITROGEN, YEAR),
                marsden.seen(Trait.SHOOT_NITROGEN, YEAR));
        byName.put("shoot-nitrogen.svg", nitrogen.drawn());
        return byName;
    }

    private static void scatter(Map<String, String> byName, Sample all, String name, Scatter scatter) {
        byName.put(name + ".svg", scatter.drawn(all));
    }

    private static Scatter fullYield() {
        return new Scatter(
                "Yield with nitrogen to spare",
                "model",
                Axis.GRAIN,
                h -> h.at().measured().at(Money.MOST_KGHA),
                h -> h.known().at(Money.MOST_KGHA));
    }

    private static Scatter zeroYield() {
        return new Scatter(
                "Yield on plots without nitrogen for years",
                "model",
                Axis.GRAIN,
                h -> h.at().measured().at(0),
                h -> h.known().at(0));
    }

    private static Scatter gain() {
        return new Scatter(
                "What nitrogen gained",
                "model",
                Axis.GRAIN,
                h -> h.at().measured().at(Money.MOST_KGHA) - h.at().measured().at(0),
                h -> h.known().at(Money.MOST_KGHA) - h.known().at(0));
    }

    private static Scatter optimum() {
        return new Scatter(
                "The rate that paid best, season known to its end",
                "model",
                Axis.NITROGEN,
                Held::measuredBest,
                Held::knownBest);
    }

    private static Scatter advice() {
        return new Scatter(
                "Advice of June 10 and the rate that paid best",
                "advice",
                Axis.NITROGEN,
                Held::measuredBest,
                h -> h.advised(Situation.JUNE));
    }

    static void write(Map<String, String> byName, Path folder) {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> each : byName.entrySet()) {
                Files.writeString(folder.resolve(each.getKey()), each.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
