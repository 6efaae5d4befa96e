// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.earleaf.units.Units.MM_PER_IN;
import static org.earleaf.units.Units.MS_PER_MPH;

import java.util.List;
import java.util.Optional;
import org.earleaf.label.SprayLabel;
import org.earleaf.spray.HourReason.Factor;
import org.earleaf.units.Figure;
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
        List<String> missing = label.missing();
        return missing.isEmpty()
                ? Optional.empty()
                : unfit(
                        Factor.LABEL,
                        NONE,
                        NONE,
                        "Of the label this is not entered: " + String.join(", ", missing)
                                + ". Read the label and enter it.");
    }

    /**
     * @param wind_ms at the boom
     * @param upTo_ms what it may be, the forecast's doubt allowed for
     */
    static Optional<HourReason> wind(double wind_ms, double upTo_ms, boolean nearNight, SprayLabel label) {
        if (Double.isNaN(wind_ms)) {
            return unfit(Factor.WIND, wind_ms, NONE, "The wind is not known.");
        }
        double most = Math.min(WIND_MOST, label.windMax_ms().or(WIND_MOST));
        double least = Math.max(
                nearNight ? Inversion.STILL_MS : WIND_LEAST, label.windMin_ms().or(0));
        if (exceeds(upTo_ms, most)) {
            return unfit(Factor.WIND, upTo_ms, most, "Wind to " + mph(upTo_ms) + ", more than " + mph(most) + ".");
        }
        if (exceeds(least, wind_ms)) {
            String when = nearNight ? " with night near" : "";
            return unfit(
                    Factor.WIND,
                    wind_ms,
                    least,
                    "Wind " + mph(wind_ms) + ", less than " + mph(least) + when + ": droplets hang.");
        }
        if (exceeds(upTo_ms, WIND_EASY)) {
            return care(Factor.WIND, upTo_ms, WIND_EASY, "Wind to " + mph(upTo_ms) + ".");
        }
        return exceeds(Inversion.STILL_MS, wind_ms)
                ? care(Factor.WIND, wind_ms, Inversion.STILL_MS, "Hardly any wind, " + mph(wind_ms) + ".")
                : Optional.empty();
    }

    static Optional<HourReason> gusts(double gust_ms, double mean_ms, SprayLabel label) {
        double most = label.windMax_ms().or(Double.POSITIVE_INFINITY);
        if (exceeds(gust_ms, most)) {
            return unfit(
                    Factor.GUSTS,
                    gust_ms,
                    most,
                    "Gusts to " + mph(gust_ms) + ", more than the label's " + mph(most) + ".");
        }
        double over = gust_ms - mean_ms;
        if (exceeds(over, GUSTY)) {
            SprayFit fit = exceeds(over, TOO_GUSTY) ? SprayFit.UNFIT : SprayFit.WITH_CARE;
            return Optional.of(new HourReason(
                    Factor.GUSTS,
                    fit,
                    over,
                    fit == SprayFit.UNFIT ? TOO_GUSTY : GUSTY,
                    "Gusts to " + mph(gust_ms) + ", " + mph(over) + " above the mean."));
        }
        return Optional.empty();
    }

    static Optional<HourReason> deltaT(double deltaT_C) {
        if (Double.isNaN(deltaT_C)) {
            return care(Factor.DELTA_T, deltaT_C, NONE, "Humidity is not known: how dry it is must be measured.");
        }
        String value = Figure.fixed(deltaT_C, 1) + " °C";
        if (deltaT_C > 10) {
            return unfit(Factor.DELTA_T, deltaT_C, 10, "Delta T " + value + ": droplets dry before they land.");
        }
        if (deltaT_C > 8) {
            return care(Factor.DELTA_T, deltaT_C, 8, "Delta T " + value + ": dry air, coarser droplets or more water.");
        }
        return deltaT_C < 2
                ? care(Factor.DELTA_T, deltaT_C, 2, "Delta T " + value + ": damp air, fine droplets live long.")
                : Optional.empty();
    }

    static Optional<HourReason> temperature(double air_C, SprayLabel label) {
        double f = Units.fahrenheit(air_C);
        double most = Units.fahrenheit(label.airMax_C().or(Units.celsius(90)));
        String value = Figure.fixed(f, 0) + " °F";
        if (exceeds(f, Math.min(90, most))) {
            return unfit(Factor.TEMPERATURE, air_C, Units.celsius(Math.min(90, most)), value + " is too hot.");
        }
        if (f < 40) {
            return unfit(Factor.TEMPERATURE, air_C, Units.celsius(40), value + " is too cold.");
        }
        if (exceeds(f, 85)) {
            return care(Factor.TEMPERATURE, air_C, Units.celsius(85), value + " is hot.");
        }
        return f < 50 ? care(Factor.TEMPERATURE, air_C, Units.celsius(50), value + " is cool.") : Optional.empty();
    }

    static Optional<HourReason> humidity(double rh_pct, boolean mediumOrFiner) {
        String value = Figure.fixed(rh_pct, 0) + " % humidity";
        if (rh_pct < 35 && mediumOrFiner) {
            return unfit(Factor.HUMIDITY, rh_pct, 35, value + " is too dry for medium or finer droplets.");
        }
        return rh_pct < 50 ? care(Factor.HUMIDITY, rh_pct, 50, value + " is dry.") : Optional.empty();
    }

    static Optional<HourReason> leaves(LeafWetness leaves) {
        return switch (leaves) {
            case DRY -> Optional.empty();
            case DEW -> care(Factor.LEAVES, NONE, NONE, "Dew on the leaves: not so much that it runs off.");
            case DRIPPING -> unfit(Factor.LEAVES, NONE, NONE, "The leaves drip.");
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
            return unfit(Factor.RAIN, now.rain_mm(), 0, "Rain in this hour.");
        }
        String within = rainfast_h > 0 ? " within the " + rainfast_h + " h until it is rainfast" : " in this hour";
        String chance = Figure.fixed(100 * highest, 0) + " % chance of rain";
        if (highest > 0.4) {
            return unfit(Factor.RAIN, highest, 0.4, chance + within + ".");
        }
        if (!Rainfast.staysOn(hours)) {
            return unfit(Factor.RAIN, highest, 0.4, "Rain is likely" + within + ".");
        }
        if (highest >= 0.2) {
            return care(Factor.RAIN, highest, 0.2, chance + within + ".");
        }
        return unknown
                ? care(Factor.RAIN, NONE, NONE, "Rain is not known for all hours until it is rainfast.")
                : Optional.empty();
    }

    static Optional<HourReason> inversion(Inversion inversion, boolean banned) {
        return switch (inversion) {
            case NOT_LIKELY -> Optional.empty();
            case PROBABLE ->
                banned
                        ? unfit(
                                Factor.INVERSION,
                                NONE,
                                NONE,
                                "An inversion is probable, and the label forbids spraying into one.")
                        : care(Factor.INVERSION, NONE, NONE, "An inversion is probable: check on the spot.");
            case PRESENT -> unfit(Factor.INVERSION, NONE, NONE, "The air lies still and layered: an inversion.");
        };
    }

    /** Rain that softened the ground; fine soil looks a day further back. */
    static Optional<HourReason> ground(Ground ground, double sixHours_mm, double day_mm, double twoDays_mm) {
        if (ground.topWetness() > ground.mostWetness()) {
            return unfit(
                    Factor.GROUND,
                    ground.topWetness(),
                    ground.mostWetness(),
                    "The top 6 in hold " + Figure.fixed(100 * ground.topWetness(), 0)
                            + " % of field capacity: too soft to drive.");
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
        String sentence = inches(nextDay_mm) + " of rain in the day after may wash it away.";
        return nextDay_mm > SOFTENS_TWO_DAYS
                ? unfit(Factor.RAIN, nextDay_mm, SOFTENS_TWO_DAYS, sentence)
                : care(Factor.RAIN, nextDay_mm, SOFTENS_DAY, sentence);
    }

    private static Optional<HourReason> softened(double rain_mm, double limit_mm, int hours) {
        return unfit(
                Factor.GROUND,
                rain_mm,
                limit_mm,
                inches(rain_mm) + " of rain in the last " + hours + " h: too soft to drive.");
    }

    /** 10.0 mph is no more than a limit of 10 mph, however it was converted. */
    private static boolean exceeds(double value, double limit) {
        return value > limit + 1e-9 * Math.abs(limit);
    }

    private static Optional<HourReason> unfit(Factor factor, double found, double limit, String sentence) {
        return Optional.of(new HourReason(factor, SprayFit.UNFIT, found, limit, sentence));
    }

    private static Optional<HourReason> care(Factor factor, double found, double limit, String sentence) {
        return Optional.of(new HourReason(factor, SprayFit.WITH_CARE, found, limit, sentence));
    }

    private static String mph(double ms) {
        return Figure.fixed(ms / MS_PER_MPH, 0) + " mph";
    }

    private static String inches(double mm) {
        return Figure.fixed(Units.inches(mm), 2) + " in";
    }
}
