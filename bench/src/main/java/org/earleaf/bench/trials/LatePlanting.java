// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import org.earleaf.field.PreviousCrop;
import org.earleaf.season.SeasonRun;

/**
 * What corn planted later yields, beside published shares: the four Iowa farms, their own weather of 2000 to 2016, after
 * soybean, nitrogen to spare. Nothing was measured on these farms; the model was not fitted to it.
 */
final class LatePlanting {
    private static final double AMPLE_KGHA = 250;
    private static final int FIRST = 2000;
    private static final int LAST = 2016;

    /**
     * A day, and the share of the most that is published for it: Illinois (Nafziger 1994, J. Prod. Agric. 7:59, and later
     * trials there, from memory; half by the middle of June is a projection) and Iowa (extension table of 2008).
     */
    private record Day(MonthDay planted, String illinois, String iowa) {
        static Day of(Month month, int day, String illinois, String iowa) {
            return new Day(MonthDay.of(month, day), illinois, iowa);
        }
    }

    private static final List<Day> DAYS = List.of(
            Day.of(Month.APRIL, 25, "1", "1"),
            Day.of(Month.MAY, 10, ".97", ""),
            Day.of(Month.MAY, 20, ".92", ".99"),
            Day.of(Month.MAY, 30, ".86", ".90"),
            Day.of(Month.JUNE, 9, ".68", ""),
            Day.of(Month.JUNE, 15, ".5", ".68"),
            Day.of(Month.JUNE, 25, "", ".52"));

    private final Told told;
    private final List<TrialFarm> farms;

    LatePlanting(Told told, Path folder) {
        this.told = told;
        farms = TrialFarm.readAll(folder);
    }

    /** Means over farms and years. */
    private record Made(double grain_kgHa, double unripe) {}

    void print() {
        told.title("planted late, Iowa farms 2000 to 2016: share of the yield of 25 April, years not ripe; published");
        double first = made(DAYS.get(0)).grain_kgHa();
        for (Day day : DAYS) {
            Made made = made(day);
            double share = made.grain_kgHa() / first;
            told.line(
                    "  " + day.planted().toString().substring(2),
                    String.format(
                            Locale.ROOT,
                            "%.2f  not ripe %2.0f of 100   Illinois %4s  Iowa %4s",
                            share,
                            100 * made.unripe(),
                            day.illinois(),
                            day.iowa()));
            told.keep(
                    "planted_" + day.planted().toString().substring(2).replace('-', '_'),
                    String.format(Locale.ROOT, "{\"share\":%.3f,\"unripe\":%.3f}", share, made.unripe()));
        }
    }

    private Made made(Day day) {
        double grain = 0;
        double unripe = 0;
        int n = 0;
        for (TrialFarm farm : farms) {
            for (int year = FIRST; year <= LAST; year++) {
                Sowing sown = new Sowing(
                        day.planted().atYear(year), Sowing.usual(year).plants_m2());
                SiteYear at = new SiteYear(farm, sown, PreviousCrop.SOYBEAN, Measured.flat(Double.NaN));
                Plots plots = Plots.of(at, AMPLE_KGHA);
                SeasonRun run = plots.planted();
                plots.season().finish(run, at.last());
                grain += run.yield(0).grain_kgHa();
                unripe += run.blackLayerDay(0) < 0 ? 1 : 0;
                n++;
            }
        }
        return new Made(grain / n, unripe / n);
    }
}
