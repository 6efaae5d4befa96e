// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonSetup;
import org.earleaf.season.parameter.FieldParameters;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.Forcing;

/**
 * A plot of the reference run: one soil after one crop in one station-year, planted on day 125 to a 110-day hybrid, UAN
 * at several rates side by side.
 */
public final class Plot {
    static final int PLANTED_DOY = 125;
    /** What is given at planting when the rest comes later [kg N/ha]. */
    static final double STARTER_KGHA = 40;
    /** About V8 [°F d from planting]. */
    static final double SIDEDRESS_GDD = 771;

    /** The newest hybrids of the trials that the model was fitted to, in every weather. */
    private static final int HYBRIDS_OF = 2016;

    private Plot() {}

    static SeasonSetup setup(Ground ground, Before before, StationYear at) {
        return new SeasonSetup(
                at.date(StationYear.FIRST_DOY),
                new SeasonSetup.Crop(at.date(PLANTED_DOY), Hybrid.ofMaturity(110), 8, 0.762, false),
                new SeasonSetup.Ground(ground.soil(), ground.drainMax_mm(), ground.curveNumber(), Double.NaN),
                new SeasonSetup.LastCrop(before.cover(), before.residue_kgHa(), before.cn(), false),
                new SeasonSetup.Start(
                        before.nitrate_ppm(), Collections.nCopies(SoilProfile.LAYERS, 2.0), at.before_C()));
    }

    /**
     * What the rotation makes of the usual numbers where past corn got the usual nitrogen; no frost, heat, waterlogging or
     * deposition, and bare soil warm under residue too.
     */
    private static ParameterSet parameters(Before before) {
        return FieldParameters.of(before.crop(), HYBRIDS_OF, List.of())
                .with(Parameter.FROST, 0)
                .with(Parameter.HEAT, 0)
                .with(Parameter.WATERLOGGING, 0)
                .with(Parameter.DEPOSIT_NITRATE, 0)
                .with(Parameter.DEPOSIT_AMMONIUM, 0)
                .with(Parameter.BARE_COVER, 1);
    }

    static SeasonRun start(Ground ground, Before before, StationYear at, int rates) {
        List<ParameterSet> sets = Collections.nCopies(rates, parameters(before));
        return SeasonRun.start(setup(ground, before, at), sets, List.of(at.forcing()), new int[rates]);
    }

    /** How the nitrogen is given. */
    public enum Plan {
        AT_PLANTING("all at planting"),
        THEN_ROW_BASE("rest at the row base"),
        THEN_MID_INJECT("rest by coulter"),
        THEN_BROADCAST("rest broadcast");

        private final String word;

        Plan(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        private Placement later() {
            return switch (this) {
                case THEN_ROW_BASE -> Placement.ROW_BASE;
                case THEN_MID_INJECT -> Placement.MID_INJECT;
                default -> Placement.BROADCAST;
            };
        }
    }

    /** Carries out what the plan has for the day to come. */
    static void give(SeasonRun run, StationYear at, Plan plan, double[] rates_kgHa, LocalDate sidedress) {
        boolean split = plan != Plan.AT_PLANTING;
        for (int m = 0; m < rates_kgHa.length; m++) {
            double early = split ? Math.min(STARTER_KGHA, rates_kgHa[m]) : rates_kgHa[m];
            if (run.date().equals(at.date(PLANTED_DOY))) {
                run.apply(m, uan(early, Placement.INCORPORATED));
            } else if (split && run.date().equals(sidedress)) {
                run.apply(m, uan(rates_kgHa[m] - early, plan.later()));
            }
        }
    }

    private static NitrogenPass uan(double kgHa, Placement placement) {
        return new NitrogenPass(kgHa, .5, .25, .25, placement, Inhibitor.NONE);
    }

    /** First day that ends with the thermal time of sidedressing, by the 86/50 °F method. */
    static LocalDate sidedress(StationYear at) {
        Forcing f = at.forcing();
        double sum = 0;
        for (int k = f.index(at.date(PLANTED_DOY)); k < f.days(); k++) {
            sum += (clamped_F(f.tmax_C()[k]) + clamped_F(f.tmin_C()[k])) / 2 - 50;
            if (sum >= SIDEDRESS_GDD) {
                return f.date(k);
            }
        }
        return f.date(f.days() - 1);
    }

    private static double clamped_F(double celsius) {
        return Math.max(50, Math.min(86, org.earleaf.units.Units.fahrenheit(celsius)));
    }
}
