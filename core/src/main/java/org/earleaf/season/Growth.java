// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.parameter.Parameter;

/**
 * Growth of the shoot, kernels and yield.
 *
 * <pre>
 * dW    = 10 (0.5 Rs)(1 - exp(-0.55 LAI)) RUE (1 - d rep^1.5) fT min(fW, f fN); 0 at black layer
 * fT    = clamp((Tm - 8)/8, 0, 1) to silk, clamp((Tm - 8)/10, 0, 1) after it
 * fN    = min(1, NNI^p), NNI at the start of the day
 * f      0.86: at the critical curve growth for light is not yet at its best
 * RUE   3.74 g/MJ, d = 0.5 for hybrids of 2016 and later, p = 0.62; older ones: FieldParameters
 * KNrel = 0 up to PGR 1.17, else (PGR - 1.17)/(1 + 0.67 (PGR - 1.17));  KN = 560 KNrel left^-0.2
 * Y     = min(KN pop 300 mg, 0.515 W min(1, rep + 0.13), W - Wsilk + 0.08 Wsilk, 0.62 N/0.009)
 *
 * dW     shoot growth                             [kg/ha/d]
 * Rs     global radiation                         [MJ/m2/d]
 * PGR    mean growth from 450 °F d before to 150 after silk   [g/plant/d]
 * left   share of the plants that losses before silk left; they bear second and heavier ears
 * Y      dry grain                                [kg/ha]
 * Source RUE, d, f, p: fitted in bench/trials; RUE near the 3.8 under best growth of Lindquist et al. 2005, Agron. J.
 *        97:72; a concave answer to nitrogen: Sinclair & Horie 1989, Crop Sci. 29:90, from memory; kernels: Andrade et al.
 *        2002, Crop Sci. 42:1173; harvest index .54 to .61: Trout & DeJonge 2017, Irrig. Sci.; fN, N ceiling: own construct;
 *        left: own construct, calibrated to thin stands of Nafziger 1994, J. Prod. Agric. 7:59; growth for light .72 at
 *        15.8 °C of that at 20.9 °C: Andrade et al. 1993, Field Crops Res. 32:17, and low in the fill of late sowings:
 *        Cirilo & Andrade 1994, Crop Sci. 34:1039; 10: own construct between that and what trials planted in May allow;
 *        rep + 0.13: own construct, calibrated to killing frosts of Afuakwa & Crookston 1984, as tabulated by Wisconsin
 *        extension in 1997.
 * Check  GrowthTest, StandAdviceTest, LatePlantingTest
 * </pre>
 */
final class Growth {
    private static final double BEFORE_SILK = 450;
    private static final double AFTER_SILK = 150;
    private static final int HEAT_DAYS = 7;
    private static final double MAKES_UP = 0.2;
    private static final double LEAST_INDEX = .05;
    /** No growth up to here, and so many degrees more for all of it, to silk and after it [°C]. */
    private static final double COLD_C = 8;

    private static final double TO_SILK_C = 8;
    private static final double IN_FILL_C = 10;
    /** Share of the time to black layer that growth is ahead of the grain. */
    private static final double GRAIN_AHEAD = 0.13;

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    Growth(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double absorbed_MJm2(double solar_MJm2, double lai, double extinction) {
        return 0.5 * solar_MJm2 * Lanes.lost(extinction * lai);
    }

    /** From a share of the time to black layer above 0 on, cold slows sooner. */
    static double coolness(double tmean_C, double rep) {
        double perDegree = 1 / TO_SILK_C - Lanes.isPositive(rep) * (1 / TO_SILK_C - 1 / IN_FILL_C);
        return Lanes.share((tmean_C - COLD_C) * perDegree);
    }

    /** From an index of {@link #LEAST_INDEX} on; below it what is left grows on. */
    static double nitrogenFactor(double nni, double power) {
        return Lanes.exp(power * Lanes.ln(Lanes.clamp(nni, LEAST_INDEX, 1)));
    }

    /** Growth without stress [kg/ha/d]. */
    static double potential_kgHa(double absorbed_MJm2, double rep, double rue, double decline, double tmean_C) {
        return 10 * absorbed_MJm2 * rue * (1 - decline * rep * Math.sqrt(rep)) * coolness(tmean_C, rep);
    }

    /** Kernels against the reference at a plant growth rate [g/d] around silking. */
    static double kernelShare(double growth_gPlant) {
        double over = growth_gPlant - 1.17;
        return over <= 0 ? 0 : over / (1 + 0.67 * over);
    }

    void step(int day) {
        double[] light = t.member[0];
        absorbed(t.solar, s.lai, site.of(Parameter.LIGHT_EXTINCTION), light);
        potential(light, s.rep, t.tmean, t.growth);
        alive(s.rep, s.killed, t.growth);
        fed(t.nni, site.of(Parameter.NITROGEN_POWER), s.nitrogenFactor);
        grow(s.waterFactor, s.nitrogenFactor, site.of(Parameter.FED), t.growth, s.shoot);
        double[] within = t.member[1];
        aroundSilk(s.gdd, site.silk, within);
        aroundSilk(within, t.growth, s.population, s.growthSum, s.growthDays);
        boolean heat = site.of(Parameter.HEAT) > 0;
        for (int m = 0; m < s.members; m++) {
            if (s.silkDay[m] == day) {
                s.shootAtSilk[m] = s.shoot[m];
            }
            if (heat && s.emergenceDay[m] >= 0) {
                heat(m, day);
            }
        }
    }

    private static void absorbed(double[] solar, double[] lai, double extinction, double[] light) {
        for (int m = 0; m < light.length; m++) {
            light[m] = absorbed_MJm2(solar[m], lai[m], extinction);
        }
    }

    private void potential(double[] light, double[] rep, double[] tmean, double[] growth) {
        potential(light, rep, site.lane(Parameter.RUE), site.of(Parameter.RUE_DECLINE), tmean, growth);
    }

    private static void potential(
            double[] light, double[] rep, double[] rue, double decline, double[] tmean, double[] growth) {
        for (int m = 0; m < growth.length; m++) {
            growth[m] = potential_kgHa(light[m], rep[m], rue[m], decline, tmean[m]);
        }
    }

    /** None once ripe or killed. */
    private static void alive(double[] rep, double[] killed, double[] growth) {
        for (int m = 0; m < growth.length; m++) {
            growth[m] *= (1 - killed[m]) * Lanes.isPositive(1 - rep[m]);
        }
    }

    private static void fed(double[] nni, double power, double[] nitrogen) {
        for (int m = 0; m < nitrogen.length; m++) {
            nitrogen[m] = nitrogenFactor(nni[m], power);
        }
    }

    /** From growth without stress. */
    private static void grow(double[] water, double[] nitrogen, double fed, double[] growth, double[] shoot) {
        for (int m = 0; m < growth.length; m++) {
            growth[m] *= Math.min(water[m], fed * nitrogen[m]);
            shoot[m] += growth[m];
        }
    }

    /** Whether kernels are being set. */
    private static void aroundSilk(double[] g, double[] silk, double[] within) {
        for (int m = 0; m < within.length; m++) {
            double fromMiddle = Math.abs(g[m] - silk[m] + (BEFORE_SILK - AFTER_SILK) / 2);
            within[m] = Lanes.isAtLeast((BEFORE_SILK + AFTER_SILK) / 2, fromMiddle);
        }
    }

    private static void aroundSilk(double[] within, double[] growth, double[] population, double[] sum, double[] days) {
        for (int m = 0; m < growth.length; m++) {
            sum[m] += within[m] * growth[m] * (0.1 / population[m]);
            days[m] += within[m];
        }
    }

    /** Each hot dry day within a week of silk lowers kernel set 3 % (common practice, no source). */
    private void heat(int m, int day) {
        boolean hot = t.tmax[m] > 35 && s.waterFactor[m] < 0.8;
        if (s.silkDay[m] < 0) {
            // The last seven days before silk as bits of a small whole number, newest lowest.
            int bits = ((int) s.hotDays[m] << 1 | (hot ? 1 : 0)) & (1 << HEAT_DAYS) - 1;
            s.hotDays[m] = bits;
            s.kernelLoss[m] = 0.03 * Integer.bitCount(bits);
        } else if (hot && day - s.silkDay[m] <= HEAT_DAYS) {
            s.kernelLoss[m] += 0.03;
        }
    }

    double kernelsPerPlant(int m) {
        double pgr = s.growthDays[m] > 0 ? s.growthSum[m] / s.growthDays[m] : 0;
        double more = Math.pow(s.thinned[m], -MAKES_UP);
        return site.of(Parameter.KERNELS) * kernelShare(pgr) * more * (1 - Math.min(1, s.kernelLoss[m]));
    }

    double plantGrowth_g(int m) {
        return s.growthDays[m] > 0 ? s.growthSum[m] / s.growthDays[m] : 0;
    }

    /** The four ceilings of yield [kg/ha dry] in the order of {@link Yield.Limit}. */
    Yield yield(int m) {
        double kernels = kernelsPerPlant(m);
        double sink = kernels * s.population[m] * site.of(Parameter.KERNEL_WEIGHT) * 1e-6 * 1e4;
        double filled = Math.min(1, s.rep[m] + GRAIN_AHEAD);
        double index = site.of(Parameter.HARVEST_INDEX) * s.shoot[m] * filled;
        double source = s.silkDay[m] < 0 ? 0 : s.shoot[m] - s.shootAtSilk[m] + 0.08 * s.shootAtSilk[m];
        double share = site.of(Parameter.NITROGEN_HARVEST);
        double nitrogen = share * s.shootN[m] / site.of(Parameter.GRAIN_N_MIN);
        return Yield.least(kernels, sink, index, source, nitrogen, share * s.shootN[m]);
    }
}
