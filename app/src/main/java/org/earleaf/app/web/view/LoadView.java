// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Rig;
import org.earleaf.field.Zone;
import org.earleaf.label.Cautions;
import org.earleaf.load.LoadPlan;
import org.earleaf.load.LoadSheet;
import org.earleaf.load.NitrogenLoad;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadCautions;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixStep;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.PassNeed;
import org.earleaf.rig.RigSetup;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The sheet of one load of a pass.
 *
 * @param title "Load 1 of 3"
 * @param ground that it covers
 * @param limits what was looked at before the tank is filled
 */
public record LoadView(
        String title,
        String ground,
        Markup headline,
        OfPass pass,
        SetTo setTo,
        List<Step> steps,
        List<Limit> limits,
        Notes notes,
        List<Other> others) {
    private static final double M2_PER_HA = 10_000;

    /**
     * The pass that it is a load of.
     *
     * @param choice names it in addresses
     */
    public record OfPass(String place, String name, String choice, String when, String rig) {}

    /**
     * What the rig is set to.
     *
     * @param figures large, in a row
     * @param cannot why the rig cannot be set for it; empty when it can
     * @param notes what to mind in setting it
     */
    public record SetTo(List<Setting> figures, List<String> cannot, List<String> notes) {}

    /**
     * What is to be minded.
     *
     * @param part what goes with a part of the load
     * @param remarks on how the pass was parted into loads
     */
    public record Notes(List<String> cautions, String part, List<String> remarks) {}

    /** One figure that the rig is set to. */
    public record Setting(String name, String value, String unit, String note) {}

    public record Step(int order, String add, String amount, String how) {}

    public record Limit(String what, String found, Markup verdict) {}

    /** Another load of the same pass. */
    public record Other(int number, String link, boolean shown) {}

    /** The loads of one option with what they rest on. */
    public record Job(Zone zone, Option option, Rig rig, LoadPlan plan, List<LoadSheet> sheets, List<String> notSet) {}

    /** Parts the option's whole into loads and sets the rig; refused when that cannot be. */
    public static Job job(FarmDay day, Zone zone, Option option, Format format) {
        Rig rig = day.farm().rigs().stream()
                .filter(r -> r.name().equals(option.rig()))
                .findFirst()
                .orElseThrow(() -> new EarleafException(
                        Problem.of("load.a-rig-of-this-farm", Said.text("rig"), Said.text(option.rig()))));
        NitrogenProduct product = day.farm()
                .findNitrogen(option.product())
                .orElseThrow(() -> new EarleafException(
                        Problem.of("load.a-nitrogen-product-that", Said.text("product"), Said.text(option.product()))));
        LoadPlan plan = NitrogenLoad.plan(
                rig, product, option.nitrogen_kgHa(), zone.area_ha() * M2_PER_HA, LoadJob.Split.EQUAL);
        double height_m = day.outlook(zone).height_cm().p90() / 100;
        RigSetup.Answer answer = RigSetup.find(PassNeed.nitrogen(
                rig, product, option.nitrogen_kgHa(), zone.rowSpacing_m(), option.placement(), height_m));
        List<LoadSheet> sheets = NitrogenLoad.sheets(
                plan, zone.label(), rig, answer.setups().stream().findFirst(), List.of(), format.isMetric());
        return new Job(
                zone,
                option,
                rig,
                plan,
                sheets,
                answer.setups().isEmpty()
                        ? answer.reasons().stream()
                                .map(r -> format.words().say(r.said()))
                                .toList()
                        : List.of());
    }

    /** @param number of the load, from 1 */
    public static LoadView of(FarmDay day, Job job, int number, Format format) {
        LoadSheet sheet = job.sheets().get(number < 1 || number > job.sheets().size() ? 0 : number - 1);
        Load load = sheet.load();
        boolean metric = format.isMetric();
        String place = Places.of(day.farm()).of(job.zone());
        String choice = Choice.key(job.option());
        String area = area(load.area_m2(), format);
        String volume = Amounts.volume(load.volume_m3(), metric);
        List<Other> others = new ArrayList<>();
        for (LoadSheet s : job.sheets()) {
            int n = s.load().number();
            others.add(new Other(n, "/loads/" + place + "?choice=" + choice + "&load=" + n, n == load.number()));
        }
        return new LoadView(
                tell("page.load.load-of", "number", String.valueOf(load.number()), "of", load.of()),
                area,
                headline(job, volume, area),
                new OfPass(
                        place,
                        job.zone().label(),
                        choice,
                        Dates.full(job.option().date()),
                        job.rig().name()),
                setTo(job, sheet, volume, format),
                load.steps().stream().map(s -> step(s, format)).toList(),
                limits(day, job, format),
                new Notes(
                        cautions(sheet, format),
                        part(sheet, format),
                        job.plan().remarks().stream().map(format.words()::say).toList()),
                others);
    }

    private static SetTo setTo(Job job, LoadSheet sheet, String volume, Format format) {
        return new SetTo(
                settings(job, sheet, volume, format),
                job.notSet(),
                sheet.settings().map(LoadSheet.Settings::remarks).orElse(List.of()).stream()
                        .map(format.words()::say)
                        .toList());
    }

    private static Markup headline(Job job, String volume, String area) {
        String verb = job.plan().neat()
                ? tell(
                        "page.load.fill-of",
                        "volume",
                        volume,
                        "product",
                        job.option().product())
                : tell("page.load.mix", "volume", volume);
        return new Say()
                .sentence(tell("page.load.for", "verb", verb, "area", area))
                .done();
    }

    private static String area(double area_m2, Format format) {
        return Format.number(Dimension.AREA.outside(area_m2, format.typed("ac", "ha")), 1) + " " + format.areaUnit();
    }

    private static List<Setting> settings(Job job, LoadSheet sheet, String volume, Format format) {
        List<Setting> all = new ArrayList<>();
        int gap = volume.indexOf(' ');
        all.add(new Setting(tell("page.load.tank-to"), volume.substring(0, gap), volume.substring(gap + 1), ""));
        all.add(setting(
                tell("page.load.rate"),
                FlowPart.RATE,
                sheet.rate_m3m2(),
                format.isMetric() ? 0 : 1,
                format.nitrogen(job.option().nitrogen_kgHa()) + " " + format.nitrogenUnit(),
                format));
        sheet.settings().ifPresent(s -> {
            String slowest = figure(FlowPart.SPEED, s.slowest_ms(), 1, format);
            String fastest = figure(FlowPart.SPEED, s.fastest_ms(), 1, format);
            all.add(setting(
                    tell("page.load.speed"),
                    FlowPart.SPEED,
                    s.speed_ms(),
                    1,
                    tell("page.load.to", "slowest", slowest, "fastest", fastest),
                    format));
            all.add(setting(
                    tell("page.load.pressure"),
                    FlowPart.PRESSURE,
                    s.pressure_Pa(),
                    0,
                    tell("page.load.at-the-outlet"),
                    format));
            all.add(setting(
                    tell("page.load.each-outlet"),
                    FlowPart.FLOW,
                    s.flow_m3s(),
                    2,
                    format.words().say(s.outlet()),
                    format));
        });
        return all;
    }

    static Setting setting(String name, FlowPart part, double inside, int decimals, String note, Format format) {
        return new Setting(name, figure(part, inside, decimals, format), part.unit(format.isMetric()), note);
    }

    static String figure(FlowPart part, double inside, int decimals, Format format) {
        return Format.number(part.outside(inside, format.isMetric()), decimals);
    }

    private static Step step(MixStep s, Format format) {
        String how = format.words().say(s.how()) + " " + format.words().say(s.reason());
        return new Step(s.order(), s.product(), Amounts.text(s.amount(), format.isMetric()), how);
    }

    private static List<Limit> limits(FarmDay day, Job job, Format format) {
        Outlook o = day.outlook(job.zone());
        List<Limit> all = new ArrayList<>();
        String height = tell(
                "page.load.to-2",
                "length",
                format.length(o.height_cm().p50()),
                "lengthUnit",
                format.lengthUnit(),
                "length2",
                format.length(o.height_cm().p10()),
                "length3",
                format.length(o.height_cm().p90()));
        String clears = format.length(100 * job.rig().clearance_m()) + " " + format.lengthUnit();
        o.reach().stream()
                .filter(r -> r.rig().equals(job.rig().name()))
                .findFirst()
                .ifPresent(r -> all.add(new Limit(
                        tell("page.load.corn-under-the", "name", job.rig().name()),
                        tell("page.load.today-it-clears", "height", height, "clears", clears),
                        verdict(r, job.option()))));
        NitrogenLoad.overTheTop(
                        job.option().placement(), o.leafCollars(), job.option().nitrogen_kgHa())
                .ifPresent(s -> all.add(new Limit(
                        tell("page.load.nitrogen-over-leaves"),
                        format.words().say(s.said()),
                        s.within() ? Marks.done(tell("page.tank.within")) : Marks.out(tell("page.load.not-allowed")))));
        all.add(new Limit(
                tell("page.load.stage"), format.say(o.stage()), Marks.open(tell("page.load.look-again-at-the-field"))));
        return all;
    }

    private static Markup verdict(OutOfReach r, Option option) {
        if (r.lastDay().isEmpty() || r.lastDay().get().isBefore(option.date())) {
            return Marks.out(tell("page.load.out-of-reach-on-this"));
        }
        return r.date().isEmpty()
                ? Marks.done("fits")
                : Marks.done(tell(
                        "page.load.fits-until", "lastDay", Dates.day(r.lastDay().get())));
    }

    private static List<String> cautions(LoadSheet sheet, Format format) {
        List<String> all = new ArrayList<>();
        all.add(Words.here().say(Cautions.LABEL));
        // Said above in the words of every page.
        sheet.cautions().stream()
                .filter(c -> c != LoadCautions.Caution.LABEL)
                .forEach(c -> all.add(format.words().say(c.said())));
        return all;
    }

    private static String part(LoadSheet sheet, Format format) {
        boolean metric = format.isMetric();
        String goes = String.join(
                ", ",
                sheet.part().products().stream()
                        .map(g -> tell(
                                "page.load.of", "amount", Amounts.text(g.amount(), metric), "product", g.product()))
                        .toList());
        return tell(
                "page.load.part-load-with-each-moved",
                "volume",
                Amounts.volume(sheet.part().volume_m3(), metric),
                "area",
                area(sheet.part().area_m2(), format),
                "goes",
                goes);
    }

    /**
     * The option that an address names: by its key, else the one proposed, else the best; none of itself where a soil
     * test shows that nothing is needed.
     */
    public static Optional<Option> find(FarmDay day, Zone zone, String choice) {
        if (!zone.isCorn()) {
            return Optional.empty();
        }
        if (!choice.isEmpty()) {
            return Choice.find(day.options(zone), choice);
        }
        return day.brief().passes().stream()
                .filter(Option::isNitrogen)
                .filter(p -> p.field().equals(zone.field()) && p.zone().equals(zone.zone()))
                .findFirst()
                .or(() -> unlessEnough(day, zone).findFirst());
    }

    /** The options of a zone, best first; none where a soil test shows that nothing is needed. */
    static Stream<Option> unlessEnough(FarmDay day, Zone zone) {
        boolean enough = day.answer(zone).tested().enough().isPresent();
        return enough ? Stream.empty() : day.options(zone).stream();
    }
}
