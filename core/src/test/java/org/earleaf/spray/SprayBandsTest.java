// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.earleaf.spray.SprayFit.FIT;
import static org.earleaf.spray.SprayFit.UNFIT;
import static org.earleaf.spray.SprayFit.WITH_CARE;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.earleaf.label.LabelLimit;
import org.earleaf.label.SprayLabel;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.earleaf.weather.Hours;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bounds of the bands as extension and label texts give them (wind 3 to 8 and 10 mph, Delta T 2, 8 and 10 °C) or as
 * common practice, no source; see the comment of the class.
 */
class SprayBandsTest {
    private static final SprayLabel OPEN = SprayLabel.NONE;

    @ParameterizedTest
    @CsvSource({
        "0.5, false, UNFIT",
        "2, false, WITH_CARE",
        "2, true, UNFIT",
        "3, true, FIT",
        "8, false, FIT",
        "9, false, WITH_CARE",
        "10, false, WITH_CARE",
        "10.1, false, UNFIT"
    })
    void wind_by_its_bands(double mph, boolean nearNight, SprayFit expected) {
        double ms = mph * Units.MS_PER_MPH;
        assertThat(fit(SprayBands.wind(ms, ms, nearNight, OPEN))).isEqualTo(expected);
    }

    @Test
    void the_label_can_only_make_it_stricter() {
        SprayLabel strict = label(5, 7);
        assertThat(fit(SprayBands.wind(mph(7.5), mph(7.5), false, strict))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.wind(mph(4), mph(4), false, strict))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.wind(mph(12), mph(12), false, label(0, 15)))).isEqualTo(UNFIT);
        // A converted limit equals itself.
        assertThat(fit(SprayBands.wind(mph(7), 7 * 0.44704, false, strict))).isEqualTo(FIT);
    }

    @Test
    void gusts_count_by_themselves_and_above_the_mean() {
        assertThat(fit(SprayBands.gusts(mph(12), mph(6), label(0, 15)))).isEqualTo(WITH_CARE);
        assertThat(fit(SprayBands.gusts(mph(15), mph(6), label(0, 15)))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.gusts(mph(11), mph(8), label(0, 10)))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.gusts(Double.NaN, mph(8), label(0, 10)))).isEqualTo(FIT);
    }

    @ParameterizedTest
    @CsvSource({"1.9, WITH_CARE", "2, FIT", "8, FIT", "8.1, WITH_CARE", "10, WITH_CARE", "10.1, UNFIT"})
    void delta_t_by_its_bands(double c, SprayFit expected) {
        assertThat(fit(SprayBands.deltaT(c))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"39, UNFIT", "45, WITH_CARE", "50, FIT", "85, FIT", "88, WITH_CARE", "90, WITH_CARE", "91, UNFIT"})
    void temperature_by_its_bands(double f, SprayFit expected) {
        assertThat(fit(SprayBands.temperature(Units.celsius(f), OPEN))).isEqualTo(expected);
    }

    @Test
    void dry_air_stops_finer_droplets_only() {
        assertThat(fit(SprayBands.humidity(34, true))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.humidity(34, false))).isEqualTo(WITH_CARE);
        assertThat(fit(SprayBands.humidity(50, true))).isEqualTo(FIT);
    }

    @Test
    void rain_is_looked_for_until_rainfast() {
        WeatherHour dry = Hours.at(9).build();
        WeatherHour some = Hours.at(10).chance(0.25).build();
        WeatherHour likely = Hours.at(10).chance(0.45).build();
        assertThat(fit(SprayBands.rain(List.of(dry, dry), true, 1))).isEqualTo(FIT);
        assertThat(fit(SprayBands.rain(List.of(dry, some), true, 1))).isEqualTo(WITH_CARE);
        assertThat(fit(SprayBands.rain(List.of(dry, likely), true, 1))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.rain(List.of(some, some), true, 1))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.rain(List.of(Hours.at(9).rain(0.3).build()), true, 0)))
                .isEqualTo(UNFIT);
        assertThat(fit(SprayBands.rain(List.of(dry), false, 4))).isEqualTo(WITH_CARE);
    }

    @Test
    void a_probable_inversion_stops_the_pass_only_where_the_label_forbids_it() {
        assertThat(fit(SprayBands.inversion(Inversion.PROBABLE, false))).isEqualTo(WITH_CARE);
        assertThat(fit(SprayBands.inversion(Inversion.PROBABLE, true))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.inversion(Inversion.PRESENT, false))).isEqualTo(UNFIT);
    }

    @Test
    void ground_softens_with_rain_and_by_what_it_holds() {
        Ground firm = Ground.of(Ground.Kind.MEDIUM);
        assertThat(fit(SprayBands.ground(firm, 2.5, 12.7, 25.4))).isEqualTo(FIT);
        assertThat(fit(SprayBands.ground(firm, 2.6, 2.6, 2.6))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.ground(firm, 0, 13, 13))).isEqualTo(UNFIT);
        assertThat(fit(SprayBands.ground(firm, 0, 0, 26))).isEqualTo(UNFIT);
        Ground wet = new Ground(Ground.Kind.COARSE, 0.95, false, 0, 0);
        assertThat(fit(SprayBands.ground(wet, 0, 0, 0))).isEqualTo(FIT);
        assertThat(fit(SprayBands.ground(new Ground(Ground.Kind.COARSE, 0.95, true, 0, 0), 0, 0, 0)))
                .isEqualTo(UNFIT);
    }

    @Test
    void nothing_of_the_label_is_ever_filled_in() {
        HourReason reason = SprayBands.label(SprayLabel.NOT_ENTERED).orElseThrow();
        assertThat(reason.fit()).isEqualTo(UNFIT);
        assertThat(reason.said())
                .isEqualTo(Said.of("hour.label-not-entered", "missing", SprayLabel.NOT_ENTERED.missing()));
        assertThat(SprayLabel.NOT_ENTERED.missing()).hasSize(5);
    }

    /** Property: moving a factor away from its good band never makes its verdict better. */
    @Test
    void worse_is_never_better() {
        SprayLabel strict = label(2, 9);
        neverBetter(u -> SprayBands.wind(mph(u), mph(u), true, strict), 4, 30);
        neverBetter(u -> SprayBands.wind(mph(u), mph(u), true, strict), 4, 0);
        neverBetter(u -> SprayBands.wind(mph(u), mph(u), false, OPEN), 4, 0);
        neverBetter(g -> SprayBands.gusts(mph(6 + g), mph(6), strict), 0, 30);
        neverBetter(SprayBands::deltaT, 5, 30);
        neverBetter(SprayBands::deltaT, 5, 0);
        neverBetter(c -> SprayBands.temperature(c, OPEN), 20, 50);
        neverBetter(c -> SprayBands.temperature(c, OPEN), 20, -10);
        neverBetter(rh -> SprayBands.humidity(rh, true), 80, 0);
        neverBetter(p -> SprayBands.rain(List.of(Hours.at(9).chance(p).build()), true, 0), 0, 1);
        neverBetter(r -> SprayBands.rain(List.of(Hours.at(9).rain(r).build()), true, 0), 0, 30);
        neverBetter(r -> SprayBands.ground(Ground.of(Ground.Kind.FINE), r, r, r), 0, 80);
        neverBetter(SprayBands::storm, 0, 80);
    }

    private static void neverBetter(DoubleFunction<Optional<HourReason>> band, double good, double bad) {
        SprayFit before = FIT;
        for (int k = 0; k <= 400; k++) {
            double value = good + (bad - good) * k / 400;
            SprayFit now = fit(band.apply(value));
            assertThat(now).as("at %s", value).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).as("worst at %s", bad).isGreaterThan(FIT);
    }

    private static SprayFit fit(Optional<HourReason> reason) {
        return reason.map(HourReason::fit).orElse(FIT);
    }

    private static double mph(double value) {
        return value * Units.MS_PER_MPH;
    }

    private static SprayLabel label(double least_mph, double most_mph) {
        return new SprayLabel(
                LabelLimit.of(mph(least_mph)),
                LabelLimit.of(mph(most_mph)),
                LabelLimit.noneStated(),
                LabelLimit.noneStated(),
                Optional.of(false));
    }
}
