// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.List;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;
import org.earleaf.season.parameter.Parameter;
import org.junit.jupiter.api.Test;

/**
 * What must hold on every day of every season, asked of 1,200 random ones: water and nitrogen close, nothing is below
 * zero, nothing grows backwards, nothing is taken that is not there. Laws of conservation need no source.
 */
class InvariantsTest {
    private static final int SEASONS = 1200;
    private static final double CLOSES = 1e-6;
    private static final int BOTTOM = SeasonState.LAYERS - 1;
    /** Running sums that may only grow: all but the water table's, and the values of the day. */
    private static final List<Ledger> SUMS = List.of(
            Ledger.RAIN,
            Ledger.DEW,
            Ledger.IRRIGATION,
            Ledger.INTERCEPTION,
            Ledger.RUNOFF,
            Ledger.DRAINAGE,
            Ledger.TRANSPIRATION,
            Ledger.EVAPORATION,
            Ledger.FERTILISED,
            Ledger.DEPOSITED,
            Ledger.MINERALISED,
            Ledger.TAKEN_BACK,
            Ledger.RESIDUE_TAKEN,
            Ledger.RESIDUE_RELEASED,
            Ledger.LEACHED,
            Ledger.DENITRIFIED,
            Ledger.VOLATILISED);

    @Test
    void every_day_of_1200_random_seasons_keeps_the_laws() {
        for (long seed = 0; seed < SEASONS; seed++) {
            RandomSeason season = new RandomSeason(seed);
            SeasonRun run = SeasonRun.start(season.setup, season.parameters(1).get(0), season.weather());
            Watch watch = new Watch(seed, run);
            while (run.day() < season.days) {
                season.applyEvents(run);
                watch.morning();
                run.step();
                watch.evening();
            }
            watch.season();
        }
    }

    /** One season under watch. */
    private static final class Watch {
        private final long seed;
        private final SeasonRun run;
        private final SeasonState s;
        private final double waterAtStart;
        private final double nitrogenAtStart;
        private double water;
        private double nitrogen;
        private final double[] ledger = new double[Ledger.values().length];
        private final double[] grown = new double[7];

        Watch(long seed, SeasonRun run) {
            this.seed = seed;
            this.run = run;
            this.s = run.state();
            waterAtStart = water();
            nitrogenAtStart = nitrogen();
        }

        void holds(boolean truth, String what, double... values) {
            if (!truth) {
                String on = "seed %d, day %d: %s".formatted(seed, run.day(), what);
                throw new AssertionError(on + java.util.Arrays.toString(values));
            }
        }

        void morning() {
            water = water();
            nitrogen = nitrogen();
            for (Ledger line : Ledger.values()) {
                ledger[line.ordinal()] = run.ledger(line, 0);
            }
            System.arraycopy(growing(), 0, grown, 0, grown.length);
        }

        private double[] growing() {
            return new double[] {
                s.gdd[0], s.collars[0], s.rep[0], s.rootDepth[0], s.shootN[0] + s.rootN[0], s.shoot[0], s.height[0]
            };
        }

        private double today(Ledger line) {
            return run.ledger(line, 0) - ledger[line.ordinal()];
        }

        void evening() {
            double in = today(Ledger.RAIN) + today(Ledger.DEW) + today(Ledger.IRRIGATION) + today(Ledger.TABLE_WATER);
            double out = today(Ledger.INTERCEPTION)
                    + today(Ledger.RUNOFF)
                    + today(Ledger.DRAINAGE)
                    + today(Ledger.TRANSPIRATION)
                    + today(Ledger.EVAPORATION);
            holds(Math.abs(water() - water - in + out) < CLOSES, "water closes over the day");
            double lost = today(Ledger.LEACHED) + today(Ledger.DENITRIFIED) + today(Ledger.VOLATILISED);
            double unexplained = nitrogen() - nitrogen - today(Ledger.DEPOSITED) + lost;
            holds(Math.abs(unexplained) < CLOSES, "nitrogen closes over the day", unexplained);
            nothingBelowZero();
            nothingBackwards();
            nothingTakenThatIsNotThere();
            // Asked of the day's flux itself: a trickle can vanish in the rounding of the sum.
            if (run.today().flux[2 * BOTTOM] == 0 && run.today().flux[2 * BOTTOM + 1] == 0) {
                holds(today(Ledger.LEACHED) == 0, "no leaching without drainage");
            }
        }

        private void nothingBelowZero() {
            List<double[]> exceptions = List.of(
                    s.emergenceDay, s.silkDay, s.blackLayerDay, s.shortDay, s.ledger[Ledger.TABLE_WATER.ordinal()]);
            for (double[] lane : s.carried()) {
                boolean free = exceptions.contains(lane) || lane == s.soilTemperature;
                holds(Double.isFinite(lane[0]), "a number", lane[0]);
                holds(
                        free || lane[0] >= 0,
                        "nothing below zero, array " + s.carried().indexOf(lane),
                        lane[0]);
            }
            for (int k = 0; k < SeasonState.CELLS; k++) {
                double full = run.site().sat[k];
                holds(s.water[k] <= full + 1e-9, "water within saturation", s.water[k], full);
            }
            for (Ledger line : SUMS) {
                holds(today(line) >= 0, "no flux below zero: " + line, today(line));
            }
        }

        private void nothingBackwards() {
            double[] now = growing();
            for (int k = 0; k < now.length; k++) {
                holds(now[k] >= grown[k], "nothing grows backwards, " + k, grown[k], now[k]);
            }
            holds(s.rep[0] <= 1, "reproductive stage within 1");
        }

        private void nothingTakenThatIsNotThere() {
            double transpired = today(Ledger.TRANSPIRATION);
            double drawn = 0;
            double supply = 0;
            for (int k = 0; k < SeasonState.CELLS; k++) {
                double before = s.water[k] + run.today().drawn[k];
                double above = Math.max(0, before - run.site().wp[k]);
                double share = run.site().share[k & 1];
                drawn += share * run.today().drawn[k];
                supply += share * run.site().of(Parameter.WATER_UPTAKE) * run.today().roots[k] * above;
            }
            holds(transpired <= run.today().transpirable[0] + 1e-9, "transpiration within demand");
            holds(transpired <= supply + 1e-9, "transpiration within supply", transpired, supply);
            holds(Math.abs(transpired - drawn) < 1e-9, "transpiration is what the cells gave");
            double uptake = run.ledger(Ledger.UPTAKE_TODAY, 0);
            holds(uptake <= run.ledger(Ledger.DEMAND_TODAY, 0) + 1e-9, "uptake within demand");
            holds(uptake <= run.ledger(Ledger.SUPPLY_TODAY, 0) + 1e-9, "uptake within supply");
            double gained = s.shootN[0] + s.rootN[0] - grown[4];
            holds(Math.abs(gained - uptake) < 1e-9, "the crop gained what was taken up", gained, uptake);
        }

        void season() {
            double share = run.site().share[0] + run.site().share[1];
            holds(Math.abs(share - 1) < 1e-12, "the columns are the field");
            holds(Math.abs(run.waterRemainder_mm(0)) < CLOSES, "water closes over the season");
            double unexplained = run.nitrogenRemainder_kgHa(0);
            holds(Math.abs(unexplained) < CLOSES, "nitrogen closes over the season", unexplained);
            holds(Math.abs(water() - run.water_mm(0)) < 1e-9, "water is counted the same way");
            holds(Math.abs(nitrogen() - run.nitrogen_kgHa(0)) < 1e-9, "nitrogen is counted the same way");
            holds(Math.abs(run.ledger(Ledger.WATER_AT_START, 0) - waterAtStart) < 1e-9, "water at the start");
            holds(Math.abs(run.ledger(Ledger.NITROGEN_AT_START, 0) - nitrogenAtStart) < 1e-9, "nitrogen at the start");
            double grain = run.yield(0).grain_kgHa();
            holds(grain >= 0 && grain <= .62 * run.shoot_kgHa(0) + 1e-9, "grain within the crop", grain);
        }

        private double field(double[] cells) {
            double sum = 0;
            for (int k = 0; k < cells.length; k++) {
                sum += run.site().share[k & 1] * cells[k];
            }
            return sum;
        }

        private double water() {
            return field(s.water);
        }

        private double nitrogen() {
            double sum = s.shootN[0] + s.rootN[0] + field(s.residueN) + field(s.microbes);
            for (double[] pool : List.of(s.nitrate, s.ammonium, s.urea, s.organic, s.manure)) {
                sum += field(pool);
            }
            for (int p = 0; p < s.pools.length; p++) {
                SurfacePool pool = s.pools[p];
                double here = pool.urea[0] + pool.alkaline[0] + pool.ammonium[0] + pool.nitrate[0];
                sum += run.site().share[p / SeasonState.POOLS] * here;
            }
            return sum;
        }
    }
}
