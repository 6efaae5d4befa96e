// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
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
import org.earleaf.field.Irrigation;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.label.LabelBook;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** An invented farm of one field with invented weather of 24 years, the last one running to 15 July. */
public final class TestFarm {
    public static final LocalDate ON = LocalDate.of(2024, 6, 28);

    private double corn = 4.5;
    private double nitrogen_usdLb = .6;
    private double starter_lbAc = 40;
    private double clearance_in = 72;
    private double rainScale = 1;
    private Settings settings = Settings.USUAL;
    private Drainage drainage = Drainage.TILED;
    private LocalDate planted = LocalDate.of(2024, 5, 6);
    private final List<Reading> readings = new ArrayList<>();
    private final List<Irrigation> irrigation = new ArrayList<>();
    private final List<PastYear> past = new ArrayList<>();
    private final Map<LocalDate, Double> storms = new HashMap<>();

    TestFarm corn(double usdBu) {
        corn = usdBu;
        return this;
    }

    TestFarm nitrogen(double usdLb) {
        nitrogen_usdLb = usdLb;
        return this;
    }

    public TestFarm starter(double lbAc) {
        starter_lbAc = lbAc;
        return this;
    }

    TestFarm clearance(double inches) {
        clearance_in = inches;
        return this;
    }

    public TestFarm rainAfter(double scale) {
        rainScale = scale;
        return this;
    }

    public TestFarm setting(Setting setting, double value) {
        settings = settings.with(setting, value);
        return this;
    }

    /** Nobody can be hired. */
    TestFarm alone() {
        return setting(Setting.HIRED_RIG_NEAR, 0).setting(Setting.AIRCRAFT_NEAR, 0);
    }

    public TestFarm planted(LocalDate date) {
        planted = date;
        return this;
    }

    public TestFarm poorlyDrained() {
        drainage = Drainage.POOR;
        return this;
    }

    public TestFarm storm(LocalDate date, double rain_mm) {
        storms.put(date, rain_mm);
        return this;
    }

    public TestFarm irrigated(LocalDate date, double depth_mm) {
        irrigation.add(new Irrigation("Home", "", date, depth_mm));
        return this;
    }

    public TestFarm stand(LocalDate date, double plants_m2) {
        readings.add(new Reading(
                "s",
                new FieldPart("Home", ""),
                date,
                Reading.Kind.STAND,
                plants_m2,
                plants_m2 + " plants/m2",
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING));
        return this;
    }

    /** Corn of a year before, of the whole field or of its zone, with the nitrogen the crop could use and more. */
    public TestFarm grew(int year, double yield_kgHa) {
        return grew(new PastYear(new FieldPart("Home", ""), year, PreviousCrop.CORN, yield_kgHa, Double.NaN));
    }

    public TestFarm grew(PastYear year) {
        past.add(year);
        return this;
    }

    public TestFarm height(double cm) {
        readings.add(new Reading(
                "r",
                new FieldPart("Home", ""),
                ON.minusDays(1),
                Reading.Kind.HEIGHT,
                cm,
                cm + " cm",
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING));
        return this;
    }

    public static Reading nitrateReading(LocalDate date, double ppm) {
        return new Reading(
                "n",
                new FieldPart("Home", ""),
                date,
                Reading.Kind.NITRATE,
                ppm,
                ppm + " ppm",
                new Reading.Sampled(0, 304.8, Reading.Position.RANDOM),
                "",
                Scouted.NOTHING);
    }

    public TestFarm nitrate(LocalDate date, double ppm) {
        readings.add(nitrateReading(date, ppm));
        return this;
    }

    public Zone zone() {
        double nan = Double.NaN;
        SoilProfile soil = SoilProfile.of(
                List.of(
                        new Horizon(0, 300, 20, 24, 3.2, 6.5, 18, Horizon.Measured.NOT_GIVEN),
                        new Horizon(300, 1524, 20, 24, .9, 6.5, 18, Horizon.Measured.NOT_GIVEN)),
                "test",
                new ArrayList<>());
        return new Zone(
                ZoneName.of("Home", ""),
                30,
                new Zone.Planting("corn", planted, Hybrid.ofMaturity(108), 8, .762, nan),
                new Zone.Land(soil, drainage, nan),
                new Zone.Seedbed(PreviousCrop.CORN, Tillage.REDUCED, nan),
                DiseaseFacts.NOT_GIVEN);
    }

    public Farm farm() {
        Pass starter = new Pass(
                "p",
                new FieldPart("Home", ""),
                LocalDate.of(2024, 5, 6),
                "UAN 32",
                new Pass.Rate(starter_lbAc, "lb N/ac", Units.kgHa(starter_lbAc)),
                Placement.INCORPORATED,
                Inhibitor.NONE,
                Pass.State.MADE);
        Rig highboy = rig("highboy", clearance_in, Set.of(Placement.ROW_BASE, Placement.BROADCAST), 9);
        Rig coulter = rig("coulter bar", 36, Set.of(Placement.MID_INJECT), 11);
        double perKg = nitrogen_usdLb / Units.KG_PER_LB;
        return new Farm(
                "Test",
                new Site(41.5, -92, 280),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(zone()), List.of()),
                new Farm.Work(List.of(starter), readings, irrigation, List.of(), past),
                new Farm.Shelf(List.of(), List.of(), List.of(highboy, coulter), List.of(), List.of()),
                new WeatherBook(weather(), List.of(), List.of(), List.of(), List.of(), List.of()),
                new Farm.Rules(new Prices(corn, 0, perKg, Map.of("UAN 32", perKg)), settings, LabelBook.EMPTY),
                List.of());
    }

    private static Rig rig(String name, double clearance_in, Set<Placement> placements, double usdAc) {
        return new Rig(
                RigId.called(name),
                "self-propelled",
                new Rig.Clearance(clearance_in * .0254, Double.NaN),
                new Rig.Boom(27, 2, 1e5, 4e5),
                new Rig.Tank(4, 0, 0),
                new Rig.Pace(2, 5, .65),
                placements,
                usdAc / Units.HA_PER_AC);
    }

    private WeatherSeries weather() {
        SplittableRandom random = new SplittableRandom(7);
        List<WeatherDay> days = new ArrayList<>();
        for (LocalDate d = LocalDate.of(2001, 1, 1); !d.isAfter(LocalDate.of(2024, 7, 15)); d = d.plusDays(1)) {
            double season = -Math.cos(2 * Math.PI * (d.getDayOfYear() - 22) / 365);
            double mean = 10 + 14 * season + 3 * random.nextGaussian(0, 1);
            boolean wet = random.nextDouble() < .3;
            double rain = wet ? -9 * Math.log(1 - random.nextDouble()) : 0;
            double fallen = storms.getOrDefault(d, d.isAfter(ON) ? rain * rainScale : rain);
            days.add(WeatherDay.of(d, mean + (wet ? 4 : 6.5), mean - (wet ? 4 : 6.5), fallen));
        }
        return new WeatherSeries(days);
    }
}
