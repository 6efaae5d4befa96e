// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.MixTold;
import org.earleaf.app.words.Words;
import org.earleaf.load.JarTest;
import org.earleaf.load.LoadPlan;
import org.earleaf.load.TankAdvice;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Cleanout;
import org.earleaf.mix.Load;
import org.earleaf.mix.MixRules;
import org.earleaf.mix.TenderTrips;
import org.earleaf.mix.WaterQuality;
import org.earleaf.units.Dimension;
import org.earleaf.units.Figure;
import org.jspecify.annotations.Nullable;

/** What is to be known of a mix before it is poured, as text and as data. */
final class MixText {
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double ML = 1e6;

    private final LoadPlan plan;
    private final TankAdvice advice;
    private final MixOptions options;
    private final boolean metric;
    private final Words words;

    MixText(LoadPlan plan, MixOptions options, boolean metric) {
        this.plan = plan;
        this.advice = plan.advice();
        this.options = options;
        this.metric = metric;
        this.words = Words.in(metric);
    }

    void print(PrintWriter out) {
        section(out, tell("cli.mix.together-in-one-tank"), quarrels());
        section(
                out,
                tell("cli.mix.what-binds-the-tank"),
                advice.limits().stream().map(l -> words.say(l.said())).toList());
        section(out, tell("cli.mix.water"), options.water().map(this::water).orElse(List.of()));
        section(
                out,
                tell("cli.mix.tender"),
                options.trips(plan).map(this::tender).orElse(List.of()));
        section(out, tell("cli.mix.jar-test"), advice.jar().map(this::jar).orElse(List.of()));
        section(out, tell("cli.mix.after-the-last-load"), cleanout(advice.cleanout()));
    }

    private static void section(PrintWriter out, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            out.println(title);
            lines.forEach(line -> out.println("- " + line));
        }
    }

    private List<String> quarrels() {
        List<String> lines = new ArrayList<>();
        advice.forbidden().forEach(f -> lines.add(words.say(f)));
        for (MixRules.Found found : advice.quarrels()) {
            lines.add(
                    found.weight() == MixRules.Weight.STOP
                            ? words.say("cli.mix.do-not-mix", "rule", found.rule())
                            : words.say(found.rule()));
        }
        return lines;
    }

    private List<String> water(WaterQuality water) {
        List<String> lines = new ArrayList<>();
        lines.add(MixTold.hardness(water));
        for (Load load : plan.loads()) {
            lines.add(tell(
                    "cli.mix.load",
                    "number",
                    String.valueOf(load.number()),
                    "conditioner",
                    MixTold.conditioner(water, load.volume_m3(), metric)));
        }
        return lines;
    }

    private List<String> tender(TenderTrips trips) {
        double lasts_s = trips.lasts_s(options.tender_m3(), options.rigs());
        double wait_s = trips.wait_s(options.tender_m3(), options.rigs(), options.round_s());
        List<String> lines = new ArrayList<>();
        lines.add(tell(
                "cli.mix.trips-of-for",
                "trips",
                Figure.text(trips(), 4),
                "volume",
                Amounts.volume(options.tender_m3(), metric),
                "volume2",
                Amounts.volume(plan.total_m3(), metric)));
        String lasts = Figure.text(lasts_s / MINUTE, 3);
        lines.add(
                wait_s > 0
                        ? tell("cli.mix.one-lasts-rigs-wait", "lasts", lasts, "wait", Figure.text(wait_s / MINUTE, 3))
                        : tell("cli.mix.one-lasts-no-rig-waits", "lasts", lasts));
        return lines;
    }

    private double trips() {
        long whole = (long) (plan.total_m3() / options.tender_m3());
        return whole * options.tender_m3() < plan.total_m3() * (1 - 1e-9) ? whole + 1 : whole;
    }

    private List<String> jar(JarTest jar) {
        List<String> lines = new ArrayList<>();
        if (advice.jarAsked()) {
            lines.add(words.say("jar.because"));
        }
        lines.add(MixTold.jar(jar));
        lines.addAll(jarSteps());
        return lines;
    }

    private List<String> jarSteps() {
        return Arrays.stream(JarTest.Step.values()).map(words::say).toList();
    }

    private List<String> cleanout(Cleanout clean) {
        List<String> lines =
                new ArrayList<>(clean.steps().stream().map(words::say).toList());
        lines.addAll(MixTold.rinses(clean, metric));
        return lines;
    }

    /** Keys that are added to the answer. */
    Map<String, @Nullable Object> json() {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put(
                "mix",
                Json.object(
                        "stop",
                        advice.isStop(),
                        "forbidden",
                        advice.forbidden().stream().map(words::say).toList(),
                        "rules",
                        advice.quarrels().stream()
                                .map(q -> Json.object(
                                        "id", q.id(),
                                        "weight", q.weight().name().toLowerCase(Locale.ROOT),
                                        "text", words.say(q.rule())))
                                .toList(),
                        "limits",
                        advice.limits().stream()
                                .map(l -> Json.object(
                                        "item", l.item().word(),
                                        "words", words.say(l.item()),
                                        "value", l.figure().entered(),
                                        "product", l.product()))
                                .toList()));
        json.put("jar_test", advice.jar().map(this::jarJson));
        json.put("cleanout", cleanoutJson(advice.cleanout()));
        options.water().ifPresent(w -> json.put("water", waterJson(w)));
        options.trips(plan).ifPresent(t -> json.put("tender", tenderJson(t)));
        return json;
    }

    private Map<String, @Nullable Object> jarJson(JarTest jar) {
        return Json.object(
                "volume_ml",
                jar.jar_m3() * ML,
                "because",
                advice.jarAsked() ? words.say("jar.because") : "",
                "items",
                jar.amounts().stream()
                        .map(g -> Json.object(
                                "product", g.product(),
                                "amount", g.amount().inUnit(),
                                "unit", g.amount().unit()))
                        .toList(),
                "steps",
                jarSteps());
    }

    private Map<String, @Nullable Object> cleanoutJson(Cleanout clean) {
        return Json.object(
                "rinses",
                clean.rinses(),
                metric ? "rinse_l" : "rinse_gal",
                volume(clean.rinse_m3()),
                metric ? "heel_l" : "heel_gal",
                volume(clean.heel_m3()),
                "left_share",
                clean.left(),
                "aim_share",
                clean.aim(),
                "aim_is",
                "assumption",
                "steps",
                clean.steps().stream().map(words::say).toList());
    }

    private Map<String, @Nullable Object> waterJson(WaterQuality water) {
        double kgM3 = water.ammoniumSulfate_kgM3();
        return Json.object(
                "hardness_ppm",
                water.hardness(),
                "hard",
                water.isHard(),
                metric ? "ammonium_sulfate_kg_m3" : "ammonium_sulfate_lb_100_gal",
                metric ? kgM3 : Dimension.DENSITY.outside(100 * kgM3, "lb/gal"),
                metric ? "ammonium_sulfate_kg" : "ammonium_sulfate_lb",
                plan.loads().stream()
                        .map(l -> new Amount(kgM3 * l.volume_m3(), true, "lb").in(metric ? "kg" : "lb"))
                        .toList());
    }

    private Map<String, @Nullable Object> tenderJson(TenderTrips t) {
        return Json.object(
                "trips",
                trips(),
                "lasts_min",
                t.lasts_s(options.tender_m3(), options.rigs()) / MINUTE,
                "wait_min",
                t.wait_s(options.tender_m3(), options.rigs(), options.round_s()) / MINUTE,
                "cycle_min",
                t.cycle_s() / MINUTE,
                metric ? "area_ha_h" : "area_ac_h",
                Dimension.AREA.outside(t.rate_m2s() * HOUR, metric ? "ha" : "ac"));
    }

    private double volume(double volume_m3) {
        return Dimension.VOLUME.outside(volume_m3, metric ? "l" : "gal");
    }
}
