// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.earleaf.farm.Farm;
import org.earleaf.field.Drainage;
import org.earleaf.field.Pass;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherSeries;

/**
 * How a season starts: when, and with what water, nitrogen and residue. Start at field capacity on 1 March, or on the
 * first pass since the last harvest when that is earlier.
 *
 * <p>What the previous crop leaves is common practice, no source; corn needing 50 to 60 lb more nitrogen after corn than
 * after soybean, which these starts bring about, is Iowa State extension.
 */
final class StartOfSeason {
    private static final List<Double> AFTER_CORN = List.of(6., 5., 4., 3., 2., 1.5);
    private static final List<Double> AFTER_SOYBEAN = List.of(8., 7., 6., 4., 3., 2.);
    private static final List<Double> AFTER_ALFALFA = List.of(8., 7., 6., 5., 4., 3.);
    private static final List<Double> AFTER_COVER = List.of(5., 4., 3., 1., 2., 1.5);
    private static final double AMMONIUM_PPM = 2;
    private static final int SOIL_MEMORY_D = 30;

    private StartOfSeason() {}

    /** Residue left by a crop: dry mass [kg/ha], carbon to nitrogen, cover by tillage none, reduced, full. */
    record Leavings(double mass_kgHa, double cn, double none, double reduced, double full, List<Double> nitrate_ppm) {
        double cover(Tillage tillage) {
            return switch (tillage) {
                case NONE -> none;
                case REDUCED -> reduced;
                case FULL -> full;
            };
        }

        SeasonSetup.LastCrop under(Zone.Seedbed bed) {
            double cover = Double.isNaN(bed.residueCover()) ? cover(bed.tillage()) : bed.residueCover();
            boolean buried = bed.tillage() == Tillage.FULL || bed.previousCrop() == PreviousCrop.ALFALFA;
            return new SeasonSetup.LastCrop(cover, mass_kgHa, cn, buried);
        }
    }

    static Leavings after(PreviousCrop crop) {
        return switch (crop) {
            case CORN -> new Leavings(9000, 60, .8, .5, .15, AFTER_CORN);
            case SOYBEAN -> new Leavings(3500, 30, .6, .3, .1, AFTER_SOYBEAN);
            case WHEAT -> new Leavings(5000, 80, .7, .4, .1, AFTER_CORN);
            case ALFALFA -> new Leavings(4000, 14, .3, .2, .1, AFTER_ALFALFA);
            case RYE, COVER -> new Leavings(2000, 22, .6, .3, .1, AFTER_COVER);
            case OTHER -> new Leavings(4000, 40, .5, .3, .1, AFTER_CORN);
        };
    }

    static LocalDate first(Farm farm, Zone zone) {
        LocalDate march = LocalDate.of(zone.planted().getYear(), 3, 1);
        LocalDate harvest = LocalDate.of(zone.planted().getYear() - 1, 9, 1);
        LocalDate first = march.isBefore(zone.planted()) ? march : zone.planted();
        for (Pass p : farm.passes()) {
            boolean counts = p.isOn(zone) && p.nitrogen_kgHa() > 0 && p.state() == Pass.State.MADE;
            if (counts && p.date().isBefore(first) && p.date().isAfter(harvest)) {
                first = p.date();
            }
        }
        for (org.earleaf.field.Manure m : farm.work().manure()) {
            if (m.isOn(zone) && m.date().isBefore(first) && m.date().isAfter(harvest)) {
                first = m.date();
            }
        }
        return first;
    }

    static SeasonSetup of(Farm farm, Zone zone, WeatherSeries observed, LocalDate first, List<Flag> flags) {
        Zone.Planting p = zone.planting();
        double given = zone.land().curveNumber();
        double curve = Double.isNaN(given) ? curveNumber(zone) : given;
        Leavings left = after(zone.seedbed().previousCrop());
        List<Double> ammonium = Collections.nCopies(SoilProfile.LAYERS, AMMONIUM_PPM);
        return new SeasonSetup(
                first,
                new SeasonSetup.Crop(p.planted(), p.hybrid(), p.population_m2(), p.rowSpacing_m(), true),
                new SeasonSetup.Ground(zone.soil(), drainMax_mm(zone), curve, Double.NaN),
                left.under(zone.seedbed()),
                new SeasonSetup.Start(
                        tested(farm, zone, first, Reading.Kind.NITRATE, left.nitrate_ppm(), flags),
                        tested(farm, zone, first, Reading.Kind.AMMONIUM, ammonium, flags),
                        meanBefore(observed, first)));
    }

    /** Drainage coefficient of 3/8 to 1/2 in a day under tile; common practice, no source. */
    private static double drainMax_mm(Zone zone) {
        if (zone.land().drainage() == Drainage.TILED) {
            return 13;
        }
        if (zone.land().drainage() == Drainage.POOR) {
            return 3;
        }
        return isSandy(zone) ? 60 : 25;
    }

    private static boolean isSandy(Zone zone) {
        return zone.soil().texture().isSandy();
    }

    /** Straight rows in good condition, by hydrologic group of the texture: NRCS NEH 630 ch. 9, from memory. */
    private static double curveNumber(Zone zone) {
        if (isSandy(zone)) {
            return 67;
        }
        if (zone.soil().texture().isClay()) {
            return zone.land().drainage() == Drainage.TILED ? 82 : 86;
        }
        boolean fine = zone.soil().texture().isClayLoam();
        return fine ? (zone.land().drainage() == Drainage.TILED ? 78 : 82) : 75;
    }

    /** Soil tests taken before the first nitrogen and within a month of the start stand in for the usual start. */
    private static List<Double> tested(
            Farm farm, Zone zone, LocalDate first, Reading.Kind kind, List<Double> usual, List<Flag> flags) {
        List<Double> ppm = new ArrayList<>(usual);
        for (Reading r : farm.readings()) {
            boolean near = !r.date().isBefore(first.minusDays(60)) && !r.date().isAfter(first.plusDays(30));
            if (r.kind() != kind || !r.isOn(zone) || !near || Double.isNaN(r.bottom_mm())) {
                continue;
            }
            for (int i = 0; i < SoilProfile.LAYERS; i++) {
                double middle = (SoilProfile.top_mm(i) + SoilProfile.bottom_mm(i)) / 2;
                if (middle > r.top_mm() && middle < r.bottom_mm()) {
                    ppm.set(i, r.value());
                }
            }
            flags.add(new Flag(
                    Said.of("flag.test", "field", zone.label(), "kind", kind, "day", r.date()),
                    Said.of("flag.test-starts", "entered", r.entered())));
        }
        return ppm;
    }

    private static double meanBefore(WeatherSeries observed, LocalDate first) {
        double sum = 0;
        int n = 0;
        for (int k = 1; k <= SOIL_MEMORY_D; k++) {
            LocalDate day = first.minusDays(k);
            if (observed.covers(day, day)) {
                sum += observed.at(day).tmean_C();
                n++;
            }
        }
        // Without a record before the start, the first day itself is the best guess.
        return n > 0 ? sum / n : observed.at(first).tmean_C();
    }
}
