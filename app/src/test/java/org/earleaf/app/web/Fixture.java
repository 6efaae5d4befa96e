// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Question;
import org.earleaf.brief.Brief;
import org.earleaf.decide.CropReadingWorth;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.decide.Worth;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Purpose;
import org.earleaf.field.Reading;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.label.Cautions;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.FieldCalendar;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.Tested;
import org.earleaf.outlook.WorkableDays;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.ToySeason;
import org.earleaf.season.Yield;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.earleaf.week.Week;

/** An invented farm on 30 June 2026, with toy seasons, for tests of pages. */
public class Fixture implements FarmDay {
    public static final LocalDate TODAY = LocalDate.of(2026, 6, 30);
    public static final Zone MILL = zone("Mill Eighty", "", 31.6, .762, 22, 24, PreviousCrop.CORN);
    private static final List<Zone> ZONES = List.of(
            MILL,
            zone("Creek Bottom", "", 26, .762, 12, 34, PreviousCrop.SOYBEAN),
            zone("Sand Ridge", "", 16.2, .762, 82, 6, PreviousCrop.CORN),
            zone("Long Quarter", "east", 30.4, .508, 18, 27, PreviousCrop.SOYBEAN),
            zone("Long Quarter", "west", 34, .508, 40, 22, PreviousCrop.SOYBEAN));

    private final List<Reading> readings;

    public Fixture() {
        this(List.of());
    }

    Fixture(List<Reading> readings) {
        this.readings = List.copyOf(readings);
    }

    private static Zone zone(
            String field, String zone, double ha, double spacing_m, double sand, double clay, PreviousCrop before) {
        Horizon top = new Horizon(0, 300, sand, clay, 3.2, 6.4, Double.NaN, Horizon.Measured.NOT_GIVEN);
        Horizon below = new Horizon(300, 1524, sand, clay, .8, 6.6, Double.NaN, Horizon.Measured.NOT_GIVEN);
        return new Zone(
                ZoneName.of(field, zone),
                ha,
                new Zone.Planting(
                        "corn",
                        LocalDate.of(2026, 5, 4),
                        new Hybrid("Demo 108", 108, Double.NaN, Double.NaN),
                        8.2,
                        spacing_m,
                        Double.NaN),
                new Zone.Land(SoilProfile.of(List.of(top, below), field, new ArrayList<>()), Drainage.WELL, Double.NaN),
                new Zone.Seedbed(before, Tillage.REDUCED, Double.NaN),
                DiseaseFacts.NOT_GIVEN);
    }

    private static Rig rig(String name, String kind, double clearance_m, Set<Placement> placements) {
        return new Rig(
                RigId.called(name),
                kind,
                new Rig.Clearance(clearance_m, Double.NaN),
                new Rig.Boom(27.4, 2, 1e5, 4e5),
                new Rig.Tank(4.5, .05, .1),
                new Rig.Pace(2, 6, .8),
                placements,
                22);
    }

    @Override
    public Farm farm() {
        List<WeatherDay> forecast = List.of(
                WeatherDay.of(TODAY, 29, 14, 0),
                WeatherDay.of(TODAY.plusDays(1), 31, 16, 0),
                WeatherDay.of(TODAY.plusDays(2), 27, 17, 15));
        return new Farm(
                "Tern Hollow Farm",
                new Site(41.8, -93.4, 300),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(ZONES, List.of()),
                new Farm.Work(List.of(), readings, List.of(), List.of()),
                new Farm.Shelf(
                        List.of(),
                        List.of(),
                        List.of(
                                rig(
                                        "highboy",
                                        "self-propelled",
                                        1.83,
                                        Set.of(Placement.ROW_BASE, Placement.MID_DRIBBLE)),
                                rig("coulter bar", "toolbar", .91, Set.of(Placement.MID_INJECT))),
                        List.of(),
                        List.of()),
                new WeatherBook(
                        new WeatherSeries(List.of(WeatherDay.of(TODAY.minusDays(1), 28, 15, 0))),
                        forecast,
                        List.of(.0, .1, .7),
                        List.of(),
                        List.of(),
                        List.of()),
                Farm.Rules.usual(new Prices(4.5, .35, 1.2, Map.of())),
                List.of());
    }

    @Override
    public LocalDate on() {
        return TODAY;
    }

    @Override
    public Brief brief() {
        List<Option> passes = List.of(
                options(MILL).get(0),
                option(ZONES.get(2), 0, 45, Placement.ROW_BASE, 77),
                option(ZONES.get(3), 2, 40, Placement.ROW_BASE, 59),
                FixtureSprays.option(ZONES.get(1), "Hired high rig", 27, List.of()));
        return new Brief(
                farm().name(),
                TODAY,
                ZONES.stream().map(this::outlook).toList(),
                passes.stream().map(this::proposed).toList(),
                List.of(
                        new Brief.LeftOut(
                                "Creek Bottom",
                                "",
                                Purpose.NITROGEN,
                                NotProposed.DOES_NOT_PAY,
                                Said.text("Pays in 2 of 10 years: soybeans left enough.")),
                        new Brief.LeftOut(
                                "Long Quarter",
                                "west",
                                Purpose.NITROGEN,
                                NotProposed.NOT_JUDGED,
                                Said.text("A soil test first: see below."))),
                List.of(new Brief.ReadingWorthTaking(
                        "Long Quarter",
                        "west",
                        Reading.Kind.NITRATE,
                        Said.text("The choice of the rate turns on it."),
                        7.7)),
                FixtureSprays.table(),
                List.of(Cautions.LABEL, Said.text("UAN on the skin: wash at once.")),
                48_000);
    }

    @Override
    public Outlook outlook(Zone zone) {
        return look(zone, ToySeason.run(zone, zone.planted().minusDays(5), 70, start(zone)));
    }

    @Override
    public Outlook outlookWith(Zone zone, Option option) {
        return look(zone, ToySeason.run(zone, option.date(), option.nitrogen_kgHa(), start(zone) + 60));
    }

    private static double start(Zone zone) {
        return zone.seedbed().previousCrop() == PreviousCrop.SOYBEAN ? 130 : 55;
    }

    private Outlook look(Zone zone, SeasonTrace trace) {
        int today = trace.day(TODAY);
        double height = trace.at(today, Daily.HEIGHT_CM);
        List<Spread> nni = new ArrayList<>();
        Optional<LocalDate> shortOn = Optional.empty();
        for (int day = 0; day < trace.days(); day++) {
            double p50 = trace.at(day, Daily.NNI);
            double wide = Math.max(0, day - today) * .0035 + .01;
            nni.add(new Spread(p50 - wide, p50, Math.min(1.15, p50 + wide * .7)));
            if (shortOn.isEmpty() && day > today && p50 < .93) {
                shortOn = Optional.of(trace.date(day));
            }
        }
        DateSpread spread = new DateSpread(
                shortOn.map(d -> d.minusDays(3)),
                shortOn,
                shortOn.map(d -> d.plusDays(5)),
                shortOn.isPresent() ? .9 : .2);
        Optional<LocalDate> last = day(trace, Daily.HEIGHT_CM, 173).map(d -> d.minusDays(1));
        return new Outlook(
                zone,
                TODAY,
                trace,
                new Outlook.Stand(
                        Said.text("V" + (int) trace.at(today, Daily.COLLARS)),
                        trace.at(today, Daily.COLLARS),
                        new Spread(height * .91, height, height * 1.1)),
                new Outlook.Ahead(spread, nni, new Spread(8600, 10400, 11900), Yield.Limit.NITROGEN, Optional.empty()),
                new FieldCalendar(
                        zone.planted(),
                        day(trace, Daily.REP, .33).map(d -> d.minusDays(1)),
                        about(day(trace, Daily.COLLARS, .1), 0),
                        about(day(trace, Daily.REP, .01), 2),
                        about(day(trace, Daily.REP, .999), 6),
                        workable(trace)),
                List.of(
                        new OutOfReach("highboy", last, last.map(d -> d.plusDays(1))),
                        new OutOfReach("coulter bar", Optional.empty(), Optional.of(TODAY.minusDays(2)))),
                new Outlook.Remainder(1e-9, 2e-9),
                List.of(new Flag(zone.field(), "soil pH of the subsoil was taken as above it")));
    }

    private static DateSpread about(Optional<LocalDate> date, int days) {
        return new DateSpread(date.map(d -> d.minusDays(days)), date, date.map(d -> d.plusDays(days)), 1);
    }

    /** Dry but for the forecast's rain two days ahead; six days in ten from then on. */
    private static WorkableDays workable(SeasonTrace trace) {
        List<Double> chance = new ArrayList<>();
        for (int day = 0; day < trace.days(); day++) {
            int ahead = day - trace.day(TODAY);
            chance.add(ahead < 0 ? 1 : ahead < 2 ? .9 : ahead < 4 ? .2 : .6);
        }
        return new WorkableDays(trace.first(), chance);
    }

    private static Optional<LocalDate> day(SeasonTrace trace, Daily what, double level) {
        for (int day = 0; day < trace.days(); day++) {
            if (trace.at(day, what) >= level) {
                return Optional.of(trace.date(day));
            }
        }
        return Optional.empty();
    }

    @Override
    public List<Option> options(Zone zone) {
        List<Option> all = new ArrayList<>();
        for (int days = 0; days < 9; days += 2) {
            for (double lb : new double[] {30, 50, 70}) {
                for (Placement p : List.of(Placement.ROW_BASE, Placement.MID_DRIBBLE)) {
                    double rate = 40 * Math.sqrt(lb / 50) * (p == Placement.ROW_BASE ? 1 : .8) - 4 * days;
                    all.add(option(zone, days, lb, p, rate * 2.471));
                }
            }
        }
        all.sort((a, b) -> Double.compare(b.worth().mean_usdHa(), a.worth().mean_usdHa()));
        return all;
    }

    @Override
    public ProtectionAnswer protection(Zone zone) {
        return FixtureSprays.answer(zone);
    }

    /** The best of each day. */
    private List<Option> picks(Zone zone) {
        Set<LocalDate> seen = new HashSet<>();
        return options(zone).stream().filter(o -> seen.add(o.date())).toList();
    }

    /** With its turn in the week's plan where that has one, though by options of its own. */
    private Brief.Proposed proposed(Option way) {
        Optional<Week.Stop> turn = week(1).all().stream()
                .filter(s -> way.isNitrogen()
                        && s.pass()
                                .zone()
                                .label()
                                .equals(way.zone().isEmpty() ? way.field() : way.field() + ", " + way.zone()))
                .findFirst();
        return new Brief.Proposed(way, turn, Optional.empty());
    }

    private static final ProtectionAnswer UNPROTECTED =
            new ProtectionAnswer(List.of(), Optional.empty(), List.of(), List.of());
    private static final Map<Long, Week> WEEKS = new ConcurrentHashMap<>();

    @Override
    public Week week(long seed) {
        return WEEKS.computeIfAbsent(seed, this::newWeek);
    }

    private Week newWeek(long seed) {
        return Week.of(
                withYears(),
                TODAY,
                ZONES.stream().map(zone -> answer(zone, UNPROTECTED)).toList(),
                Week.Search.of(seed));
    }

    @Override
    public NitrogenOptions.Answer answer(Zone zone) {
        return answer(zone, protection(zone));
    }

    private NitrogenOptions.Answer answer(Zone zone, ProtectionAnswer protection) {
        return new NitrogenOptions.Answer(
                outlook(zone),
                options(zone),
                picks(zone),
                options(zone).stream().findFirst(),
                new NitrogenOptions.Knowing(Optional.empty(), new CropReadingWorth(0, 0, Optional.empty()), 0),
                new Tested(List.of(), Optional.empty()),
                protection,
                0);
    }

    private static final Map<Question<?>, CompletableFuture<?>> SEARCHES = new ConcurrentHashMap<>();

    /** Searches beside the one that asks, shared by all tests; the rest is there at once. */
    @Override
    @SuppressWarnings("unchecked")
    public <T> CompletableFuture<T> ask(Question<T> question) {
        return question.isSearch()
                ? (CompletableFuture<T>)
                        SEARCHES.computeIfAbsent(question, q -> CompletableFuture.supplyAsync(() -> q.of(this)))
                : FarmDay.super.ask(question);
    }

    /** With earlier years of weather, as futures need them: a wet day in four. */
    private Farm withYears() {
        Farm farm = farm();
        List<WeatherDay> days = new ArrayList<>();
        for (LocalDate d = TODAY.minusYears(22).minusDays(90); !d.isAfter(TODAY); d = d.plusDays(1)) {
            days.add(WeatherDay.of(d, 28, 15, (d.toEpochDay() + d.getYear()) % 4 == 0 ? 8 : 0));
        }
        return RecordCopy.with(farm, "weather", RecordCopy.with(farm.weather(), "observed", new WeatherSeries(days)));
    }

    private static Option option(Zone zone, int days, double lb, Placement placement, double mean) {
        double kgHa = Units.kgHa(lb);
        // Money, yield and break-even agree with each other: corn at 4.50 less 0.35, 96 spent.
        double bushelsHa = (mean + 96) / 4.15;
        double gained_kgHa = bushelsHa * 56 * Units.KG_PER_LB * Units.DRY_SHARE_OF_TRADE_CORN;
        return new Option(
                FieldPart.of(zone),
                Purpose.NITROGEN,
                TODAY.plusDays(days),
                new Option.Application("UAN 32", placement, kgHa, kgHa / .4242, true, "highboy"),
                new Worth(
                        mean,
                        mean - 110,
                        mean + 105,
                        Math.min(1, Math.max(0, .55 + mean / 330)),
                        mean - 150,
                        96 / bushelsHa + .35,
                        96,
                        gained_kgHa,
                        Double.NaN),
                12.1 - days,
                List.of(
                        () -> Said.text("Short of nitrogen about July 5 (July 2 to July 9)."),
                        () -> Said.text("The June rain left little, and most of it lies between the rows.")),
                Optional.empty(),
                Optional.empty());
    }
}
