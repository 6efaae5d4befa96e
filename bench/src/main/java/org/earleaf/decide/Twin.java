// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.earleaf.farm.ClearanceFit;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.label.LabelBook;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.ParameterDraws;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;
import org.earleaf.weather.Draws;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherSeries;

/**
 * A made truth beside its forecast: one field-season on real weather whose soil and crop are drawn from the same spreads
 * as the members of an ensemble, but with another seed. The forecast knows the weather up to its day and the readings
 * handed to it, nothing else.
 */
final class Twin {
    static final double CORN_USD = 4.50;
    static final double NITROGEN_USD_LB = .60;
    static final double PASS_USD_AC = 9;
    private static final int LANES = 128;

    private final WeatherSeries record;
    private final Site site;
    private final Zone zone;
    private final LocalDate on;
    private final double starter_kgHa;
    private final ZoneSeason truth;
    private final Forcing weather;
    private final SplittableRandom random;
    private final List<Double> heights_cm = new ArrayList<>();

    Twin(WeatherSeries record, Site site, int year, SoilProfile soil, PreviousCrop before, long seed) {
        this.record = record;
        this.site = site;
        random = new SplittableRandom(seed);
        on = LocalDate.of(year, 6, 18).plusDays(random.nextInt(5));
        starter_kgHa = Units.kgHa(40 + 10 * random.nextInt(8));
        double unknown = Double.NaN;
        zone = new Zone(
                ZoneName.of("Twin " + seed, ""),
                30,
                new Zone.Planting(
                        "corn",
                        LocalDate.of(year, 5, 1).plusDays(random.nextInt(12)),
                        Hybrid.ofMaturity(108),
                        8,
                        .762,
                        unknown),
                new Zone.Land(soil, Drainage.TILED, unknown),
                new Zone.Seedbed(before, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
        ZoneSeason usual = ZoneSeason.of(farm(List.of()), zone, record, on);
        ParameterSet drawn =
                ParameterDraws.members(usual.parameters(), 1, ~seed * 31).get(0);
        truth = new ZoneSeason(usual.setup(), drawn, usual.events(), usual.flags());
        weather = Forcing.of(record.between(usual.setup().first(), LocalDate.of(year, 10, 31)), site);
    }

    /** The farm as its grower knows it on the day, with these readings. */
    Farm farm(List<Reading> readings) {
        return farm(readings, List.of(), on);
    }

    /** The same on a later day, with the passes made since. */
    Farm farm(List<Reading> readings, List<Regret.Made> made, LocalDate date) {
        double perKg = NITROGEN_USD_LB / Units.KG_PER_LB;
        Pass starter = pass(zone.planted(), starter_kgHa, Placement.INCORPORATED);
        Rig highboy = new Rig(
                RigId.called("highboy"),
                "self-propelled",
                new Rig.Clearance(1.83, Double.NaN),
                new Rig.Boom(27, 2, 1e5, 4e5),
                new Rig.Tank(4, 0, 0),
                new Rig.Pace(2, 5, .65),
                Set.of(Placement.ROW_BASE),
                PASS_USD_AC / Units.HA_PER_AC);
        Rig coulter = new Rig(
                RigId.called("coulter bar"),
                "toolbar",
                new Rig.Clearance(1.1, Double.NaN),
                new Rig.Boom(12, 1, 1e5, 4e5),
                new Rig.Tank(4, 0, 0),
                new Rig.Pace(2, 4, .65),
                Set.of(Placement.MID_INJECT),
                (PASS_USD_AC + 2) / Units.HA_PER_AC);
        List<Pass> passes = new ArrayList<>(List.of(starter));
        for (Regret.Made m : made) {
            passes.add(pass(m.date(), m.nitrogen_kgHa(), m.placement()));
        }
        WeatherBook known = new WeatherBook(
                record.between(record.first(), date), List.of(), List.of(), List.of(), List.of(), List.of());
        return new Farm(
                "Twin",
                site,
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(zone), List.of()),
                new Farm.Work(passes, readings, List.of(), List.of()),
                new Farm.Shelf(List.of(), List.of(), List.of(highboy, coulter), List.of(), List.of()),
                known,
                new Farm.Rules(
                        new Prices(CORN_USD, 0, perKg, Map.of("UAN 32", perKg)),
                        Settings.USUAL.with(Setting.HIRED_RIG_NEAR, 0).with(Setting.AIRCRAFT_NEAR, 0),
                        LabelBook.EMPTY),
                List.of());
    }

    private Pass pass(LocalDate date, double kgHa, Placement placement) {
        return new Pass(
                "p" + date,
                new FieldPart(zone.field(), ""),
                date,
                "UAN 32",
                new Pass.Rate(kgHa, "kg N/ha", kgHa),
                placement,
                Inhibitor.NONE,
                Pass.State.MADE);
    }

    Zone zone() {
        return zone;
    }

    LocalDate on() {
        return on;
    }

    double starter_kgHa() {
        return starter_kgHa;
    }

    PreviousCrop before() {
        return zone.seedbed().previousCrop();
    }

    /** What a grower would read in the truth, with the error of the reading. */
    List<Reading> readings(boolean nitrate, boolean stage, boolean height) {
        List<Reading> all = new ArrayList<>();
        double[] z = {Draws.normal(random), Draws.normal(random), Draws.normal(random)};
        if (nitrate) {
            Reading r = reading(Reading.Kind.NITRATE, tested(), 0, 304.8);
            all.add(with(r, Math.max(.2, seen(r) * Math.exp(.30 * z[0]))));
        }
        if (stage) {
            Reading r = reading(Reading.Kind.STAGE, on.minusDays(5), Double.NaN, Double.NaN);
            all.add(with(r, Math.max(0, seen(r) + .4 * z[1])));
        }
        if (height) {
            Reading r = reading(Reading.Kind.HEIGHT, on.minusDays(2), Double.NaN, Double.NaN);
            double h = seen(r);
            all.add(with(r, Math.max(1, h + (4 + .04 * h) * z[2])));
        }
        return all;
    }

    private Reading reading(Reading.Kind kind, LocalDate date, double top, double bottom) {
        return new Reading(
                "r",
                new FieldPart(zone.field(), ""),
                date,
                kind,
                0,
                "",
                new Reading.Sampled(top, bottom, Reading.Position.RANDOM),
                "",
                Scouted.NOTHING);
    }

    private static Reading with(Reading r, double value) {
        return new Reading(
                r.id(),
                new FieldPart(r.field(), r.zone()),
                r.date(),
                r.kind(),
                value,
                String.valueOf(value),
                new Reading.Sampled(r.top_mm(), r.bottom_mm(), r.position()),
                r.note(),
                Scouted.NOTHING);
    }

    private double seen(Reading r) {
        SeasonRun run = truth.start(weather);
        truth.advance(run, r.date().plusDays(1));
        return Observing.of(run, 0, r);
    }

    /** Day of the soil test. */
    LocalDate tested() {
        return on.minusDays(8);
    }

    /** Nitrate of the top foot in truth on the morning after the test [mg/kg]. */
    double nitrate_ppm() {
        SeasonRun run = truth.start(weather);
        truth.advance(run, tested().plusDays(1));
        return Observing.of(run, 0, reading(Reading.Kind.NITRATE, on, 0, 304.8));
    }

    /** The truth to its end, with nothing more done. */
    SeasonRun end() {
        SeasonRun run = truth.start(weather);
        truth.finish(run, LocalDate.of(on.getYear(), 10, 31));
        return run;
    }

    /** Grain of the truth under each course of passes. */
    double[] yields_kgHa(List<List<Regret.Made>> courses) {
        double[] yields = new double[courses.size()];
        for (int k = 0; k < yields.length; k += LANES) {
            List<List<Regret.Made>> some = courses.subList(k, Math.min(yields.length, k + LANES));
            SeasonRun run = SeasonRun.start(
                    truth.setup(),
                    Collections.nCopies(some.size(), truth.parameters()),
                    List.of(weather),
                    new int[some.size()]);
            truth.advance(run, on);
            LocalDate last = LocalDate.of(on.getYear(), 10, 31);
            while (!run.date().isAfter(last) && !run.allOver()) {
                for (int lane = 0; lane < some.size(); lane++) {
                    apply(run, lane, some.get(lane));
                }
                truth.advance(run, run.date().plusDays(1));
            }
            int at = k;
            for (int lane = 0; lane < some.size(); lane++) {
                yields[at + lane] = run.yield(lane).grain_kgHa();
            }
        }
        return yields;
    }

    private static void apply(SeasonRun run, int lane, List<Regret.Made> course) {
        for (Regret.Made m : course) {
            if (m.date().equals(run.date())) {
                run.apply(lane, m.event().pass());
            }
        }
    }

    /** Whether the crop of the truth, if nothing more is done, still passes under the rig of that placement. */
    boolean mayEnter(LocalDate date, Placement placement) {
        if (heights_cm.isEmpty()) {
            SeasonRun run = truth.start(weather);
            truth.advance(run, on);
            while (!run.date().isAfter(on.plusDays(40))) {
                heights_cm.add(run.height_cm(0));
                truth.advance(run, run.date().plusDays(1));
            }
        }
        double height_m = heights_cm.get((int) (date.toEpochDay() - on.toEpochDay())) / 100;
        return farm(List.of()).rigs().stream()
                .anyMatch(r -> r.placements().contains(placement) && ClearanceFit.clears(r, placement, height_m));
    }
}
