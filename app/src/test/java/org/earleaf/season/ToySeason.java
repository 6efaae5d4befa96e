// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;

/**
 * A made-up season with plausible shapes, for tests of pages and drawings; its figures are evidence of nothing. What it
 * does keep: nitrogen that comes in lies somewhere or has gone somewhere.
 */
public final class ToySeason {
    private static final int DAYS = 215;
    private final Zone zone;
    private final SeasonTrace trace;
    private final double[][] nitrate = new double[2][SoilProfile.LAYERS];
    private final double[][] ammonium = new double[2][SoilProfile.LAYERS];
    private final double[] surface = new double[2];
    private double fertilised;
    private double mineralised;
    private double leached;
    private double gone;
    private double shoot;
    private double gdd;

    private ToySeason(Zone zone, LocalDate first) {
        this.zone = zone;
        this.trace = new SeasonTrace(first, DAYS, .254 / zone.rowSpacing_m());
    }

    /** A run from 1 March with one pass, given at the row base. */
    public static SeasonTrace run(Zone zone, LocalDate pass, double pass_kgHa, double start_kgHa) {
        ToySeason toy = new ToySeason(zone, LocalDate.of(zone.planted().getYear(), 3, 1));
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            for (int c = 0; c < 2; c++) {
                toy.nitrate[c][layer] = toy.trace.share(c) * start_kgHa * (6 - layer) / 21;
            }
        }
        for (int day = 0; day < DAYS; day++) {
            toy.step(day, pass, pass_kgHa);
        }
        return toy.trace;
    }

    private void step(int day, LocalDate pass, double pass_kgHa) {
        LocalDate date = trace.date(day);
        trace.begin(day);
        double rain = rain(day);
        if (date.equals(pass)) {
            surface[SeasonTrace.ROW] += pass_kgHa;
            fertilised += pass_kgHa;
        }
        long since = ChronoUnit.DAYS.between(zone.planted(), date);
        gdd += since > 0 ? 8 + 11 * Math.sin(Math.PI * (day + 20) / 230) : 0;
        double collars = gdd < 115 ? 0 : Math.min(19, (gdd - 60) / 80);
        double rep = Math.max(0, Math.min(1, (gdd - 1330) / 1250));
        double demand = collars == 0 || rep > .6 ? .05 : 4.6 * Math.exp(-Math.pow((gdd - 1150) / 420, 2));
        wash(rain);
        free(date);
        double taken = take(demand, Math.min(1500, collars * 85));
        shoot += taken;
        put(day, rain, collars, rep, demand, taken);
    }

    private static double rain(int day) {
        double v = Math.sin(day * 12.9898) * 43758.5453;
        double r = v - Math.floor(v);
        return r > .72 ? Math.round((r - .70) * 1100) / 10.0 : 0;
    }

    private void wash(double rain_mm) {
        double share = Math.min(.35, rain_mm / 90);
        for (int c = 0; c < 2; c++) {
            if (rain_mm > 2) {
                double in = surface[c] * .6;
                surface[c] -= in;
                nitrate[c][0] += in * .5;
                ammonium[c][0] += in * .5;
            }
            for (int layer = SoilProfile.LAYERS - 1; layer >= 0; layer--) {
                double down = nitrate[c][layer] * share;
                nitrate[c][layer] -= down;
                if (layer == SoilProfile.LAYERS - 1) {
                    leached += down * .4;
                    nitrate[c][layer] += down * .6;
                } else {
                    nitrate[c][layer + 1] += down;
                }
            }
        }
    }

    private void free(LocalDate date) {
        double rate = date.getMonthValue() < 4 ? .1 : .55;
        for (int c = 0; c < 2; c++) {
            for (int layer = 0; layer < 3; layer++) {
                double n = rate * trace.share(c) / 3;
                ammonium[c][layer] += n;
                mineralised += n;
                double turned = ammonium[c][layer] * .12;
                ammonium[c][layer] -= turned;
                nitrate[c][layer] += turned * .985;
                gone += turned * .015;
            }
        }
    }

    private double take(double demand, double root_mm) {
        double had = 0;
        for (int c = 0; c < 2; c++) {
            for (int layer = 0; layer < SoilProfile.LAYERS && SoilProfile.top_mm(layer) < root_mm; layer++) {
                had += nitrate[c][layer] * (c == SeasonTrace.ROW ? .3 : .12);
            }
        }
        double taken = Math.min(demand, had);
        double share = had == 0 ? 0 : taken / had;
        for (int c = 0; c < 2; c++) {
            for (int layer = 0; layer < SoilProfile.LAYERS && SoilProfile.top_mm(layer) < root_mm; layer++) {
                nitrate[c][layer] -= nitrate[c][layer] * (c == SeasonTrace.ROW ? .3 : .12) * share;
            }
        }
        return taken;
    }

    private void put(int day, double rain, double collars, double rep, double demand, double taken) {
        trace.put(day, Daily.GDD, gdd);
        trace.put(day, Daily.COLLARS, collars);
        trace.put(day, Daily.REP, rep);
        trace.put(day, Daily.HEIGHT_CM, collars == 0 ? 0 : 260 / (1 + Math.exp(-(collars - 11.5) / 2.4)));
        trace.put(day, Daily.ROOT_MM, Math.min(1500, collars * 85));
        trace.put(day, Daily.NNI, nni(rep, taken, demand));
        trace.put(day, Daily.SHOOT_N, shoot * .88);
        trace.put(day, Daily.ROOT_N, shoot * .12);
        trace.put(day, Daily.RAIN, rain);
        trace.put(day, Daily.DEMAND, demand);
        trace.put(day, Daily.UPTAKE, taken);
        trace.put(day, Daily.FERTILISED, fertilised);
        trace.put(day, Daily.MINERALISED, mineralised);
        trace.put(day, Daily.LEACHED, leached);
        trace.put(day, Daily.DENITRIFIED, gone);
        trace.put(day, Daily.WATER_FACTOR, 1);
        for (int c = 0; c < 2; c++) {
            trace.putSurface(day, c, surface[c] / trace.share(c));
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                trace.put(day, Cell.NITRATE, c, layer, nitrate[c][layer] / trace.share(c));
                trace.put(day, Cell.AMMONIUM, c, layer, ammonium[c][layer] / trace.share(c));
                trace.put(day, Cell.WATER, c, layer, water(day, c, layer, collars));
                trace.put(day, Cell.ROOTS, c, layer, Math.max(0, Math.min(1, (collars * 85 - 200 * layer) / 700)));
            }
        }
    }

    private double nni = 1.12;

    /** Falls toward what the crop gets of what it asks for, once it asks for much. */
    private double nni(double rep, double taken, double demand) {
        if (demand > 1.2) {
            nni += .05 * (1.12 * taken / demand - .03 - nni);
        }
        return rep > .99 ? nni : Math.max(.4, nni);
    }

    private double water(int day, int column, int layer, double collars) {
        SoilWater w = zone.soil().water().get(layer);
        double recent = 0;
        for (int k = 0; k < 9; k++) {
            recent += rain(Math.max(0, day - k)) / (k + 1) / 14;
        }
        double dry = collars / 19 * (column == SeasonTrace.ROW ? .8 : .6) * (5 - layer) / 5;
        double share = Math.max(.03, Math.min(1.15, 1 - dry + (layer < 3 ? recent - .25 : 0)));
        return (w.wp() + share * (w.fc() - w.wp())) * SoilProfile.thickness_mm(layer);
    }
}
