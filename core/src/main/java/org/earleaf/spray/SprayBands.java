// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.earleaf.units.Units.MM_PER_IN;
import static org.earleaf.units.Units.MS_PER_MPH;

import java.util.List;
import java.util.Optional;
import org.earleaf.label.SprayLabel;
import org.earleaf.spray.HourReason.Factor;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.earleaf.weather.LeafWetness;
import org.earleaf.weather.WeatherHour;

/**
 * Bands of caution, one factor each. They only ever add to the label's own limits.
 *
 * <pre>
 *                       fit       with care              unfit
 * wind at the boom      3-8 mph   8-10; 1-3 by day       < 1; < 3 near night; > 10; outside the label's
 * gust less mean        to 5 mph  5-8                    > 8; gust above the label's greatest wind
 * Delta T               2-8 °C    8-10; < 2              > 10
 * temperature           50-85 °F  40-50; 85-90           < 40; > 90; above the label's
 * relative humidity     >= 50 %   35-50                  < 35 with medium or finer droplets
 * leaves                dry       dew                    dripping
 * hourly chance of rain < 20 %    20-40                  > 40, raining, or not rainfast in time
 * inversion             no        probable               present; probable where the label forbids it
 *
 * Range  hours of the growing season; to the label's hours to rainfast and one more
 * Source wind: stewardship and label text (3 to 8, 10 mph); Delta T: guides of national weather services; gusts:
 *        assumption; temperature, humidity, leaves, rain: common practice, no source.
 * Check  SprayBandsTest
 * </pre>
 */
final class SprayBands {
    private static final double WIND_LEAST = 1 * MS_PER_MPH;
    private static final double WIND_EASY = 8 * MS_PER_MPH;
    private static final double WIND_MOST = 10 * MS_PER_MPH;
    private static final double GUSTY = 5 * MS_PER_MPH;
    private static final double TOO_GUSTY = 8 * MS_PER_MPH;
    private static final double SOFTENS_6H = 0.1 * MM_PER_IN;
    private static final double SOFTENS_DAY = 0.5 * MM_PER_IN;
    private static final double SOFTENS_TWO_DAYS = 1.0 * MM_PER_IN;
    private static final double NONE = Double.NaN;

    private SprayBands() {}

    static Optional<HourReason> label(SprayLabel label) {
        List<?> missing = label.missing();
        return missing.isEmpty()
                ? Optional.empty()
                : unfit(Factor.LABEL, NONE, NONE, Said.of("hour.label-not-entered", "missing", missing));
    }

    /**
     * @param wind_ms at the boom
     * @param upTo_ms what it may be, the forecast's doubt allowed for
     */
    static Optional<HourReason> wind(double wind_ms, double upTo_ms, boolean nearNight, SprayLabel label) {
        if (Double.isNaN(wind_ms)) {
            return unfit(Factor.WIND, wind_ms, NONE, Said.of("hour.wind-unknown"));
        }
        double most = Math.min(WIND_MOST, label.windMax_ms().or(WIND_MOST));
        double least = Math.max(
                nearNight ? Inversion.STILL_MS : WIND_LEAST, label.windMin_ms().or(0));
        if (exceeds(upTo_ms, most)) {
            return unfit(
                    Factor.WIND, upTo_ms, most, Said.of("hour.wind-above", "wind", wind(upTo_ms), "most", wind(most)));
        }
        if (exceeds(least, wind_ms)) {
            return unfit(
                    Factor.WIND,
                    wind_ms,
                    least,
                    Said.of(
                            nearNight ? "hour.wind-below-at-night" : "hour.wind-below",
                            "wind",
                            wind(wind_ms),
                            "least",
                            wind(least)));
        }
        if (exceeds(upTo_ms, WIND_EASY)) {
            return care(Factor.WIND, upTo_ms, WIND_EASY, Said.of("hour.wind-to", "wind", wind(upTo_ms)));
        }
        return exceeds(Inversion.STILL_MS, wind_ms)
                ? care(Factor.WIND, wind_ms, Inversion.STILL_MS, Said.of("hour.wind-little", "wind", wind(wind_ms)))
                : Optional.empty();
    }

    static Optional<HourReason> gusts(double gust_ms, double mean_ms, SprayLabel label) {
        double most = label.windMax_ms().or(Double.POSITIVE_INFINITY);
        if (exceeds(gust_ms, most)) {
            return unfit(
                    Factor.GUSTS,
                    gust_ms,
                    most,
                    Said.of("hour.gusts-above-label", "gust", wind(gust_ms), "most", wind(most)));
        }
        double over = gust_ms - mean_ms;
        if (exceeds(over, GUSTY)) {
            SprayFit fit = exceeds(over, TOO_GUSTY) ? SprayFit.UNFIT : SprayFit.WITH_CARE;
            return Optional.of(new HourReason(
                    Factor.GUSTS,
                    fit,
                    over,
                    fit == SprayFit.UNFIT ? TOO_GUSTY : GUSTY,
                    Said.of("hour.gusts", "gust", wind(gust_ms), "over", wind(over))));
        }
        return Optional.empty();
    }

    static Optional<HourReason> deltaT(double deltaT_C) {
        if (Double.isNaN(deltaT_C)) {
            return care(Factor.DELTA_T, deltaT_C, NONE, Said.of("hour.humidity-unknown"));
        }
        Measured step = Measure.TEMPERATURE_STEP.of(deltaT_C);
        if (deltaT_C > 10) {
            return unfit(Factor.DELTA_T, deltaT_C, 10, Said.of("hour.delta-t-unfit", "step", step));
        }
        if (deltaT_C > 8) {
            return care(Factor.DELTA_T, deltaT_C, 8, Said.of("hour.delta-t-dry", "step", step));
        }
        return deltaT_C < 2
                ? care(Factor.DELTA_T, deltaT_C, 2, Said.of("hour.delta-t-damp", "step", step))
                : Optional.empty();
    }

    static Optional<HourReason> temperature(double air_C, SprayLabel label) {
        double f = Units.fahrenheit(air_C);
        double most = Units.fahrenheit(label.airMax_C().or(Units.celsius(90)));
        Measured air = Measure.TEMPERATURE.of(air_C);
        if (exceeds(f, Math.min(90, most))) {
            return unfit(
                    Factor.TEMPERATURE, air_C, Units.celsius(Math.min(90, most)), Said.of("hour.too-hot", "air", air));
        }
        if (f < 40) {
            return unfit(Factor.TEMPERATURE, air_C, Units.celsius(40), Said.of("hour.too-cold", "air", air));
        }
        if (exceeds(f, 85)) {
            return care(Factor.TEMPERATURE, air_C, Units.celsius(85), Said.of("hour.hot", "air", air));
        }
        return f < 50
                ? care(Factor.TEMPERATURE, air_C, Units.celsius(50), Said.of("hour.cool", "air", air))
                : Optional.empty();
    }

    static Optional<HourReason> humidity(double rh_pct, boolean mediumOrFiner) {
        Measured humidity = Measure.SHARE.of(rh_pct / 100);
        if (rh_pct < 35 && mediumOrFiner) {
            return unfit(Factor.HUMIDITY, rh_pct, 35, Said.of("hour.too-dry", "humidity", humidity));
        }
        return rh_pct < 50
                ? care(Factor.HUMIDITY, rh_pct, 50, Said.of("hour.dry", "humidity", humidity))
                : Optional.empty();
    }

    static Optional<HourReason> leaves(LeafWetness leaves) {
        return switch (leaves) {
            case DRY -> Optional.empty();
            case DEW -> care(Factor.LEAVES, NONE, NONE, Said.of("hour.dew"));
            case DRIPPING -> unfit(Factor.LEAVES, NONE, NONE, Said.of("hour.dripping"));
        };
    }

    /**
     * @param hours this hour and those of the label's time to rainfast after it
     * @param complete whether all of them are known
     */
    static Optional<HourReason> rain(List<WeatherHour> hours, boolean complete, int rainfast_h) {
        double highest = 0;
        boolean unknown = !complete;
        for (WeatherHour h : hours) {
            double chance = Rainfast.chance(h);
            unknown |= Double.isNaN(chance);
            highest = Double.isNaN(chance) ? highest : Math.max(highest, chance);
        }
        WeatherHour now = hours.get(0);
        if (Double.isNaN(now.rainChance()) && now.rain_mm() >= Rainfast.RAINS_MM) {
            return unfit(Factor.RAIN, now.rain_mm(), 0, Said.of("hour.raining"));
        }
        if (highest > 0.4) {
            return unfit(Factor.RAIN, highest, 0.4, chance(highest, rainfast_h));
        }
        if (!Rainfast.staysOn(hours)) {
            return unfit(
                    Factor.RAIN,
                    highest,
                    0.4,
                    rainfast_h > 0
                            ? Said.of("hour.rain-likely-rainfast", "hours", Measure.HOURS.of(rainfast_h))
                            : Said.of("hour.rain-likely"));
        }
        if (highest >= 0.2) {
            return care(Factor.RAIN, highest, 0.2, chance(highest, rainfast_h));
        }
        return unknown ? care(Factor.RAIN, NONE, NONE, Said.of("hour.rain-unknown")) : Optional.empty();
    }

    static Optional<HourReason> inversion(Inversion inversion, boolean banned) {
        return switch (inversion) {
            case NOT_LIKELY -> Optional.empty();
            case PROBABLE ->
                banned
                        ? unfit(Factor.INVERSION, NONE, NONE, Said.of("hour.inversion-banned"))
                        : care(Factor.INVERSION, NONE, NONE, Said.of("hour.inversion-likely"));
            case PRESENT -> unfit(Factor.INVERSION, NONE, NONE, Said.of("hour.inversion"));
        };
    }

    /** Rain that softened the ground; fine soil looks a day further back. */
    static Optional<HourReason> ground(Ground ground, double sixHours_mm, double day_mm, double twoDays_mm) {
        if (ground.topWetness() > ground.mostWetness()) {
            return unfit(
                    Factor.GROUND,
                    ground.topWetness(),
                    ground.mostWetness(),
                    Said.of(
                            "hour.soil-wet",
                            "depth",
                            Measure.DEPTH.of(Ground.TOP_MM),
                            "share",
                            Measure.SHARE.of(ground.topWetness())));
        }
        if (sixHours_mm > SOFTENS_6H) {
            return softened(sixHours_mm, SOFTENS_6H, 6);
        }
        if (day_mm > SOFTENS_DAY) {
            return softened(day_mm, SOFTENS_DAY, 24 + ground.extraHours());
        }
        return twoDays_mm > SOFTENS_TWO_DAYS
                ? softened(twoDays_mm, SOFTENS_TWO_DAYS, 48 + ground.extraHours())
                : Optional.empty();
    }

    /** Rain of the day after a stream on the ground. */
    static Optional<HourReason> storm(double nextDay_mm) {
        if (nextDay_mm <= SOFTENS_DAY) {
            return Optional.empty();
        }
        Said said = Said.of("hour.washes-away", "rain", Measure.RAIN.of(nextDay_mm));
        return nextDay_mm > SOFTENS_TWO_DAYS
                ? unfit(Factor.RAIN, nextDay_mm, SOFTENS_TWO_DAYS, said)
                : care(Factor.RAIN, nextDay_mm, SOFTENS_DAY, said);
    }

    private static Optional<HourReason> softened(double rain_mm, double limit_mm, int hours) {
        return unfit(
                Factor.GROUND,
                rain_mm,
                limit_mm,
                Said.of("hour.softened", "rain", Measure.RAIN.of(rain_mm), "hours", Measure.HOURS.of(hours)));
    }

    /** 10.0 mph is no more than a limit of 10 mph, however it was converted. */
    private static boolean exceeds(double value, double limit) {
        return value > limit + 1e-9 * Math.abs(limit);
    }

    private static Optional<HourReason> unfit(Factor factor, double found, double limit, Said said) {
        return Optional.of(new HourReason(factor, SprayFit.UNFIT, found, limit, said));
    }

    private static Optional<HourReason> care(Factor factor, double found, double limit, Said said) {
        return Optional.of(new HourReason(factor, SprayFit.WITH_CARE, found, limit, said));
    }

    private static Measured wind(double ms) {
        return Measure.WIND.of(ms);
    }

    /** A chance of rain, in this hour or until the product is rainfast. */
    private static Said chance(double chance, int rainfast_h) {
        Measured share = Measure.SHARE.of(chance);
        return rainfast_h > 0
                ? Said.of("hour.rain-chance-rainfast", "chance", share, "hours", Measure.HOURS.of(rainfast_h))
                : Said.of("hour.rain-chance", "chance", share);
    }
}
