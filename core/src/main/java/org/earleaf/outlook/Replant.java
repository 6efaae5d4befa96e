// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.protection.PassWorth;
import org.earleaf.season.Event;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Ranks;
import org.earleaf.units.Said;

/**
 * What planting a thin field again would bring against keeping what stands.
 *
 * <pre>
 * keep  = Y s(planted, counted)/s(planted, full)      again = Y s(day, full)/s(planted, full)
 * gain  = P (again - keep) - cost,  p10 and p90 at 1.28 sd,  sd^2 = var over the years + (P Y 0.07)^2
 *
 * s     share of the most by day planted and plants ({@link StandYield})
 * Y     yield of the full stand with nitrogen enough, over the members      [bu]
 * P     price of a bushel less what each bushel costs to bring home         [$/bu]
 * day   the first day ahead that is workable more likely than not
 * Range a count of the last three weeks that costs 5 % or more, before V10 and 20 June
 * Source common practice of replanting guides; .07 of full yield as the error of the two shares together: own construct
 * Check  ReplantTest
 * </pre>
 *
 * @param counted_m2 plants that stand, by the last count
 * @param keep_kgHa dry grain of what stands
 * @param again_kgHa dry grain of a second planting on {@code again}
 * @param gain_usdHa of planting again, all costs paid; below 0 it loses
 */
public record Replant(
        LocalDate counted,
        double counted_m2,
        LocalDate again,
        double keep_kgHa,
        double again_kgHa,
        double cost_usdHa,
        Spread gain_usdHa) {
    private static final int COUNT_STANDS_D = 21;
    private static final double THIN = .95;
    private static final double LATEST_COLLARS = 10;
    private static final int LOOK_AHEAD_D = 14;
    private static final double LIKELY = .5;
    private static final double TABLE_ERROR = .07;
    private static final double P90_SD = 1.2816;
    private static final double AMPLE_KGHA = 250;

    /** Empty where no thin stand was counted lately, or it is too late to plant. */
    public static Optional<Replant> find(ZoneEnsemble futures) {
        Zone zone = futures.zone();
        LocalDate on = futures.decisionDay();
        LocalDate lately = on.minusDays(COUNT_STANDS_D - 1);
        LocalDate from = lately.isAfter(zone.planted()) ? lately : zone.planted();
        return futures.farm()
                .findReading(zone, r -> r.kind() == Reading.Kind.STAND, from, on)
                .filter(r -> kept(zone, r) <= THIN && !isTooLate(futures))
                .map(r -> of(futures, r, day(futures)));
    }

    private static boolean isTooLate(ZoneEnsemble futures) {
        SeasonRun morning = futures.members();
        return Spread.of(Baseline.each(morning, morning::collars)).p50() >= LATEST_COLLARS
                || day(futures).isAfter(LocalDate.of(futures.decisionDay().getYear(), Month.JUNE, 20));
    }

    /** Share of the full stand's yield that what stands still makes. */
    private static double kept(Zone zone, Reading count) {
        return StandYield.of(zone.planted(), count.value())
                / StandYield.of(zone.planted(), zone.planting().population_m2());
    }

    private static LocalDate day(ZoneEnsemble futures) {
        LocalDate first = futures.decisionDay().plusDays(1);
        double[] chance = futures.workable().from(first, LOOK_AHEAD_D);
        int k = 0;
        while (k < chance.length - 1 && chance[k] < LIKELY) {
            k++;
        }
        return first.plusDays(k);
    }

    private static Replant of(ZoneEnsemble futures, Reading count, LocalDate day) {
        Zone zone = futures.zone();
        double[] full = fullStand_kgHa(futures);
        double keep = kept(zone, count);
        double again = StandYield.of(day, zone.planting().population_m2())
                / StandYield.of(zone.planted(), zone.planting().population_m2());
        double cost = futures.farm().settings().of(Setting.REPLANT_COST);
        double[] gains = PassWorth.gains_usdHa(
                Arrays.stream(full).map(y -> (again - keep) * y).toArray(),
                cost,
                futures.farm().prices());
        double mean = Ranks.mean(gains);
        double error = TABLE_ERROR
                * PassWorth.bushels(Ranks.mean(full))
                * futures.farm().prices().netCorn_usdBu();
        double variance =
                Arrays.stream(gains).map(g -> (g - mean) * (g - mean)).average().orElse(0);
        double wide = P90_SD * Math.sqrt(variance + error * error);
        return new Replant(
                count.date(),
                count.value(),
                day,
                keep * Ranks.mean(full),
                again * Ranks.mean(full),
                cost,
                new Spread(mean - wide, mean, mean + wide));
    }

    /** Yield of the same field by member had all plants stood, and with nitrogen enough: both ways need it. */
    private static double[] fullStand_kgHa(ZoneEnsemble futures) {
        Farm farm = futures.farm();
        List<Reading> others = farm.readings().stream()
                .filter(r -> r.kind() != Reading.Kind.STAND)
                .toList();
        ZoneEnsemble full = ZoneEnsemble.of(farm.withReadings(others), futures.zone(), futures.on(), false);
        NitrogenPass ample = new NitrogenPass(AMPLE_KGHA, 0, 0, 1, Placement.INCORPORATED, Inhibitor.NONE);
        return new Baseline(full, full.season().with(new Event.Nitrogen(full.decisionDay(), ample))).yields_kgHa();
    }

    public boolean pays() {
        return gain_usdHa.p50() > 0;
    }

    /** The whole of it in a sentence or two. */
    public Said said() {
        return Said.of(
                pays() ? "replant.pays" : "replant.loses",
                "plants",
                Measure.PLANTS.of(counted_m2),
                "counted",
                counted,
                "keep",
                Measure.YIELD.of(keep_kgHa),
                "day",
                again,
                "again",
                Measure.YIELD.of(again_kgHa),
                "cost",
                money(cost_usdHa),
                "gain",
                money(Math.abs(gain_usdHa.p50())),
                "low",
                money(gain_usdHa.p10()),
                "high",
                money(gain_usdHa.p90()));
    }

    private static Measured money(double usdHa) {
        return Measure.MONEY_RATE.of(usdHa);
    }
}
