// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Words;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.LoadLine;
import org.earleaf.load.TankLoad;
import org.earleaf.units.Units;

/**
 * A kept load on paper.
 *
 * @param partRule what goes with a part moved to another rig
 * @param head newest fingerprint of the records
 */
public record LoadPaper(
        String farm,
        TankView view,
        String volume,
        List<Pair> mix,
        List<Line> limits,
        List<Pair> cautions,
        String partRule,
        String head) {
    private static final double METRIC_PART_M3 = .5;
    private static final double US_PART_GAL = 100;
    private static final double M2_PER_HA = 10_000;

    /** What the label of one product says, in words. */
    public record Line(String product, String stops, String within, String before) {}

    /** Two cautions side by side. */
    public record Pair(String left, String right) {}

    public static LoadPaper of(
            String farm, TankView view, TankLoad load, List<LabelFinding> findings, String head, Format format) {
        List<String> said = view.mixing().cautions();
        List<Pair> pairs = new ArrayList<>();
        for (int k = 0; k < said.size(); k += 2) {
            pairs.add(new Pair(said.get(k), k + 1 < said.size() ? said.get(k + 1) : ""));
        }
        return new LoadPaper(
                farm,
                view,
                Amounts.volume(load.volume_m3(), format.isMetric()),
                together(load, view.mix(), format),
                load.lines().stream()
                        .filter(LoadLine::labelled)
                        .map(l -> line(l.product(), findings, format.words()))
                        .toList(),
                pairs,
                part(load, format),
                head);
    }

    /** Rules, jar test, cleaning, water: each in one line. */
    private static List<Pair> together(TankLoad load, TankMix mix, Format format) {
        List<Pair> all = new ArrayList<>();
        mix.quarrels()
                .rules()
                .forEach(r -> all.add(new Pair(
                        r.stop() ? tell("page.load-paper.do-not-mix") : tell("page.load-paper.mind"), r.text())));
        mix.quarrels().aside().forEach(a -> all.add(new Pair(tell("page.load-paper.set-aside"), a + ".")));
        if (!mix.clean().residue().isEmpty()) {
            all.add(new Pair(
                    tell("page.load-paper.clean-first"),
                    mix.clean().residue() + " " + mix.clean().bleach()));
        }
        if (!mix.jar().holds().isEmpty()) {
            all.add(new Pair(
                    mix.jar().stops() ? tell("page.load-paper.jar-test-first") : tell("page.load-paper.jar"),
                    mix.jar().result().isEmpty()
                            ? mix.jar().holds()
                            : mix.jar().holds() + " " + mix.jar().result() + "."));
        }
        mix.water().stream()
                .reduce((one, other) -> one + " " + other)
                .ifPresent(w -> all.add(new Pair(tell("page.load-paper.water"), w)));
        if (load.unapplied_m3() > 0) {
            all.add(new Pair(
                    tell("page.load-paper.heel-and-lines"),
                    tell(
                            "page.load-paper.take-of-this-load-used",
                            "volume",
                            Amounts.volume(load.unapplied_m3(), format.isMetric()))));
        }
        return all;
    }

    private static Line line(String product, List<LabelFinding> findings, Words words) {
        List<LabelFinding> of =
                findings.stream().filter(f -> f.product().equals(product)).toList();
        return new Line(
                product,
                joined(of, LabelFinding::isStop, f -> words.say(f.sentence())),
                joined(of, f -> f.verdict() == LabelFinding.Verdict.WITHIN, f -> within(f, words)),
                joined(
                        of,
                        f -> f.verdict() == LabelFinding.Verdict.BEFORE_START
                                || f.verdict() == LabelFinding.Verdict.MIND,
                        f -> words.say(f.what()) + " " + words.say(f.planned()) + words.say(f.allowed())));
    }

    private static String within(LabelFinding f, Words words) {
        String planned = words.say(f.planned());
        String allowed = words.say(f.allowed());
        String limit = words.say(f.what()) + " " + planned;
        return planned.equals(allowed) ? limit : words.say("print.load.label", "limit", limit, "allowed", allowed);
    }

    private static String joined(
            List<LabelFinding> findings, Predicate<LabelFinding> which, Function<LabelFinding, String> say) {
        return findings.stream().filter(which).map(say).collect(Collectors.joining("; "));
    }

    private static String part(TankLoad load, Format format) {
        double moved_m3 = format.isMetric() ? METRIC_PART_M3 : US_PART_GAL * Units.M3_PER_GAL;
        double share = moved_m3 / load.volume_m3();
        String goes = load.lines().stream()
                .map(l -> tell(
                        "page.load-paper.of",
                        "times",
                        Amounts.text(l.planned().times(share), format.isMetric()),
                        "product",
                        l.product()))
                .collect(Collectors.joining(", "));
        double ha = moved_m3 / load.rate_m3m2() / M2_PER_HA;
        return tell(
                "page.load-paper.part-load-with-each-moved",
                "volume",
                Amounts.volume(moved_m3, format.isMetric()),
                "areaValue",
                Format.number(format.areaValue(ha), 2),
                "areaUnit",
                format.areaUnit(),
                "goes",
                goes);
    }
}
