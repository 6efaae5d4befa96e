// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.brief.Briefs;
import org.earleaf.brief.Morning;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.SprayFarm;
import org.earleaf.farm.Farm;
import org.earleaf.field.Purpose;
import org.earleaf.spray.HourReason.Factor;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.earleaf.units.SideBySide;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;

/** Rules that must hold on an invented farm; single hours are checked in SprayHoursTest. */
class SprayTimesTest {
    private static final LocalDate ON = LocalDate.of(2024, 7, 12);
    private static final List<NitrogenOptions.Answer> ANSWERS =
            Morning.answers(new SprayFarm().lesions(ON.minusDays(1), 80).farm(), ON, false, SideBySide.IN_TURN);

    /** Calm nights, a breeze by day; rain on the second afternoon. */
    private static List<WeatherHour> hours(LocalDateTime from, int count) {
        List<WeatherHour> all = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            LocalDateTime at = from.plusHours(k);
            boolean day = at.getHour() >= 8 && at.getHour() < 18;
            boolean rain = at.toLocalDate().equals(ON.plusDays(1)) && at.getHour() >= 14 && at.getHour() < 17;
            all.add(new WeatherHour(
                    at,
                    day ? 24 : 17,
                    day ? 60 : 88,
                    day ? 2.6 : .5,
                    day ? 4 : 1,
                    180,
                    rain ? 4 : 0,
                    rain ? .9 : 0,
                    .5));
        }
        return all;
    }

    private static Farm farm(List<WeatherHour> hours) {
        Farm f = new SprayFarm().lesions(ON.minusDays(1), 80).farm();
        return RecordCopy.with(f, "weather", RecordCopy.with(f.weather(), "hours", hours));
    }

    private static SprayTable table(List<WeatherHour> hours) {
        return Briefs.of(farm(hours), ON, ANSWERS).spray();
    }

    @Test
    void without_hours_or_with_old_ones_it_says_so_plainly() {
        assertThat(table(List.of()).note()).contains(Said.of("spray.no-hours"));
        assertThat(table(List.of()).jobs()).isEmpty();
        SprayTable old = table(hours(ON.minusDays(3).atStartOfDay(), 24));
        assertThat(old.note())
                .contains(Said.of(
                        "spray.no-hours-now",
                        "end",
                        ON.minusDays(2).atStartOfDay().minusHours(1)));
        assertThat(old.jobs()).isEmpty();
        assertThat(table(hours(ON.atStartOfDay(), 30)).note())
                .contains(Said.of("spray.hours-end", "end", ON.plusDays(1).atTime(6, 0)));
    }

    @Test
    void the_day_fits_the_night_and_the_rain_do_not_and_each_says_what_binds() {
        SprayTable table = table(hours(ON.minusDays(2).atStartOfDay(), 24 * 6));
        assertThat(table.note()).isEmpty();
        SprayTable.Job any = table.jobs().get(0);
        assertThat(any.field()).isEmpty();
        assertThat(any.hours()).hasSize(48);
        assertThat(any.windows()).isNotEmpty();
        assertThat(any.windows().get(0).from().toLocalDate()).isEqualTo(ON);
        assertThat(any.shut()).anyMatch(s -> s.because().factor() == Factor.WIND);
        assertThat(any.shut())
                .anyMatch(s -> s.because().factor() == Factor.LEAVES
                        && s.from().equals(ON.plusDays(1).atTime(14, 0)));
        long unfit = any.hours().stream().filter(h -> h.fit() == SprayFit.UNFIT).count();
        long shut = any.shut().stream()
                .mapToLong(s -> java.time.Duration.between(s.from(), s.to()).toHours())
                .sum();
        assertThat(shut).isEqualTo(unfit);
    }

    @Test
    void a_pass_is_held_to_its_own_label_until_it_is_rainfast() {
        Option o = ANSWERS.get(0).protection().options().get(0);
        assertThat(o.mayBeMade()).isTrue();
        Option tomorrow = new Option(
                o.part(),
                o.kind(),
                ON.plusDays(1),
                o.application(),
                o.worth(),
                o.waitCost_usdHaDay(),
                o.why(),
                o.then(),
                o.spray());
        Farm farm = farm(hours(ON.minusDays(2).atStartOfDay(), 24 * 6));
        SprayTable table = SprayTimes.of(
                farm, ON, List.of(tomorrow), List.of(ANSWERS.get(0).outlook()));
        SprayTable.Job own = table.jobs().get(1);
        assertThat(own.field()).isEqualTo("Home");
        assertThat(own.kind()).isEqualTo(Said.of("job.kind", "kind", Purpose.FUNGICIDE));
        // Rainfast takes two hours and the rain begins at two: from noon on it would be washed off.
        assertThat(own.hours().stream()
                        .filter(h -> h.hour().at().equals(ON.plusDays(1).atTime(12, 0)))
                        .flatMap(h -> h.against().stream()))
                .anyMatch(r -> r.factor() == Factor.RAIN && r.fit() == SprayFit.UNFIT);
    }

    @Test
    void an_hour_that_comes_twice_when_clocks_go_back_breaks_nothing() {
        List<WeatherHour> twice = new ArrayList<>(hours(ON.atStartOfDay(), 48));
        twice.add(10, twice.get(9));
        assertThat(table(twice).jobs().get(0).hours()).hasSize(48);
    }
}
