// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.pressure.CropAhead;
import org.earleaf.season.GrainStage;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;

/**
 * When each member comes to each stage. A stage that lies before the decision day has the day on which the mean of the
 * members came to it: what a pass can still do does not depend on it.
 */
public final class StageDays {
    /** Tassel shows about 25 °F d before silk (common practice, no source). */
    static final double TASSEL_BEFORE_SILK_F = 25;

    private static final double VT = 30;
    private static final int EIGHT = 8;

    private final LocalDate decisionDay;
    /** By evening, the one before the decision day first, then by member. */
    private final List<double[]> collars = new ArrayList<>();

    private final List<double[]> gdd = new ArrayList<>();
    private final List<double[]> rep = new ArrayList<>();

    StageDays(LocalDate decisionDay) {
        this.decisionDay = decisionDay;
    }

    /** To be called on the decision morning and every evening after it. */
    void note(SeasonRun run) {
        collars.add(Baseline.each(run, run::collars));
        gdd.add(Baseline.each(run, run::gdd));
        rep.add(Baseline.each(run, run::rep));
    }

    /** What every member holds for the crop. */
    public List<CropAhead> ahead(double[] yields_kgHa, SeasonTrace trace, double meanSilk_gdd) {
        List<CropAhead> all = new ArrayList<>();
        for (int m = 0; m < yields_kgHa.length; m++) {
            double tassel = tassel_gdd(m, meanSilk_gdd);
            LocalDate[] days = {
                day(collars, m, EIGHT, trace, Daily.COLLARS, EIGHT),
                day(gdd, m, tassel, trace, Daily.GDD, meanSilk_gdd - TASSEL_BEFORE_SILK_F),
                day(rep, m, 1e-9, trace, Daily.REP, 1e-9),
                day(rep, m, GrainStage.onset(2), trace, Daily.REP, GrainStage.onset(2)),
                day(rep, m, GrainStage.onset(3), trace, Daily.REP, GrainStage.onset(3)),
                day(rep, m, GrainStage.onset(4), trace, Daily.REP, GrainStage.onset(4)),
                day(rep, m, GrainStage.onset(5), trace, Daily.REP, GrainStage.onset(5))
            };
            for (int k = 1; k < days.length; k++) {
                days[k] = days[k].isBefore(days[k - 1]) ? days[k - 1] : days[k];
            }
            all.add(new CropAhead(yields_kgHa[m], days[0], days[1], days[2], days[3], days[4], days[5], days[6]));
        }
        return all;
    }

    /** Heat at which a member tassels; the mean's when it has silked already or never does. */
    private double tassel_gdd(int m, double meanSilk_gdd) {
        for (int k = 1; k < rep.size(); k++) {
            if (rep.get(k)[m] > 0) {
                double silk = rep.get(k - 1)[m] > 0 ? meanSilk_gdd : gdd.get(k)[m];
                return silk - TASSEL_BEFORE_SILK_F;
            }
        }
        return meanSilk_gdd - TASSEL_BEFORE_SILK_F;
    }

    private LocalDate day(List<double[]> of, int m, double level, SeasonTrace trace, Daily what, double meanLevel) {
        for (int k = 0; k < of.size(); k++) {
            if (of.get(k)[m] >= level) {
                return k == 0 ? past(trace, what, meanLevel) : decisionDay.plusDays(k - 1L);
            }
        }
        return decisionDay.plusDays(of.size());
    }

    private LocalDate past(SeasonTrace trace, Daily what, double level) {
        LocalDate last = decisionDay.minusDays(1);
        for (int day = 0; day < trace.days() && trace.date(day).isBefore(decisionDay); day++) {
            if (trace.at(day, what) >= level) {
                return trace.date(day);
            }
        }
        return last;
    }

    /** Share of the members that are past a stage (on the scale of readings) in the evening of a day. */
    public double sharePast(LocalDate date, double stage, List<CropAhead> crops) {
        int k = at(date) + 1;
        long past = 0;
        for (int m = 0; m < crops.size(); m++) {
            past += stage(m, k, date, crops.get(m)) > stage + 1e-9 ? 1 : 0;
        }
        return (double) past / crops.size();
    }

    /** Share of the members that are not yet at a stage in the morning of a day. */
    public double shareBefore(LocalDate date, double stage, List<CropAhead> crops) {
        int k = at(date);
        long before = 0;
        for (int m = 0; m < crops.size(); m++) {
            before += stage(m, k, date, crops.get(m)) < stage - 1e-9 ? 1 : 0;
        }
        return (double) before / crops.size();
    }

    private int at(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(decisionDay, date);
    }

    /** Whole collars to tassel; then VT 30, R1 31 to R6 36. */
    private double stage(int m, int evening, LocalDate date, CropAhead crop) {
        int k = Math.max(0, Math.min(evening, rep.size() - 1));
        double done = rep.get(k)[m];
        if (done > 0) {
            return VT + GrainStage.of(done);
        }
        return date.isBefore(crop.vt()) ? Math.floor(collars.get(k)[m]) : VT;
    }

    /** Stage of a member on a day, as {@link org.earleaf.farm.ClearanceLoss} counts it. */
    public double stage(int m, LocalDate date, CropAhead crop) {
        return stage(m, at(date) + 1, date, crop);
    }
}
