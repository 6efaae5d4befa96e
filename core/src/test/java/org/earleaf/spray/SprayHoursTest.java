// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.earleaf.label.LabelLimit;
import org.earleaf.label.SprayLabel;
import org.earleaf.spray.HourReason.Factor;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.earleaf.weather.Hours;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;

/** Invented hours; the bounds are those of SprayBandsTest. Sunrise is near 5:20 and sunset near 20:30 there. */
class SprayHoursTest {
    private static final Site SITE = new Site(41.8, -90.2, 200);
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final LocalDateTime ISSUED = LocalDateTime.parse("2023-07-01T00:00");
    private static final Ground FIRM = Ground.of(Ground.Kind.MEDIUM);

    @Test
    void a_calm_clear_morning_opens_when_the_sun_is_up_and_closes_with_the_wind() {
        List<WeatherHour> day = day(h -> Hours.at(h)
                .wind(h < 8 ? 1.0 : h < 12 ? 3.0 : 6.5)
                .rh(h < 7 ? 92 : 60)
                .air(h < 8 ? 14 : 25)
                .cloud(0)
                .build());
        List<SprayHour> judged = judge(day, SprayLabel.NONE, FIRM);
        assertThat(judged.get(5).fit()).isEqualTo(SprayFit.UNFIT);
        assertThat(judged.get(5).against()).extracting(HourReason::factor).contains(Factor.WIND, Factor.INVERSION);
        HourReason wind = judged.get(13).against().get(0);
        assertThat(wind.said().code()).isEqualTo("hour.wind-above");
        assertThat(wind.said().values())
                .containsEntry("wind", Measure.WIND.of(wind.found()))
                .containsEntry("most", Measure.WIND.of(10 * Units.MS_PER_MPH));
        assertThat(wind.found() / Units.MS_PER_MPH).isCloseTo(12, within(.5));

        List<SprayWindow> windows = SprayHours.windows(judged, 2);
        assertThat(windows).singleElement().satisfies(w -> {
            assertThat(w.from()).isEqualTo(LocalDateTime.parse("2023-07-01T08:00"));
            assertThat(w.to()).isEqualTo(LocalDateTime.parse("2023-07-01T12:00"));
            assertThat(w.hours()).isEqualTo(4);
            assertThat(w.endsBecause().orElseThrow().factor()).isEqualTo(Factor.WIND);
        });
        assertThat(SprayHours.windows(judged, 5)).isEmpty();
    }

    @Test
    void every_unfit_hour_says_why() {
        List<SprayHour> judged = judge(random(new SplittableRandom(11)), SprayLabel.NONE, FIRM);
        assertThat(judged)
                .filteredOn(h -> h.fit() == SprayFit.UNFIT)
                .isNotEmpty()
                .allSatisfy(h -> assertThat(h.against().get(0).said().code()).startsWith("hour."));
        assertThat(judged).filteredOn(h -> h.fit() == SprayFit.FIT).allSatisfy(h -> assertThat(h.against())
                .isEmpty());
    }

    @Test
    void a_label_not_entered_leaves_no_hour_open() {
        List<SprayHour> judged = judge(day(h -> Hours.at(h).build()), SprayLabel.NOT_ENTERED, FIRM);
        assertThat(judged).allSatisfy(h -> assertThat(h.fit()).isEqualTo(SprayFit.UNFIT));
        assertThat(SprayHours.windows(judged, 1)).isEmpty();
    }

    @Test
    void rain_closes_the_hours_before_it_by_the_labels_time_to_rainfast() {
        List<WeatherHour> day = day(h -> Hours.at(h).chance(h == 15 ? 0.6 : 0).build());
        SprayLabel label = new SprayLabel(
                LabelLimit.noneStated(),
                LabelLimit.noneStated(),
                LabelLimit.noneStated(),
                LabelLimit.of(2),
                Optional.of(false));
        List<SprayHour> judged = judge(day, label, FIRM);
        assertThat(judged.get(12).fit()).isNotEqualTo(SprayFit.UNFIT);
        assertThat(judged.subList(13, 16))
                .allSatisfy(h -> assertThat(h.against().get(0).factor()).isEqualTo(Factor.RAIN));
        assertThat(judge(day, SprayLabel.NONE, FIRM).get(14).fit()).isNotEqualTo(SprayFit.UNFIT);
    }

    @Test
    void beyond_a_day_the_wind_may_be_a_fifth_stronger() {
        // 4.9 m/s at 10 m are 9 mph at 2.5 m; a fifth more is 10.8.
        List<WeatherHour> hours = day(h -> Hours.at(h).wind(4.9).build());
        hours.add(Hours.at(36).wind(4.9).build());
        List<SprayHour> judged = judge(hours, SprayLabel.NONE, FIRM);
        assertThat(judged.get(12).fit()).isEqualTo(SprayFit.WITH_CARE);
        assertThat(judged.get(24).fit()).isEqualTo(SprayFit.UNFIT);
    }

    @Test
    void a_gap_in_the_hours_ends_a_run() {
        List<WeatherHour> hours = new ArrayList<>(day(h -> Hours.at(h).build()).subList(9, 16));
        hours.remove(3);
        assertThat(SprayHours.windows(judge(hours, SprayLabel.NONE, FIRM), 1)).hasSize(2);
    }

    @Test
    void rain_of_the_days_before_keeps_the_rig_out() {
        Ground soaked = new Ground(Ground.Kind.MEDIUM, Double.NaN, false, 14, 0);
        List<SprayHour> judged = judge(day(h -> Hours.at(h).build()), SprayLabel.NONE, soaked);
        assertThat(judged.get(12).against()).extracting(HourReason::factor).contains(Factor.GROUND);
        Ground dayBefore = new Ground(Ground.Kind.MEDIUM, Double.NaN, false, 12, 14);
        assertThat(judge(day(h -> Hours.at(h).build()), SprayLabel.NONE, dayBefore)
                        .get(12)
                        .against())
                .extracting(HourReason::said)
                .contains(Said.of("hour.softened", "rain", Measure.RAIN.of(26), "hours", Measure.HOURS.of(48)));
    }

    @Test
    void rain_of_the_day_before_says_nothing_about_the_last_six_hours() {
        Ground damp = new Ground(Ground.Kind.MEDIUM, Double.NaN, false, 5, 0);
        assertThat(judge(day(h -> Hours.at(h).build()), SprayLabel.NONE, damp)
                        .get(3)
                        .against())
                .extracting(HourReason::factor)
                .doesNotContain(Factor.GROUND);
    }

    @Test
    void dew_makes_a_probable_inversion_a_present_one() {
        // 20:00 is within two hours of sunset, the sky is clear, 1.9 m/s are 3.5 mph at the boom.
        List<WeatherHour> dry = day(h -> Hours.at(h).wind(1.9).cloud(0).build());
        List<WeatherHour> dewy = day(h -> Hours.at(h).wind(1.9).cloud(0).rh(91).build());
        assertThat(judge(dry, SprayLabel.NONE, FIRM).get(20).inversion()).isEqualTo(Inversion.PROBABLE);
        assertThat(judge(dewy, SprayLabel.NONE, FIRM).get(20).inversion()).isEqualTo(Inversion.PRESENT);
    }

    @Test
    void a_stream_on_the_ground_minds_neither_wind_nor_dry_air_but_a_storm() {
        List<WeatherHour> day = day(
                h -> Hours.at(h).wind(8).air(34).rh(25).rain(h == 20 ? 30 : 0).build());
        SprayJob stream = new SprayJob(SprayJob.Kind.SOIL_STREAM, 0.3, false, false, SprayLabel.NONE, FIRM);
        List<SprayHour> judged = SprayHours.of(day, stream, SITE, ZONE, ISSUED);
        assertThat(judged.get(10).against()).singleElement().satisfies(r -> {
            assertThat(r.factor()).isEqualTo(Factor.RAIN);
            assertThat(r.said().code()).isEqualTo("hour.washes-away");
            assertThat(r.said().values()).containsEntry("rain", Measure.RAIN.of(30));
        });
        assertThat(judge(day, SprayLabel.NONE, FIRM).get(10).against())
                .extracting(HourReason::factor)
                .contains(Factor.WIND, Factor.DELTA_T, Factor.HUMIDITY, Factor.TEMPERATURE);
    }

    /** Property: worse rain, heat, haze of humidity or gusts never improve an hour. */
    @Test
    void worsening_one_factor_never_improves_an_hour() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 60; round++) {
            List<WeatherHour> hours = random(random);
            List<SprayHour> before = judge(hours, SprayLabel.NONE, FIRM);
            int k = random.nextInt(hours.size());
            WeatherHour h = hours.get(k);
            double worse = random.nextDouble();
            List<WeatherHour> changed = new ArrayList<>(hours);
            changed.set(
                    k,
                    switch (random.nextInt(3)) {
                        case 0 -> with(h, h.gust_ms(), h.rain_mm(), Math.min(1, h.rainChance() + worse));
                        case 1 -> with(h, h.gust_ms() + 10 * worse, h.rain_mm(), h.rainChance());
                        default -> with(h, h.gust_ms(), h.rain_mm() + 20 * worse, h.rainChance());
                    });
            List<SprayHour> after = judge(changed, SprayLabel.NONE, FIRM);
            for (int j = 0; j < hours.size(); j++) {
                assertThat(after.get(j).fit())
                        .isGreaterThanOrEqualTo(before.get(j).fit());
            }
        }
    }

    @Test
    void hours_out_of_order_are_refused() {
        List<WeatherHour> twice = List.of(Hours.at(3).build(), Hours.at(3).build());
        assertThatThrownBy(() -> judge(twice, SprayLabel.NONE, FIRM))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("hours.out-of-order");
    }

    private static WeatherHour with(WeatherHour h, double gust, double rain, double chance) {
        return new WeatherHour(
                h.at(), h.air_C(), h.rh_pct(), h.wind_ms(), gust, h.windFrom_deg(), rain, chance, h.cloud());
    }

    private static List<WeatherHour> random(SplittableRandom random) {
        return day(h -> Hours.at(h)
                .air(random.nextDouble(8, 36))
                .rh(random.nextDouble(20, 100))
                .wind(random.nextDouble(0, 7))
                .gust(7)
                .chance(random.nextInt(4) == 0 ? random.nextDouble() : 0)
                .cloud(random.nextDouble())
                .build());
    }

    private static List<WeatherHour> day(IntFunction<WeatherHour> hour) {
        return new ArrayList<>(IntStream.range(0, 24).mapToObj(hour).toList());
    }

    private static List<SprayHour> judge(List<WeatherHour> hours, SprayLabel label, Ground ground) {
        SprayJob job = new SprayJob(SprayJob.Kind.FOLIAR, 2.5, true, false, label, ground);
        return SprayHours.of(hours, job, SITE, ZONE, ISSUED);
    }
}
