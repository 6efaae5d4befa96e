// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.SprayFarm;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.field.Boundary;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Spread;
import org.earleaf.plan.Job;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Spot;
import org.earleaf.plan.Window;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** A farm of four fields in a week of late June. */
class WeekTest {
    private static final LocalDate ON = LocalDate.of(2024, 6, 28);
    private static final List<String> FIELDS = List.of("Home", "Away", "Far", "Hill");
    private static Farm farm;
    private static Week week;

    private static Rig rig(String name, String kind, double feet, double gallons, Set<Placement> placements) {
        return new Rig(
                RigId.called(name),
                kind,
                new Rig.Clearance(1.83, Double.NaN),
                new Rig.Boom(feet * Units.M_PER_FT, 2, 1e5, 4e5),
                new Rig.Tank(gallons * Units.M3_PER_GAL, 0, 0),
                new Rig.Pace(2, 10 * Units.MS_PER_MPH, .70),
                placements,
                9 / Units.HA_PER_AC);
    }

    private static final Rig WIDE = rig("wide", "self-propelled", 90, 1200, Set.of(Placement.ROW_BASE));

    private static Boundary square(String field, double east, double north) {
        double d = .001;
        Coordinate[] ring = {
            new Coordinate(east - d, north - d),
            new Coordinate(east + d, north - d),
            new Coordinate(east + d, north + d),
            new Coordinate(east - d, north + d),
            new Coordinate(east - d, north - d)
        };
        return new Boundary(field, "", new GeometryFactory().createPolygon(ring));
    }

    private static Zone named(Zone z, String name) {
        return RecordCopy.with(z, "called", ZoneName.of(name, z.zone()));
    }

    /** What one field wants, told of another. */
    private static NitrogenOptions.Answer as(NitrogenOptions.Answer a, Zone zone) {
        UnaryOperator<Option> rename = o -> RecordCopy.with(o, "part.field", zone.field());
        NitrogenOptions.Answer named = RecordCopy.with(a, "outlook", RecordCopy.with(a.outlook(), "zone", zone));
        named = RecordCopy.with(
                named, "options", a.options().stream().map(rename).toList());
        named = RecordCopy.with(named, "picks", a.picks().stream().map(rename).toList());
        return RecordCopy.with(named, "proposed", a.proposed().map(rename));
    }

    @BeforeAll
    static void plan() {
        Farm bare = new SprayFarm().farm();
        Zone home = bare.zones().get(0);
        Farm one = RecordCopy.with(
                bare,
                "shelf.rigs",
                List.of(
                        WIDE,
                        rig("narrow", "self-propelled", 60, 800, Set.of(Placement.ROW_BASE)),
                        rig("tender", "tender", Double.NaN, 2500, Set.of())));
        NitrogenOptions.Answer answer = NitrogenOptions.of(one, home, ON, false, SideBySide.IN_TURN);
        List<Zone> zones = FIELDS.stream().map(f -> named(home, f)).toList();
        double mile = 1 / 69.0;
        farm = RecordCopy.with(
                RecordCopy.with(one, "ground.zones", zones),
                "ground.boundaries",
                List.of(
                        square("Home", -92, 41.5),
                        square("Away", -92, 41.5 + 2 * mile),
                        square("Far", -92 + 4 * mile, 41.5)));
        week = week(farm, zones.stream().map(z -> as(answer, z)).toList());
    }

    private static Week week(Farm of, List<NitrogenOptions.Answer> answers) {
        return Week.of(of, ON, answers, Week.Search.of(1));
    }

    @Test
    void every_field_has_its_pass_once_and_no_rule_is_broken() {
        assertThat(Rules.broken(week.problem(), week.routes())).isEmpty();
        List<Integer> done = week.all().stream().map(Week.Stop::job).sorted().toList();
        List<Integer> out = week.leftOut().stream().map(w -> w.job()).toList();
        List<Integer> both = new ArrayList<>(done);
        both.addAll(out);
        assertThat(both).containsExactlyInAnyOrder(0, 1, 2, 3);
        assertThat(done).isNotEmpty();
        week.all().forEach(s -> {
            assertThat(s.leave()).isBefore(s.start());
            assertThat(s.start()).isBefore(s.end());
            assertThat(s.leave().toLocalDate()).isEqualTo(s.date());
        });
    }

    /** 188 min of the seven-field instance of proof (160 ac, 15 gal/ac, 1200 gal, 90 ft, 8 mph, .70): worked by hand. */
    @Test
    void a_pass_takes_its_ground_by_the_pace_and_a_quarter_of_an_hour_a_fill() {
        FieldPass pass = week.passes().get(0);
        Option o = RecordCopy.with(pass.best(), "application.productRate", 15 * Units.LHA_PER_GALAC);
        Zone zone = RecordCopy.with(pass.zone(), "area_ha", 160 * Units.HA_PER_AC);
        Outlook low = RecordCopy.with(
                RecordCopy.with(pass.outlook(), "zone", zone), "stand.height_cm", new Spread(40, 50, 60));
        FieldPass wide = RecordCopy.with(pass, "outlook", low);
        assertThat(new WorkTime(farm).of_s(WIDE, o, wide, new Spot(0, 0)) / 60)
                .isCloseTo(60 * 160 / 61.090909 + 30, within(1e-6));
        assertThat(WorkTime.loads(WIDE, zone.area_ha(), o)).isEqualTo(2);
        Farm alone = RecordCopy.with(farm, "shelf.rigs", List.of(WIDE));
        double home = 2 * 3000 / (15 * Units.MS_PER_MPH);
        assertThat(new WorkTime(alone).of_s(WIDE, o, wide, new Spot(1000, -2000))
                        - new WorkTime(farm).of_s(WIDE, o, wide, new Spot(1000, -2000)))
                .isCloseTo(home, within(1e-6));
    }

    /** At 61 ac/h and two loads an hour, 800 ac take 13 h 5 min and fills, more than any driver's day. */
    @Test
    void a_field_larger_than_a_days_room_is_made_in_two_parts_of_whole_loads() {
        Zone big = RecordCopy.with(farm.zones().get(0), "area_ha", 800 * Units.HA_PER_AC);
        Farm one = RecordCopy.with(farm, "ground.zones", List.of(big));
        NitrogenOptions.Answer answer = NitrogenOptions.of(one, big, ON, false, SideBySide.IN_TURN);
        Week parted = week(one, List.of(answer));
        assertThat(parted.passes())
                .extracting(FieldPass::place)
                .contains(
                        Said.of("pass.part", "field", "Home", "no", 1, "of", 2),
                        Said.of("pass.part", "field", "Home", "no", 2, "of", 2));
        assertThat(Rules.broken(parted.problem(), parted.routes())).isEmpty();
        assertThat(parted.all()).isNotEmpty();
        double ground = parted.passes().stream()
                .filter(p -> p.kind() == parted.passes().get(0).kind())
                .mapToDouble(FieldPass::area_ha)
                .sum();
        assertThat(ground).isCloseTo(big.area_ha(), within(1e-9));
        int whole = WorkTime.loads(WIDE, big.area_ha(), parted.passes().get(0).best());
        int parts = parted.passes().stream()
                .filter(p -> p.kind() == parted.passes().get(0).kind())
                .mapToInt(p -> WorkTime.loads(WIDE, p.area_ha(), p.best()))
                .sum();
        assertThat(parts).isEqualTo(whole);
        assertThat(week.passes()).noneMatch(p -> p.place().code().equals("pass.part"));
    }

    /** A minute of latitude is a nautical mile, 1852 m, but for the flattening of the earth. */
    @Test
    void fields_lie_where_their_outlines_do_and_the_unknown_two_miles_off() {
        List<Spot> at = week.problem().jobs().stream().map(Job::at).toList();
        assertThat(at.get(0).x_m()).isCloseTo(0, within(1.0));
        assertThat(at.get(1).y_m()).isCloseTo(2 / 69.0 * 60 * 1852, within(15.0));
        assertThat(at.get(2).x_m()).isCloseTo(4 / 69.0 * 60 * 1852 * Math.cos(Math.toRadians(41.5)), within(25.0));
        assertThat(at.get(3)).isEqualTo(new Spot(2 * Units.M_PER_MI, 0));
        assertThat(week.notes())
                .contains(Said.of(
                        "week.no-outline", "fields", List.of("Hill"), "way", Measure.DISTANCE.of(2 * Units.M_PER_MI)));
    }

    @Test
    void
            a_day_loses_what_its_options_lose_with_rain_and_breakdown_in_it_and_a_field_left_out_what_waiting_does_not_bring() {
        FieldPass pass = week.passes().get(0);
        Job job = week.problem().jobs().get(0);
        String wide = WIDE.name();
        TreeMap<LocalDate, Option> days = new TreeMap<>(pass.byRig().get(wide));
        int rig = week.rigs().indexOf(WIDE);
        double best = pass.best().worth().mean_usdHa() + WIDE.cost_usdHa();
        assertThat(job.undone_usd()).isCloseTo(pass.zone().area_ha() * (best - pass.later_usdHa()), within(1e-6));
        assertThat(pass.later_usdHa()).isBetween(0.0, pass.best().worth().mean_usdHa() + 1);
        // A day that cannot be worked, or a rig that stands still on one day in fifty, hands the field to the next day.
        double next = job.undone_usd();
        for (LocalDate date : days.descendingKeySet()) {
            int day = (int) (date.toEpochDay() - ON.toEpochDay());
            double goes = .98 * (day == 0 ? 1 : week.chance(day));
            double gain = days.get(date).worth().mean_usdHa() + WIDE.cost_usdHa();
            next = goes * pass.zone().area_ha() * (best - gain) + (1 - goes) * next;
            assertThat(job.loss_usd(rig, day)).as("%s", date).isCloseTo(next, within(1e-6));
        }
    }

    @Test
    void an_own_rig_costs_by_the_minute_what_it_costs_by_the_acre_and_a_hired_one_comes_after_its_notice() {
        int r = week.rigs().indexOf(WIDE);
        double work = week.problem().jobs().stream()
                .mapToDouble(j -> j.work_s().get(r))
                .sum();
        double ground =
                week.passes().stream().mapToDouble(p -> p.zone().area_ha()).sum();
        assertThat(week.problem().rigs().get(r).cost_usdS() * work).isCloseTo(WIDE.cost_usdHa() * ground, within(1e-6));
        for (Shift s : week.problem().shifts()) {
            if (week.rigs().get(s.rig()).isHired() && s.day() < 2) {
                assertThat(s.length_s()).isZero();
            }
        }
    }

    /** Streams on the ground: only rain and wet ground stand against them (the bands are held by SprayBandsTest). */
    @Test
    void hours_are_taken_from_the_hourly_weather_where_it_is_given() {
        FieldPass pass = week.passes().get(0);
        assertThat(new WorkHours(farm, ON).byTheHour(pass, 0)).isEmpty();
        assertThat(new WorkHours(farm, ON).usual(pass)).isEqualTo(new Window(0, 10 * 3600));
        assertThat(hours(0, pass, 0)).isEqualTo(new Window(0, 12 * 3600));
        assertThat(hours(20, pass, 0).to_s()).isLessThan(12 * 3600);
    }

    /** With rain from noon on. */
    private static Window hours(double noonRain_mm, FieldPass pass, int day) {
        List<WeatherHour> hours = new ArrayList<>();
        for (int h = 0; h < 72; h++) {
            double rain = h == 12 ? noonRain_mm : 0;
            hours.add(new WeatherHour(ON.atStartOfDay().plusHours(h), 24, 55, 3, 4, 180, rain, Double.NaN, .3));
        }
        Farm told = RecordCopy.with(farm, "weather", RecordCopy.with(farm.weather(), "hours", hours));
        return new WorkHours(told, ON).byTheHour(pass, day).orElseThrow();
    }

    @Test
    void sundays_may_be_kept_free() {
        Settings free = Settings.USUAL.with(Setting.SUNDAYS, 0);
        Farm pious = RecordCopy.with(farm, "rules.settings", free);
        List<NitrogenOptions.Answer> none = List.of();
        assertThat(week(pious, none).problem().shifts()).isEmpty();
        WorkHours hours = new WorkHours(pious, ON);
        assertThat(hours.isRest(2)).isTrue(); // 30 June 2024 was a Sunday
        assertThat(hours.isRest(1)).isFalse();
        assertThat(new WorkHours(farm, ON).isRest(2)).isFalse();
    }

    @Test
    void rain_moves_what_was_planned_for_the_day_and_is_told() {
        LocalDate wet = week.all().get(0).date();
        WeekChange rain = new WeekChange(List.of(wet), List.of(), List.of(), List.of());
        WeekChange.Anew anew = rain.to(week, 1, SideBySide.IN_TURN);
        assertThat(anew.now().all()).noneMatch(s -> s.date().equals(wet));
        assertThat(Rules.broken(anew.now().problem(), anew.now().routes())).isEmpty();
        List<Integer> hit = week.all().stream()
                .filter(s -> s.date().equals(wet))
                .map(Week.Stop::job)
                .sorted()
                .toList();
        assertThat(anew.forced()).containsExactlyElementsOf(hit);
        assertThat(anew.more_usd()).isPositive();
    }

    @Test
    void a_rig_that_is_down_goes_nowhere_a_field_that_is_done_is_left_and_a_pin_is_kept() {
        Week.Stop first = week.all().get(0);
        LocalDate pinnedTo = ON.plusDays(1);
        WeekChange change = new WeekChange(
                List.of(),
                List.of(new WeekChange.Down(first.rig(), first.date())),
                List.of("home"),
                List.of(new WeekChange.PinAt("Far, nitrogen", "narrow", pinnedTo)));
        WeekChange.Anew anew = change.to(week, 1, SideBySide.IN_TURN);
        assertThat(anew.now().all())
                .noneMatch(s -> s.rig().equals(first.rig()) && s.date().equals(first.date()))
                .noneMatch(s -> s.pass().zone().field().equals("Home"));
        assertThat(anew.now().all())
                .filteredOn(s -> s.pass().zone().field().equals("Far"))
                .allMatch(s -> s.rig().equals("narrow") && s.date().equals(pinnedTo));
    }

    @Test
    void names_that_nobody_knows_are_refused_with_those_that_are_known() {
        Problem pass = refused("Nowhere", "wide", ON);
        assertThat(pass.code()).isEqualTo("week.pass-unknown");
        assertThat(pass.rule().values().get("passes").toString()).contains("Home, nitrogen; Away, nitrogen");
        Problem rig = refused("Home", "plough", ON);
        assertThat(rig.code()).isEqualTo("week.rig-unknown");
        assertThat(rig.rule().values()).containsEntry("rigs", List.of("wide", "narrow"));
        Problem day = refused("Home", "wide", ON.plusDays(7));
        assertThat(day.code()).isEqualTo("week.day-outside");
        assertThat(day.rule().values())
                .containsEntry("first", LocalDate.of(2024, 6, 28))
                .containsEntry("last", LocalDate.of(2024, 7, 4));
    }

    private static Problem refused(String pass, String rig, LocalDate day) {
        EarleafException wrong = org.assertj.core.api.Assertions.catchThrowableOfType(
                EarleafException.class, () -> change(pass, rig, day));
        return wrong.problems().get(0);
    }

    private static void change(String pass, String rig, LocalDate day) {
        new WeekChange(List.of(), List.of(), List.of(), List.of(new WeekChange.PinAt(pass, rig, day)))
                .to(week, 1, SideBySide.IN_TURN);
    }

    /** Folding 6 min and 15 mph on the road home; equal loads that end when the job ends. */
    @Test
    void a_day_sheet_tells_every_load_and_the_way_home() {
        Week.Stop first = week.all().get(0);
        DaySheet sheet = DaySheet.of(week, first.rig(), first.date()).orElseThrow();
        List<DaySheet.Line> lines = sheet.lines();
        assertThat(lines.get(0).kind()).isEqualTo(DaySheet.Kind.LEAVE);
        assertThat(lines.get(0).from()).isEqualTo(first.leave());
        for (Week.Stop stop : sheet.stops()) {
            List<DaySheet.Line> loads = lines.stream()
                    .filter(l -> l.kind() == DaySheet.Kind.LOAD && l.stop().equals(stop))
                    .toList();
            assertThat(loads).hasSize(stop.loads());
            assertThat(loads.stream().mapToDouble(DaySheet.Line::ground_ha).sum())
                    .isCloseTo(stop.pass().zone().area_ha(), within(1e-9));
            assertThat(loads.get(loads.size() - 1).to()).isEqualTo(stop.end());
            assertThat(loads)
                    .allMatch(l -> l.fill_min() == 15
                            && l.litres()
                                    <= 1000
                                                    * week.rigs().stream()
                                                            .filter(r ->
                                                                    r.name().equals(sheet.rig()))
                                                            .findFirst()
                                                            .orElseThrow()
                                                            .tank_m3()
                                            + 1e-6);
        }
        DaySheet.Line home = lines.get(lines.size() - 1);
        Spot at = week.problem().jobs().get(home.stop().job()).at();
        double road_s = (Math.abs(at.x_m()) + Math.abs(at.y_m())) / (15 * .44704);
        assertThat(java.time.Duration.between(home.stop().end(), home.to()).toSeconds())
                .isCloseTo(Math.round(360 + road_s), within(1L));
        assertThat(DaySheet.of(week, first.rig(), ON.plusDays(40))).isEmpty();
    }

    @Test
    void the_dates_of_a_pass_keep_their_name_whoever_makes_it_and_whenever() {
        List<PlanFeed.Entry> told = PlanFeed.of(week);
        assertThat(told)
                .hasSize(week.all().size())
                .extracting(PlanFeed.Entry::uid)
                .doesNotHaveDuplicates();
        WeekChange rain = new WeekChange(List.of(week.all().get(0).date()), List.of(), List.of(), List.of());
        List<PlanFeed.Entry> anew =
                PlanFeed.of(rain.to(week, 1, SideBySide.IN_TURN).now());
        assertThat(told)
                .extracting(PlanFeed.Entry::uid)
                .containsAll(anew.stream().map(PlanFeed.Entry::uid).toList());
        assertThat(told.get(0).from()).isBefore(told.get(0).to());
    }

    @Test
    void the_same_seed_gives_the_same_week() {
        assertThat(week.plan().mean_usd())
                .isEqualTo(org.earleaf.plan.search.OverFutures.of(
                                week.problem(),
                                week.courses(),
                                Week.usual(1, week.passes().size()))
                        .mean_usd());
    }
}
