// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.field.Placement;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;

/**
 * Puts nitrogen, water, manure and tillage into the state.
 *
 * <p>Storage rule: every amount of a cell or surface pool is per area of its own column, so A kg/ha of field laid all
 * in column c adds A/f_c there. Surface bands keep contact with residue of 0.15 and a band factor of 0.75 (own
 * construct).
 */
final class Applying {
    private static final double BAND_CONTACT = 0.15;
    private static final double BAND_FACTOR = 0.75;
    /** Above this pH half of the ammonium laid on the surface can go as ammonia (common practice, no source). */
    private static final double ALKALINE_PH = 7.3;
    /** Share of manure's organic nitrogen that decays in its first year (common practice, no source). */
    private static final double MANURE_FIRST_YEAR = 0.30;

    private final SeasonSite site;
    private final SeasonState s;

    Applying(SeasonSite site, SeasonState state) {
        this.site = site;
        this.s = state;
    }

    void nitrogen(int m, NitrogenPass pass) {
        double a = pass.nitrogen_kgHa();
        if (a <= 0) {
            return;
        }
        s.ledger[Ledger.FERTILISED.ordinal()][m] += a;
        if (pass.inhibitor().slowsNitrification()) {
            s.guardInhibitor[m] = 1;
            s.guardHeat[m] = 0;
        }
        double row = a / site.share[0];
        double middle = a / site.share[1];
        switch (pass.placement()) {
            case BROADCAST, OVER_THE_TOP, BOTH, BY_AIR -> {
                surface(m, 0, a, pass, 1, 1);
                surface(m, 1, a, pass, 1, 1);
            }
            case ROW_BASE, UNDER_CANOPY -> surface(m, 0, row, pass, BAND_CONTACT, BAND_FACTOR);
            case MID_DRIBBLE -> surface(m, 1, middle, pass, BAND_CONTACT, BAND_FACTOR);
            case MID_INJECT -> cell(m, 1, 1, middle, pass);
            case ROW_INJECT -> cell(m, 0, 1, row, pass);
            case INCORPORATED -> {
                for (int c = 0; c < 2; c++) {
                    cell(m, c, 0, a / 3, pass);
                    cell(m, c, 1, 2 * a / 3, pass);
                }
            }
            case AMMONIA -> {
                cell(m, 1, 2, middle, pass);
                s.guarded[SeasonState.LAYERS + 2][m] += middle * pass.ammonium();
                s.guardBand[m] = 1;
                s.guardAge[m] = 0;
            }
        }
    }

    private void cell(int m, int c, int i, double amount, NitrogenPass pass) {
        int k = c * SeasonState.LAYERS + i;
        s.urea[k][m] += amount * pass.urea();
        s.ammonium[k][m] += amount * pass.ammonium();
        s.nitrate[k][m] += amount * pass.nitrate();
        if (pass.inhibitor().slowsNitrification() && pass.placement() != Placement.AMMONIA) {
            s.guarded[k][m] += amount * pass.ammonium();
        }
    }

    private void surface(int m, int c, double amount, NitrogenPass pass, double contact, double band) {
        SurfacePool pool = freePool(m, c);
        pool.used = true;
        double alkaline = site.setup.soil().ph().get(0) > ALKALINE_PH ? 0.5 * pass.ammonium() : 0;
        pool.urea[m] = amount * pass.urea();
        pool.alkaline[m] = amount * alkaline;
        pool.ammonium[m] = amount * (pass.ammonium() - alkaline);
        pool.nitrate[m] = amount * pass.nitrate();
        pool.age[m] = 0;
        pool.contact[m] = contact;
        pool.band[m] = band;
        pool.ureaseInhibitor[m] = pass.inhibitor().slowsUrea() ? 1 : 0;
        pool.nitrificationInhibitor[m] = pass.inhibitor().slowsNitrification() ? 1 : 0;
    }

    /** An empty pool, the newest twin of today, or else the oldest one with its rest swept into the soil. */
    private SurfacePool freePool(int m, int c) {
        SurfacePool oldest = s.pools[c * SeasonState.POOLS];
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            if (pool.urea[m] + pool.alkaline[m] + pool.ammonium[m] + pool.nitrate[m] == 0) {
                return pool;
            }
            if (pool.age[m] > oldest.age[m]) {
                oldest = pool;
            }
        }
        int top = c * SeasonState.LAYERS;
        s.urea[top][m] += oldest.urea[m];
        s.ammonium[top][m] += oldest.ammonium[m] + oldest.alkaline[m];
        s.nitrate[top][m] += oldest.nitrate[m];
        return oldest;
    }

    /** Manure [kg N/ha]: a quick organic part, a slow one, and its ammonium by placement. */
    void manure(int m, double organic_kgHa, NitrogenPass ammonium) {
        boolean buried = ammonium.placement() == Placement.INCORPORATED;
        for (int c = 0; c < 2; c++) {
            int top = c * SeasonState.LAYERS;
            for (int i = 0; i < (buried ? 2 : 1); i++) {
                double here = buried ? (i == 0 ? 1.0 / 3 : 2.0 / 3) : 1;
                s.manure[top + i][m] += here * MANURE_FIRST_YEAR * organic_kgHa;
                s.organic[top + i][m] += here * (1 - MANURE_FIRST_YEAR) * organic_kgHa;
            }
        }
        s.ledger[Ledger.FERTILISED.ordinal()][m] += organic_kgHa;
        nitrogen(m, ammonium);
        if (!buried) {
            // Liquid manure on the surface is alkaline: its ammonium can go as ammonia.
            for (SurfacePool pool : s.pools) {
                if (pool.age[m] == 0) {
                    pool.alkaline[m] += pool.ammonium[m];
                    pool.ammonium[m] = 0;
                }
            }
        }
    }

    /** Tillage buries residue and what lies on the surface. */
    void tillage(int m, double coverAfter) {
        s.buried[m] = 1;
        s.soilCover[m] = Math.min(s.soilCover[m], coverAfter);
        for (int p = 0; p < s.pools.length; p++) {
            SurfacePool pool = s.pools[p];
            int top = p / SeasonState.POOLS * SeasonState.LAYERS;
            for (int i = 0; i < 2; i++) {
                double here = i == 0 ? 1.0 / 3 : 2.0 / 3;
                s.urea[top + i][m] += here * pool.urea[m];
                s.ammonium[top + i][m] += here * (pool.ammonium[m] + pool.alkaline[m]);
                s.nitrate[top + i][m] += here * pool.nitrate[m];
            }
            pool.urea[m] = 0;
            pool.alkaline[m] = 0;
            pool.ammonium[m] = 0;
            pool.nitrate[m] = 0;
        }
    }
}
