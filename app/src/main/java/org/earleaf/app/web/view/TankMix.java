// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.MixTold;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Setting;
import org.earleaf.load.JarTest;
import org.earleaf.load.TankAdvice;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.Cleanout;
import org.earleaf.mix.JarResult;
import org.earleaf.mix.MixRules;
import org.earleaf.mix.TenderTrips;
import org.earleaf.rig.FieldCapacity;
import org.earleaf.units.Figure;

/**
 * What is to be known of a kept load's mix before it is poured.
 *
 * @param limits what binds the tank as a whole
 * @param water hardness and conditioner, where the water is known
 * @param tender how long a tenderful lasts
 * @param lapsed why the rig's calibration does not hold; empty: it does
 */
public record TankMix(
        Quarrels quarrels,
        List<String> limits,
        Jar jar,
        Clean clean,
        List<String> water,
        String tender,
        String lapsed) {
    /**
     * Known quarrels between its products.
     *
     * @param mayOverride id of a rule that stops it and that somebody may set aside; empty: none
     * @param who may do so
     * @param aside stops that were set aside
     */
    public record Quarrels(List<Rule> rules, String mayOverride, String who, List<String> aside) {}

    /**
     * The jar test.
     *
     * @param holds what goes in the jar; empty: a product that goes on alone
     * @param because why a test is asked for; empty: it is worth making
     * @param result what the newest showed; empty: none was made
     * @param stops whether it may not be poured as the jar stands
     */
    public record Jar(String holds, List<String> steps, String because, String result, boolean stops) {}

    /**
     * The tank before.
     *
     * @param residue what it has to be cleaned of; empty: nothing
     * @param steps how, and with how many rinses
     */
    public record Clean(String residue, List<String> steps, String bleach) {}

    private static final double MINUTE_S = 60;

    public record Rule(String id, String text, Markup weight, boolean stop) {}

    static TankMix of(TankLoad load, TankView.Shop shop, Format format) {
        boolean metric = format.isMetric();
        org.earleaf.app.words.Words words = format.words();
        Optional<Rig> rig = shop.day().farm().rigs().stream()
                .filter(r -> r.name().equalsIgnoreCase(load.rig()))
                .findFirst();
        double heel_m3 = rig.map(r -> r.tank().unapplied_m3()).orElse(0.0);
        double tank_m3 = rig.map(Rig::tank_m3).orElse(load.volume_m3());
        Optional<Cleanout> clean = shop.looked().residue().map(r -> r.cleanout(heel_m3, tank_m3, shop.labels()));
        TankAdvice advice = TankAdvice.of(
                load,
                shop.labels(),
                shop.looked().quarrels(),
                clean.orElseGet(() -> Cleanout.of(heel_m3, tank_m3, java.util.Set.of())));
        return new TankMix(
                quarrels(load, advice, format),
                advice.limits().stream().map(l -> words.say(l.said())).toList(),
                new Jar(
                        advice.jar().map(MixTold::jar).orElse(""),
                        Arrays.stream(JarTest.Step.values()).map(words::say).toList(),
                        advice.jarAsked() ? words.say("jar.because") : "",
                        shop.looked().jar().map(j -> words.say(j.said())).orElse(""),
                        !JarResult.allows(shop.looked().jar(), load.asksForJar())),
                new Clean(
                        shop.looked().residue().map(r -> words.say(r.said())).orElse(""),
                        clean.map(c -> clean(c, format)).orElse(List.of()),
                        words.say(Cleanout.Step.NO_BLEACH)),
                shop.looked()
                        .water()
                        .map(w -> water(w.source(), w.read(), load, metric))
                        .orElse(List.of()),
                rig.map(r -> tender(load, r, shop)).orElse(""),
                shop.looked().lapsed().map(words::say).orElse(""));
    }

    private static Quarrels quarrels(TankLoad load, TankAdvice advice, Format format) {
        Optional<MixRules.Found> open = advice.quarrels().stream()
                .filter(q -> q.isStop() && !q.mayOverride().isEmpty() && !isAside(load, q))
                .findFirst();
        return new Quarrels(
                advice.quarrels().stream()
                        .map(q -> rule(q, isAside(load, q), format))
                        .toList(),
                open.map(MixRules.Found::id).orElse(""),
                open.map(MixRules.Found::mayOverride).orElse(""),
                load.overridden().stream()
                        .map(o -> format.words().say(o.said()))
                        .toList());
    }

    private static boolean isAside(TankLoad load, MixRules.Found rule) {
        return load.overridden().stream().anyMatch(o -> o.rule().equals(rule.id()));
    }

    private static Rule rule(MixRules.Found q, boolean aside, Format format) {
        Markup weight =
                switch (q.weight()) {
                    case STOP ->
                        aside
                                ? Marks.soon(tell("page.tank-mix.set-aside"))
                                : Marks.out(tell("page.tank-mix.do-not-mix"));
                    case MIND -> Marks.soon("mind:");
                    case NOTE -> Marks.open("note:");
                };
        return new Rule(q.id(), format.words().say(q.rule()), weight, q.isStop() && !aside);
    }

    private static List<String> clean(Cleanout c, Format format) {
        List<String> all = new ArrayList<>();
        c.steps().stream()
                .filter(s -> s != Cleanout.Step.NO_BLEACH)
                .forEach(s -> all.add(format.words().say(s)));
        all.addAll(MixTold.rinses(c, format.isMetric()));
        return all;
    }

    private static List<String> water(
            String source, org.earleaf.mix.WaterQuality water, TankLoad load, boolean metric) {
        return List.of(
                MixTold.hardness(Phrases.capital(source), water),
                tell(
                        "page.tank-mix.in-this-load",
                        "conditioner",
                        MixTold.conditioner(water, load.volume_m3(), metric)));
    }

    /** How long a tenderful lasts one rig that works without a break. */
    private static String tender(TankLoad load, Rig rig, TankView.Shop shop) {
        Optional<Rig> tender = shop.day().farm().rigs().stream()
                .filter(r -> r.isTender() && r.tank_m3() > 0)
                .findFirst();
        if (tender.isEmpty() || !(load.driving().speed_ms() > 0)) {
            return "";
        }
        TenderTrips trips = TenderTrips.of(
                load.volume_m3(),
                load.rate_m3m2(),
                FieldCapacity.capacity_m2s(
                        load.driving().speed_ms(), rig.width_m(), rig.pace().fieldEfficiency()),
                shop.day().farm().settings().of(Setting.FILL_TIME) * MINUTE_S,
                0);
        double lasts_s = trips.lasts_s(tender.get().tank_m3(), 1);
        return tell(
                "page.tank-mix.the-carries-loads-like",
                "name",
                tender.get().name(),
                "text",
                Figure.text(tender.get().tank_m3() / load.volume_m3(), 2),
                "text2",
                Figure.text(lasts_s / MINUTE_S, 2));
    }
}
