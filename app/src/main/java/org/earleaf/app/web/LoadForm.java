// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
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
import org.jspecify.annotations.Nullable;

/**
 * A load to be made or changed, as it stands in the form.
 *
 * @param from load that told what labels ask about, a proposal that somebody has to look at again; empty: none
 * @param looked "yes" once somebody has
 * @param heel what fills heel and lines
 */
public record LoadForm(
        @Nullable String recipe,
        @Nullable String place,
        @Nullable String rig,
        @Nullable String placement,
        @Nullable String date,
        @Nullable String area,
        @Nullable String rate,
        @Nullable String stage,
        @Nullable String height,
        @Nullable String harvest,
        @Nullable String droplets,
        @Nullable String boom,
        @Nullable String speed,
        @Nullable String water,
        @Nullable String sensitive,
        @Nullable String certified,
        @Nullable String person,
        @Nullable String version,
        @Nullable String from,
        @Nullable String looked,
        @Nullable String heel) {
    private static final double LHA_PER_M3M2 = 1e7;
    /** A changed load stays one load; whether its tank holds it is asked when it is locked. */
    private static final double ANY_TANK_M3 = 1e4;

    /** What is known before it is told; what another load told of this field is proposed, to be looked at again. */
    static LoadForm proposed(
            FarmDay day, Recipe recipe, Zone zone, Rig rig, List<TankLoad> others, String person, Format format) {
        Optional<Outlook> seen = zone.isCorn() ? Optional.of(day.outlook(zone)) : Optional.empty();
        double height_m = seen.map(o -> o.height_cm().p90() / 100).orElse(Double.NaN);
        Placement placement = usual(rig);
        Optional<TankLoad> last = others.stream()
                .filter(l -> l.grounds().stream().anyMatch(g -> g.field().equals(zone.field())))
                .reduce((a, b) -> b);
        double rate_m3m2 = recipe.carrier_LHa() / LHA_PER_M3M2;
        return new LoadForm(
                recipe.name(),
                Places.of(day.farm()).of(zone),
                rig.name(),
                placement.word(),
                day.on().toString(),
                area(zone.area_ha(), format),
                Double.isNaN(rate_m3m2) ? "" : FlowPart.RATE.text(rate_m3m2, format.isMetric()),
                seen.map(Outlook::stage)
                        .map(format::say)
                        .filter(s -> CropStages.find(zone.crop(), s).isPresent())
                        .orElse(""),
                length(height_m, format.isMetric() ? "cm" : "in"),
                seen.flatMap(o -> o.calendar().maturity().p10())
                        .map(LocalDate::toString)
                        .orElse(""),
                last.flatMap(l -> l.driving().droplets()).map(Enum::name).orElse(""),
                last.map(l -> length(l.driving().boom_m(), format.isMetric() ? "cm" : "in"))
                        .orElse(""),
                speed(WorkingSpeed.of(placement, height_m).within(rig).cruise_ms(), format),
                last.map(l -> length(l.grounds().get(0).ground().water_m(), format.isMetric() ? "m" : "ft"))
                        .orElse(""),
                last.map(l -> length(l.grounds().get(0).ground().sensitive_m(), format.isMetric() ? "m" : "ft"))
                        .orElse(""),
                "",
                person,
                "",
                last.map(TankLoad::id).orElse(""),
                "",
                volume(rig.tank().unapplied_m3(), format));
    }

    /** A kept load as it stands, to be changed. */
    static LoadForm of(TankLoad load, LoadJobs.Job job, long version, FarmDay day, String person, Format format) {
        LoadGround g = load.grounds().get(0);
        boolean metric = format.isMetric();
        return new LoadForm(
                job.recipe(),
                Places.of(day.farm()).of(g.field(), g.zone()),
                load.rig(),
                job.placement().word(),
                load.date().toString(),
                area(g.area_ha(), format),
                FlowPart.RATE.text(load.rate_m3m2(), metric),
                Double.isNaN(g.stage()) ? "" : CropStages.word(g.crop(), g.stage()),
                length(g.standing().height_m(), metric ? "cm" : "in"),
                g.standing().harvest().map(LocalDate::toString).orElse(""),
                load.driving().droplets().map(Enum::name).orElse(""),
                length(load.driving().boom_m(), metric ? "cm" : "in"),
                speed(load.driving().speed_ms(), format),
                length(g.ground().water_m(), metric ? "m" : "ft"),
                length(g.ground().sensitive_m(), metric ? "m" : "ft"),
                load.driving().certified() ? "yes" : "no",
                person,
                String.valueOf(version),
                "",
                "",
                volume(load.unapplied_m3(), format));
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
                .find(ReadingForm.text(place))
                .orElseThrow(() -> EarleafException.coded(
                        "field.unknown",
                        "field",
                        ReadingForm.text(place),
                        "fields",
                        day.farm().zones().stream().map(Zone::label).toList()));
        Rig machine = machine(day);
        List<MixLine> lines = lines(day, like);
        requireLooked(lines);
        boolean solution = lines.size() == 1 && lines.get(0).isNitrogenSolution();
        return new LoadDraft(
                day.farm(),
                labels,
                new LoadDraft.Trip(job, zone, machine, date("date", date).orElse(day.on())),
                lines,
                new LoadDraft.Tanks(
                        solution && ReadingForm.text(rate).isEmpty()
                                ? Double.NaN
                                : number(rate, Ranges.CARRIER, "rate"),
                        number(area, Ranges.LOAD_AREA, tell("page.load.ground-of-this-pass")),
                        like.isPresent() ? ANY_TANK_M3 : machine.tank_m3(),
                        ReadingForm.text(heel).isEmpty()
                                ? 0
                                : number(heel, Ranges.HEEL, tell("page.load.heel-and-lines"))),
                seen(day, zone));
    }

    /** What another load told counts once somebody says that it holds today. */
    private void requireLooked(List<MixLine> lines) {
        boolean proposed = !ReadingForm.text(from).isEmpty() && lines.stream().anyMatch(MixLine::isLabelled);
        if (proposed && !"yes".equals(looked)) {
            throw new EarleafException(Problem.of(
                    "load.that-somebody-has-looked",
                    Said.text("What labels ask about"),
                    Said.of("found.droplets-boom-and-distances", "from", ReadingForm.text(from))));
        }
    }

    Rig machine(FarmDay day) {
        return SetupEntry.rig(day.farm().rigs(), ReadingForm.text(rig));
    }

    private List<MixLine> lines(FarmDay day, Optional<TankLoad> like) {
        List<Recipe> recipes = day.farm().shelf().recipes();
        String name = ReadingForm.text(recipe);
        boolean known = recipes.stream().anyMatch(r -> r.name().equals(name));
        return like.isPresent() && !known
                ? LoadSteps.lines(like.get(), day.farm())
                : LoadDraft.lines(day.farm(), RecipeEntry.named(recipes, name));
    }

    private LoadDraft.Seen seen(FarmDay day, Zone zone) {
        String told = ReadingForm.text(stage);
        double at = told.isEmpty()
                ? Double.NaN
                : CropStages.find(zone.crop(), told)
                        .orElseThrow(() -> EarleafException.coded(
                                "stage.unknown", "stage", told, "stages", CropStages.said(zone.crop())));
        return new LoadDraft.Seen(
                at,
                day.on(),
                optional(height, Ranges.LOAD_HEIGHT, tell("page.load.crop-height")),
                date("harvest", harvest),
                new LabelWork.Driving(
                        ReadingForm.text(droplets).isEmpty()
                                ? Optional.empty()
                                : Optional.of(SetupEntry.droplet(ReadingForm.text(droplets))),
                        optional(boom, Ranges.BOOM, tell("page.load.boom-over-the-crop")),
                        optional(speed, Ranges.SPEED, "speed"),
                        "yes".equals(certified)),
                optional(water, Ranges.DISTANCE, tell("page.load.distance-to-water")),
                optional(sensitive, Ranges.DISTANCE, tell("page.load.distance-to-what-the-mix")));
    }

    Placement placed() {
        return SetupEntry.placement(ReadingForm.text(placement));
    }

    private static double optional(@Nullable String said, Allowed allowed, String where) {
        return ReadingForm.text(said).isEmpty() ? Double.NaN : number(said, allowed, where);
    }

    private static double number(@Nullable String said, Allowed allowed, String where) {
        return allowed.read(ReadingForm.text(said), where);
    }

    private static Optional<LocalDate> date(String where, @Nullable String said) {
        String text = ReadingForm.text(said);
        return text.isEmpty() ? Optional.empty() : Optional.of(Days.read(text, where));
    }
}
