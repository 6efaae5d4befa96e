// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.Places;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Days;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.RecipeEntry;
import org.earleaf.entry.SetupEntry;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.WorkingSpeed;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.label.CropStages;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LoadDraft;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadSteps;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.MixLine;
import org.earleaf.outlook.Outlook;
import org.earleaf.rig.FlowPart;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A load to be made or changed, as it stands in the form. "from" is the load that told what labels ask about, a proposal
 * that somebody has to look at again: "looked" is yes once somebody has.
 */
public record LoadForm(Boxes boxes) {
    private static final double LHA_PER_M3M2 = 1e7;
    /** A changed load stays one load; whether its tank holds it is asked when it is locked. */
    private static final double ANY_TANK_M3 = 1e4;

    /** What a load is to be made of, and where and by what it goes. */
    record Chosen(Recipe recipe, Zone zone, Rig rig) {}

    /** What is known before it is told; what another load told of this field is proposed, to be looked at again. */
    static LoadForm proposed(FarmDay day, Chosen chosen, List<TankLoad> others, String person, Format format) {
        Map<String, String> boxes = new HashMap<>(asPlanned(day, chosen, format));
        others.stream()
                .filter(l -> l.grounds().stream().anyMatch(g -> g.field().equals(chosen.zone.field())))
                .reduce((before, after) -> after)
                .ifPresent(last -> boxes.putAll(asTold(last, format)));
        boxes.put("person", person);
        return new LoadForm(new Boxes(boxes));
    }

    /** What recipe, rig and season tell. */
    private static Map<String, String> asPlanned(FarmDay day, Chosen chosen, Format format) {
        Zone zone = chosen.zone;
        Rig rig = chosen.rig;
        Optional<Outlook> seen = zone.isCorn() ? Optional.of(day.outlook(zone)) : Optional.empty();
        double height_m = seen.map(o -> o.height_cm().p90() / 100).orElse(Double.NaN);
        double rate_m3m2 = chosen.recipe.carrier_LHa() / LHA_PER_M3M2;
        Placement placement = usual(rig);
        Map<String, String> boxes = new HashMap<>();
        boxes.put("recipe", chosen.recipe.name());
        boxes.put("place", Places.of(day.farm()).of(zone));
        boxes.put("rig", rig.name());
        boxes.put("placement", placement.word());
        boxes.put("date", day.on().toString());
        boxes.put("area", area(zone.area_ha(), format));
        boxes.put("rate", Double.isNaN(rate_m3m2) ? "" : FlowPart.RATE.text(rate_m3m2, format.isMetric()));
        boxes.put("height", length(height_m, format.isMetric() ? "cm" : "in"));
        boxes.put(
                "speed", speed(WorkingSpeed.of(placement, height_m).within(rig).cruise_ms(), format));
        boxes.put("heel", volume(rig.tank().unapplied_m3(), format));
        seen.map(Outlook::stage)
                .map(format::say)
                .filter(s -> CropStages.find(zone.crop(), s).isPresent())
                .ifPresent(s -> boxes.put("stage", s));
        seen.flatMap(o -> o.calendar().maturity().p10()).ifPresent(d -> boxes.put("harvest", d.toString()));
        return boxes;
    }

    /** What another load of this field told of droplets, boom and what is near. */
    private static Map<String, String> asTold(TankLoad last, Format format) {
        LabelWork.Driving driving = last.driving();
        LabelWork.Ground ground = last.grounds().get(0).ground();
        String far = format.isMetric() ? "m" : "ft";
        return Map.of(
                "droplets", driving.droplets().map(Enum::name).orElse(""),
                "boom", length(driving.boom_m(), format.isMetric() ? "cm" : "in"),
                "water", length(ground.water_m(), far),
                "sensitive", length(ground.sensitive_m(), far),
                "from", last.id());
    }

    /** A kept load as it stands, to be changed. */
    static LoadForm of(TankLoad load, LoadJobs.Job job, long version, FarmDay day, String person, Format format) {
        LoadGround g = load.grounds().get(0);
        boolean metric = format.isMetric();
        return new LoadForm(new Boxes(Map.ofEntries(
                Map.entry("recipe", job.recipe()),
                Map.entry("place", Places.of(day.farm()).of(g.field(), g.zone())),
                Map.entry("rig", load.rig()),
                Map.entry("placement", job.placement().word()),
                Map.entry("date", load.date().toString()),
                Map.entry("area", area(g.area_ha(), format)),
                Map.entry("rate", FlowPart.RATE.text(load.rate_m3m2(), metric)),
                Map.entry("stage", Double.isNaN(g.stage()) ? "" : CropStages.word(g.crop(), g.stage())),
                Map.entry("height", length(g.standing().height_m(), metric ? "cm" : "in")),
                Map.entry(
                        "harvest",
                        g.standing().harvest().map(LocalDate::toString).orElse("")),
                Map.entry("droplets", load.driving().droplets().map(Enum::name).orElse("")),
                Map.entry("boom", length(load.driving().boom_m(), metric ? "cm" : "in")),
                Map.entry("speed", speed(load.driving().speed_ms(), format)),
                Map.entry("water", length(g.ground().water_m(), metric ? "m" : "ft")),
                Map.entry("sensitive", length(g.ground().sensitive_m(), metric ? "m" : "ft")),
                Map.entry("certified", load.driving().certified() ? "yes" : "no"),
                Map.entry("person", person),
                Map.entry("version", String.valueOf(version)),
                Map.entry("heel", volume(load.unapplied_m3(), format)))));
    }

    public String box(String name) {
        return boxes.box(name);
    }

    String said(String name) {
        return boxes.said(name);
    }

    private static String volume(double m3, Format format) {
        String unit = format.isMetric() ? "L" : "gal";
        return Figure.text(Dimension.VOLUME.outside(m3, unit), 4) + " " + unit;
    }

    private static String area(double ha, Format format) {
        return Figure.text(format.areaValue(ha), 4) + format.typed(" ac", " ha");
    }

    private static String length(double m, String unit) {
        return Double.isNaN(m) ? "" : Figure.text(Dimension.LENGTH.outside(m, unit), 3) + " " + unit;
    }

    private static String speed(double ms, Format format) {
        return Double.isNaN(ms) ? "" : FlowPart.SPEED.text(ms, format.isMetric());
    }

    private static Placement usual(Rig rig) {
        return List.of(Placement.OVER_THE_TOP, Placement.BROADCAST).stream()
                .filter(rig.placements()::contains)
                .findFirst()
                .orElseGet(() -> rig.placements().stream().sorted().findFirst().orElse(Placement.BROADCAST));
    }

    /** The plan that the form describes. */
    LoadDraft draft(FarmDay day, LabelBook labels, String job, Optional<TankLoad> like) {
        Zone zone = Places.of(day.farm())
                .find(said("place"))
                .orElseThrow(() -> EarleafException.coded(
                        "field.unknown",
                        "field",
                        said("place"),
                        "fields",
                        day.farm().zones().stream().map(Zone::label).toList()));
        Rig machine = machine(day);
        List<MixLine> lines = lines(day, like);
        requireLooked(lines);
        boolean solution = lines.size() == 1 && lines.get(0).isNitrogenSolution();
        return new LoadDraft(
                day.farm(),
                labels,
                new LoadDraft.Trip(job, zone, machine, date("date").orElse(day.on())),
                lines,
                new LoadDraft.Tanks(
                        solution && said("rate").isEmpty() ? Double.NaN : number("rate", Ranges.CARRIER, "rate"),
                        number("area", Ranges.LOAD_AREA, tell("page.load.ground-of-this-pass")),
                        like.isPresent() ? ANY_TANK_M3 : machine.tank_m3(),
                        said("heel").isEmpty() ? 0 : number("heel", Ranges.HEEL, tell("page.load.heel-and-lines"))),
                seen(day, zone));
    }

    /** What another load told counts once somebody says that it holds today. */
    private void requireLooked(List<MixLine> lines) {
        boolean proposed = !said("from").isEmpty() && lines.stream().anyMatch(MixLine::isLabelled);
        if (proposed && !boxes.says("looked")) {
            throw new EarleafException(Problem.of(
                    "load.that-somebody-has-looked",
                    Said.text("What labels ask about"),
                    Said.of("found.droplets-boom-and-distances", "from", said("from"))));
        }
    }

    Rig machine(FarmDay day) {
        return SetupEntry.rig(day.farm().rigs(), said("rig"));
    }

    private List<MixLine> lines(FarmDay day, Optional<TankLoad> like) {
        List<Recipe> recipes = day.farm().shelf().recipes();
        String name = said("recipe");
        boolean known = recipes.stream().anyMatch(r -> r.name().equals(name));
        return like.isPresent() && !known
                ? LoadSteps.lines(like.get(), day.farm())
                : LoadDraft.lines(day.farm(), RecipeEntry.named(recipes, name));
    }

    private LoadDraft.Seen seen(FarmDay day, Zone zone) {
        String told = said("stage");
        double at = told.isEmpty()
                ? Double.NaN
                : CropStages.find(zone.crop(), told)
                        .orElseThrow(() -> EarleafException.coded(
                                "stage.unknown", "stage", told, "stages", CropStages.said(zone.crop())));
        return new LoadDraft.Seen(
                at,
                day.on(),
                optional("height", Ranges.LOAD_HEIGHT, tell("page.load.crop-height")),
                date("harvest"),
                new LabelWork.Driving(
                        said("droplets").isEmpty()
                                ? Optional.empty()
                                : Optional.of(SetupEntry.droplet(said("droplets"))),
                        optional("boom", Ranges.BOOM, tell("page.load.boom-over-the-crop")),
                        optional("speed", Ranges.SPEED, "speed"),
                        boxes.says("certified")),
                optional("water", Ranges.DISTANCE, tell("page.load.distance-to-water")),
                optional("sensitive", Ranges.DISTANCE, tell("page.load.distance-to-what-the-mix")));
    }

    Placement placed() {
        return SetupEntry.placement(said("placement"));
    }

    private double optional(String name, Allowed allowed, String where) {
        return boxes.isEmpty(name) ? Double.NaN : number(name, allowed, where);
    }

    private double number(String name, Allowed allowed, String where) {
        return allowed.read(said(name), where);
    }

    private Optional<LocalDate> date(String name) {
        return boxes.isEmpty(name) ? Optional.empty() : Optional.of(Days.read(said(name), name));
    }
}
