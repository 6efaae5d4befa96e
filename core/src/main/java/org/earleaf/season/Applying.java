// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.field.Placement;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;
import org.earleaf.season.parameter.Parameter;

/**
 * Puts nitrogen, water, manure and tillage into the state.
 *
 * <p>Storage rule: every amount of a cell or surface pool is per area of its own column, so A kg/ha of field laid all
 * in column c adds A/f_c there. Surface bands keep contact with residue of 0.15 and a band factor of 0.75 (own
 * construct).
 */
final class Applying {
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
        nitrogen(m, pass, site.setup.soil().ph().get(0) > ALKALINE_PH ? 0.5 : 0);
    }

    /** @param alkaline share of the ammonium left on the surface that can go as ammonia */
    private void nitrogen(int m, NitrogenPass pass, double alkaline) {
        double a = pass.nitrogen_kgHa();
        if (a <= 0) {
            return;
        }
        s.ledger[Ledger.FERTILISED.ordinal()][m] += a;
        s.anyUrea |= pass.urea() > 0;
        if (pass.inhibitor().slowsNitrification()) {
            s.guardInhibitor[m] = 1;
            s.guardHeat[m] = 0;
        }
        double row = a / site.share[0];
        double middle = a / site.share[1];
        switch (pass.placement()) {
            case BROADCAST, OVER_THE_TOP, BOTH, BY_AIR -> {
                surface(m, 0, a, pass, alkaline);
                surface(m, 1, a, pass, alkaline);
            }
            case ROW_BASE, UNDER_CANOPY -> surface(m, 0, row, pass, alkaline);
            case MID_DRIBBLE -> surface(m, 1, middle, pass, alkaline);
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
                s.guarded[s.at(1, 2) + m] += middle * pass.ammonium();
                s.guardBand[m] = 1;
                s.guardAge[m] = 0;
            }
        }
    }

    private void cell(int m, int c, int i, double amount, NitrogenPass pass) {
        int cell = s.at(c, i) + m;
        s.urea[cell] += amount * pass.urea();
        s.ammonium[cell] += amount * pass.ammonium();
        s.nitrate[cell] += amount * pass.nitrate();
        if (pass.inhibitor().slowsNitrification() && pass.placement() != Placement.AMMONIA) {
            s.guarded[cell] += amount * pass.ammonium();
        }
    }

    private void surface(int m, int c, double amount, NitrogenPass pass, double alkaline) {
        Lying lying = Lying.of(pass);
        SurfacePool pool = pool(m, c, lying);
        pool.used = true;
        pool.urea[m] += amount * pass.urea();
        pool.alkaline[m] += amount * alkaline * pass.ammonium();
        pool.ammonium[m] += amount * (1 - alkaline) * pass.ammonium();
        pool.nitrate[m] += amount * pass.nitrate();
        pool.age[m] = 0;
        lying.mark(pool, m);
    }

    /** How a pass lies on the surface: what tells one pool of it from another. */
    private record Lying(double contact, double band, double urease, double nitrification) {
        static Lying of(NitrogenPass pass) {
            boolean spread =
                    switch (pass.placement()) {
                        case BROADCAST, OVER_THE_TOP, BOTH, BY_AIR -> true;
                        default -> false;
                    };
            double urease = pass.inhibitor().slowsUrea() ? 1 : 0;
            double nitrification = pass.inhibitor().slowsNitrification() ? 1 : 0;
            return new Lying(spread ? 1 : 0.15, spread ? 1 : 0.75, urease, nitrification);
        }

        boolean isOf(SurfacePool pool, int m) {
            return pool.contact[m] == contact
                    && pool.band[m] == band
                    && pool.ureaseInhibitor[m] == urease
                    && pool.nitrificationInhibitor[m] == nitrification;
        }

        void mark(SurfacePool pool, int m) {
            pool.contact[m] = contact;
            pool.band[m] = band;
            pool.ureaseInhibitor[m] = urease;
            pool.nitrificationInhibitor[m] = nitrification;
        }
    }

    /** The pool of a like pass of today, or an empty one, or else the oldest with its rest swept into the soil. */
    private SurfacePool pool(int m, int c, Lying lying) {
        SurfacePool empty = null;
        SurfacePool oldest = s.pools[c * SeasonState.POOLS];
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            boolean free = pool.urea[m] + pool.alkaline[m] + pool.ammonium[m] + pool.nitrate[m] == 0;
            if (!free && lying.isOf(pool, m) && pool.age[m] == 0) {
                return pool;
            }
            empty = free && empty == null ? pool : empty;
            oldest = pool.age[m] > oldest.age[m] ? pool : oldest;
        }
        if (empty != null) {
            return empty;
        }
        sweep(oldest, m, s.at(c, 0) + m, 1);
        clear(oldest, m);
        return oldest;
    }

    /** Puts a share of what lies in a pool into a cell. */
    private void sweep(SurfacePool pool, int m, int cell, double share) {
        double ammonium = share * (pool.ammonium[m] + pool.alkaline[m]);
        s.urea[cell] += share * pool.urea[m];
        s.ammonium[cell] += ammonium;
        s.nitrate[cell] += share * pool.nitrate[m];
        s.guarded[cell] += pool.nitrificationInhibitor[m] * ammonium;
    }

    private static void clear(SurfacePool pool, int m) {
        pool.urea[m] = 0;
        pool.alkaline[m] = 0;
        pool.ammonium[m] = 0;
        pool.nitrate[m] = 0;
    }

    /** Manure [kg N/ha]: a quick organic part, a slow one, and its ammonium, all by placement. */
    void manure(int m, double organic_kgHa, NitrogenPass ammonium) {
        double row = organic_kgHa / site.share[0];
        double middle = organic_kgHa / site.share[1];
        switch (ammonium.placement()) {
            case MID_INJECT -> organic(m, 1, 1, middle);
            case AMMONIA -> organic(m, 1, 2, middle);
            case ROW_INJECT -> organic(m, 0, 1, row);
            case INCORPORATED -> {
                for (int c = 0; c < 2; c++) {
                    organic(m, c, 0, organic_kgHa / 3);
                    organic(m, c, 1, 2 * organic_kgHa / 3);
                }
            }
            default -> {
                organic(m, 0, 0, organic_kgHa);
                organic(m, 1, 0, organic_kgHa);
            }
        }
        s.ledger[Ledger.FERTILISED.ordinal()][m] += organic_kgHa;
        s.anyManure |= organic_kgHa > 0;
        // Liquid manure on the surface is alkaline: all its ammonium can go as ammonia.
        nitrogen(m, ammonium, 1);
    }

    private void organic(int m, int c, int i, double amount) {
        int cell = s.at(c, i) + m;
        s.manure[cell] += MANURE_FIRST_YEAR * amount;
        s.organic[cell] += (1 - MANURE_FIRST_YEAR) * amount;
    }

    /**
     * So many plants stand from now on. What the others held goes to the ground as residue; those left are as well fed as
     * all were (own construct), so that a thin stand does not look hungry.
     */
    void stand(int m, double plants_m2) {
        double left = Math.min(1, plants_m2 / s.population[m]);
        s.population[m] = plants_m2;
        s.thinned[m] *= s.silkDay[m] < 0 ? left : 1;
        double shoot = left * s.shoot[m];
        double perTonne = site.lane(Parameter.CRITICAL)[m];
        double critical = CropNitrogen.critical_kgHa(shoot, perTonne);
        double before = CropNitrogen.critical_kgHa(s.shoot[m], perTonne);
        double fed = before > 0 ? critical / before : left;
        double nitrogen = (1 - fed) * s.shootN[m] + (1 - left) * s.rootN[m];
        for (int c = 0; c < 2; c++) {
            int column = s.at(c, 0) + m;
            s.residueC[column] += Balance.RESIDUE_CARBON * (s.shoot[m] - shoot);
            s.residueN[column] += nitrogen;
        }
        s.shootN[m] *= fed;
        s.rootN[m] *= left;
        s.shootAtSilk[m] *= left;
        s.shoot[m] = shoot;
        s.critical[m] = critical;
    }

    /** Tillage buries residue and what lies on the surface. */
    void tillage(int m, double coverAfter) {
        s.buried[m] = 1;
        s.soilCover[m] = Math.min(s.soilCover[m], coverAfter);
        for (int p = 0; p < s.pools.length; p++) {
            int c = p / SeasonState.POOLS;
            sweep(s.pools[p], m, s.at(c, 0) + m, 1.0 / 3);
            sweep(s.pools[p], m, s.at(c, 1) + m, 2.0 / 3);
            clear(s.pools[p], m);
        }
    }
}
