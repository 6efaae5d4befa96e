// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.Setting;
import org.earleaf.plan.Window;
import org.earleaf.spray.SprayHour;
import org.earleaf.spray.SprayHours;
import org.earleaf.spray.SprayJob;
import org.earleaf.spray.SprayTimes;
import org.earleaf.spray.SprayWork;
import org.earleaf.weather.WeatherHour;

/**
 * The hours of a day in which a pass can be worked, as the longest run between leaving and the end of the driver's day:
 * by the hour where the weather is given so, else so many hours as are usual on a day that can be worked.
 */
final class WorkHours {
    /** Leaves are dry enough so long after leaving, where no hourly weather says when (common practice, no source). */
    private static final double DEW_S = 2 * 3600;
    /** Fewer hours known than this between leaving and the end of the day: the usual hours are taken. */
    private static final int KNOWN_H = 8;

    private final Farm farm;
    private final LocalDate on;
    private final List<WeatherHour> hours;
    private final double dayLength_s;
    private final Map<FieldPass, List<SprayHour>> judged = new IdentityHashMap<>();

    WorkHours(Farm farm, LocalDate on) {
        this.farm = farm;
        this.on = on;
        hours = SprayTimes.around(farm.weather().hours(), on.atStartOfDay());
        dayLength_s = 3600 * farm.settings().of(Setting.DRIVER_DAY);
    }

    double leave_s() {
        return 3600 * farm.settings().of(Setting.LEAVE_AT);
    }

    /** The driver's day, from leaving to being home. */
    double day_s() {
        return dayLength_s;
    }

    boolean isRest(int day) {
        return on.plusDays(day).getDayOfWeek() == DayOfWeek.SUNDAY
                && !farm.settings().says(Setting.SUNDAYS);
    }

    /** By the hour, from leaving on; empty when the hours of the day are not known, of no length when none is fit. */
    Optional<Window> byTheHour(FieldPass pass, int day) {
        List<SprayHour> ofDay = judged.computeIfAbsent(pass, this::judge).stream()
                .filter(h -> isOf(h.hour().at(), day))
                .toList();
        if (ofDay.size() < KNOWN_H) {
            return Optional.empty();
        }
        return Optional.of(SprayHours.windows(ofDay, 1).stream()
                .max(Comparator.comparingDouble(w -> w.hours()))
                .map(w -> new Window(since(w.from(), day), since(w.to(), day)))
                .orElse(new Window(0, 0)));
    }

    /** Where no hour is known. */
    Window usual(FieldPass pass) {
        boolean leaves = job(pass).kind() == SprayJob.Kind.FOLIAR;
        double from = leaves ? DEW_S : 0;
        double length = 3600 * farm.settings().of(leaves ? Setting.LEAF_HOURS : Setting.GROUND_HOURS);
        return new Window(from, Math.min(from + length, dayLength_s));
    }

    private boolean isOf(LocalDateTime at, int day) {
        double since = since(at, day);
        return day < 2 && since >= 0 && since < dayLength_s;
    }

    private double since(LocalDateTime at, int day) {
        return Duration.between(on.plusDays(day).atStartOfDay(), at).toSeconds() - leave_s();
    }

    private List<SprayHour> judge(FieldPass pass) {
        return hours.isEmpty()
                ? List.of()
                : SprayHours.of(hours, job(pass), farm.site(), farm.timeZone(), on.atStartOfDay());
    }

    private SprayJob job(FieldPass pass) {
        Option o = pass.best();
        List<Product> products = o.spray().stream()
                .flatMap(s -> s.mix().parts().stream())
                .map(p -> p.product())
                .toList();
        SprayWork work = new SprayWork(farm, pass.outlook(), o.placement(), products, o.isNitrogen());
        return work.job(hours.isEmpty() ? on.atStartOfDay() : hours.get(0).at());
    }
}
