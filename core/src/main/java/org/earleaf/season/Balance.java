// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;
import org.earleaf.season.parameter.Parameter;

/** What a member holds when it starts, what it holds now, and whether the ledger explains the difference. */
final class Balance {
    /** Carbon in residue dry matter. */
    static final double RESIDUE_CARBON = 0.42;
    /** Nitrogen in soil organic matter by mass. */
    private static final double ORGANIC_NITROGEN = 0.055;

    private final SeasonSite site;
    private final SeasonState s;

    Balance(SeasonSite site, SeasonState state) {
        this.site = site;
        this.s = state;
    }

    private double line(Ledger line, int m) {
        return s.ledger[line.ordinal()][m];
    }

    /** Fills a member as its season starts: at field capacity, with the nitrogen of its setup. */
    void start(int m) {
        SeasonSetup setup = site.setup;
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            double organic = setup.soil().om_pct().get(i)
                    / 100
                    * ORGANIC_NITROGEN
                    * setup.soil().bulkDensity_gcm3().get(i)
                    * site.dz[i]
                    * 1e4;
            for (int c = 0; c < 2; c++) {
                int cell = s.at(c, i) + m;
                s.water[cell] = site.fc[cell];
                s.nitrate[cell] =
                        setup.start().nitrate_ppm().get(i) * site.ppm[i] * site.lane(Parameter.START_NITRATE)[m];
                s.ammonium[cell] = setup.start().ammonium_ppm().get(i) * site.ppm[i];
                s.organic[cell] = organic;
            }
            s.soilTemperature[i * s.members + m] = setup.start().soilTemperature_C();
        }
        for (int c = 0; c < 2; c++) {
            int column = s.at(c, 0) + m;
            s.residueC[column] = RESIDUE_CARBON * setup.lastCrop().residue_kgHa();
            s.residueN[column] = s.residueC[column] / setup.lastCrop().residueCn();
        }
        s.population[m] = setup.crop().population_m2();
        s.soilCover[m] = setup.lastCrop().cover();
        s.buried[m] = setup.lastCrop().buried() ? 1 : 0;
        s.ledger[Ledger.WATER_AT_START.ordinal()][m] = water_mm(m);
        s.ledger[Ledger.NITROGEN_AT_START.ordinal()][m] = nitrogen_kgHa(m);
    }

    /** An amount by cell and member summed over the cells of a member, on the area of the field. */
    double field(double[] cells, int m) {
        double sum = 0;
        for (int k = 0; k < SeasonState.CELLS; k++) {
            sum += site.share[k & 1] * cells[k * s.members + m];
        }
        return sum;
    }

    /** Water in the soil [mm of field]. */
    double water_mm(int m) {
        return field(s.water, m);
    }

    /** All nitrogen of soil, surface, residue and crop [kg/ha of field]. */
    double nitrogen_kgHa(int m) {
        double sum = s.shootN[m] + s.rootN[m];
        sum += field(s.nitrate, m) + field(s.ammonium, m) + field(s.urea, m);
        sum += field(s.organic, m) + field(s.manure, m);
        for (int c = 0; c < 2; c++) {
            int column = s.at(c, 0) + m;
            sum += site.share[c] * (s.residueN[column] + s.microbes[column] + surface_kgHa(c, m));
        }
        return sum;
    }

    /** Nitrogen on the surface of a column [kg/ha of column]. */
    double surface_kgHa(int c, int m) {
        double sum = 0;
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            sum += pool.urea[m] + pool.alkaline[m] + pool.ammonium[m] + pool.nitrate[m];
        }
        return sum;
    }

    /** Water that cannot be explained since the start [mm]; rounding only. */
    double waterRemainder_mm(int m) {
        double in =
                line(Ledger.RAIN, m) + line(Ledger.DEW, m) + line(Ledger.IRRIGATION, m) + line(Ledger.TABLE_WATER, m);
        double out = line(Ledger.INTERCEPTION, m)
                + line(Ledger.RUNOFF, m)
                + line(Ledger.DRAINAGE, m)
                + line(Ledger.TRANSPIRATION, m)
                + line(Ledger.EVAPORATION, m);
        return water_mm(m) - line(Ledger.WATER_AT_START, m) - in + out;
    }

    /** Nitrogen that cannot be explained since the start [kg/ha]; rounding only. */
    double nitrogenRemainder_kgHa(int m) {
        double in = line(Ledger.FERTILISED, m) + line(Ledger.DEPOSITED, m) + line(Ledger.ASSIMILATED, m);
        double out = line(Ledger.LEACHED, m) + field(s.denitrified, m) + line(Ledger.VOLATILISED, m);
        return nitrogen_kgHa(m) - line(Ledger.NITROGEN_AT_START, m) - in + out;
    }
}
