// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Product;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.farm.Stock;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Boundary;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Flag;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherFill;
import org.earleaf.weather.WeatherHour;
import org.earleaf.weather.WeatherSeries;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Invented farms for tests: every field of every fact filled, at random, with a share of unknowns. */
public final class Farms {
    private static final double UNKNOWN = Double.NaN;
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
    private static final String[] WORDS = {
        "Home Eighty", "North 40", "Bottom; \"low\"", "Ünïcödé", "it's", "a,b", "x\ny", ""
    };

    private final SplittableRandom random;

    private Farms(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A farm with its observed weather as written. */
    public record Written(Farm farm, List<WeatherDay> observed) {}

    public static Written random(long seed) {
        Farms farms = new Farms(seed);
        List<WeatherDay> observed = farms.written();
        return new Written(farms.farm(observed), observed);
    }

    /** Two fields, forty days of weather (4 mm a day), two passes of which one is planned. */
    public static Farm small() {
        List<WeatherDay> days = IntStream.range(0, 40)
                .mapToObj(k -> WeatherDay.of(FIRST.plusDays(k), 28, 15, 4))
                .toList();
        return new Farm(
                "Test Farm",
                new Site(40, -88, 220),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(zone("Home Eighty", "", 32), zone("Sand Hill", "", 16)), List.of()),
                new Farm.Work(
                        List.of(
                                pass("passes.csv row 2", "Home Eighty", FIRST, 40, Pass.State.MADE),
                                pass("passes.csv row 3", "Home Eighty", FIRST.plusDays(38), 60, Pass.State.PLANNED)),
                        List.of(new Reading(
                                "readings.csv row 2",
                                new FieldPart("Home Eighty", ""),
                                FIRST.plusDays(30),
                                Reading.Kind.NITRATE,
                                12,
                                "12 ppm",
                                new Reading.Sampled(0, 304.8, Reading.Position.RANDOM),
                                "",
                                Scouted.NOTHING)),
                        List.of(),
                        List.of()),
                new Farm.Shelf(
                        List.of(),
                        List.of(),
                        List.of(new Rig(
                                RigId.called("highboy"),
                                "self-propelled",
                                new Rig.Clearance(1.8, Double.NaN),
                                new Rig.Boom(27.4, 2, 1e5, 4e5),
                                new Rig.Tank(3.8, .02, .01),
                                new Rig.Pace(2, 5, .65),
                                Set.of(Placement.ROW_BASE),
                                20)),
                        List.of(),
                        List.of()),
                new WeatherBook(
                        new WeatherSeries(days),
                        List.of(WeatherDay.of(FIRST.plusDays(40), 30, 18, 9)),
                        List.of(.5),
                        List.of(),
                        List.of(),
                        List.of()),
                Farm.Rules.usual(new Prices(4.4, .4, 1.2, Map.of("UAN 32", 1.3))),
                List.of());
    }

    public static Zone zone(String field, String zone, double area_ha) {
        SoilProfile soil = SoilProfile.of(
                List.of(new Horizon(0, 1524, 20, 25, 3, 6.5, UNKNOWN, Horizon.Measured.NOT_GIVEN)),
                "soil.csv",
                new ArrayList<>());
        return new Zone(
                ZoneName.of(field, zone),
                area_ha,
                new Zone.Planting("corn", FIRST, Hybrid.ofMaturity(108), 8, .762, UNKNOWN),
                new Zone.Land(soil, Drainage.TILED, UNKNOWN),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.REDUCED, UNKNOWN),
                DiseaseFacts.NOT_GIVEN);
    }

    public static Pass pass(String id, String field, LocalDate date, double n_kgHa, Pass.State state) {
        return new Pass(
                id,
                new FieldPart(field, ""),
                date,
                "UAN 32",
                new Pass.Rate(n_kgHa, "kg N/ha", n_kgHa),
                Placement.ROW_BASE,
                Inhibitor.NONE,
                state);
    }

    private <T> List<T> some(int most, IntFunction<T> one) {
        return IntStream.range(0, random.nextInt(most + 1)).mapToObj(one).toList();
    }

    private String word() {
        return WORDS[random.nextInt(WORDS.length)];
    }

    private double amount() {
        return random.nextDouble() * 1000;
    }

    private double maybe() {
        return random.nextInt(4) == 0 ? UNKNOWN : amount();
    }

    private <E> E any(E[] values) {
        return values[random.nextInt(values.length)];
    }

    private LocalDate date() {
        return FIRST.plusDays(random.nextInt(200));
    }

    private Farm farm(List<WeatherDay> written) {
        Site site = new Site(25 + random.nextDouble() * 25, -random.nextDouble() * 100, amount());
        WeatherBook book = weather(written, site);
        List<Flag> flags = new ArrayList<>(some(3, k -> new Flag(word(), word() + k)));
        flags.addAll(book.flags());
        Map<String, Double> prices = new TreeMap<>();
        some(4, k -> prices.put("product " + k, amount()));
        int fields = 1 + random.nextInt(5);
        return new Farm(
                "Farm " + word(),
                site,
                ZoneId.of("America/Chicago"),
                new Farm.Ground(IntStream.range(0, fields).mapToObj(this::zone).toList(), some(3, this::boundary)),
                new Farm.Work(
                        some(6, this::pass),
                        some(6, this::reading),
                        some(4, k -> new Irrigation(word(), word(), date(), amount())),
                        some(4, k -> new Manure(word(), word(), date(), amount(), amount(), any(Placement.values()))),
                        past()),
                new Farm.Shelf(
                        some(3, k -> nitrogen("own " + k)),
                        some(5, this::product),
                        some(4, this::rig),
                        some(3, this::recipe),
                        some(4, k -> new Stock(word() + k, amount(), "gal", maybe(), maybe(), word(), word()))),
                book,
                new Farm.Rules(new Prices(amount(), amount(), amount(), prices), settings(), RandomLabels.book(random)),
                flags);
    }

    /** Without a draw, so that what follows stays as it was. */
    private static List<PastYear> past() {
        return IntStream.range(0, WORDS.length)
                .mapToObj(k -> new PastYear(
                        new FieldPart("Field 0", WORDS[k]),
                        2025 - k / 2,
                        PreviousCrop.values()[k % PreviousCrop.values().length],
                        k % 2 == 0 ? UNKNOWN : 9000 + k / 3.0,
                        k % 3 == 0 ? UNKNOWN : 150 + k / 3.0))
                .toList();
    }

    private Settings settings() {
        Settings settings = Settings.USUAL;
        for (Setting s : Setting.values()) {
            if (random.nextBoolean()) {
                settings = settings.with(s, s.low() + random.nextDouble() * (s.high() - s.low()));
            }
        }
        return settings;
    }

    private Zone zone(int k) {
        double sand = random.nextDouble() * 50;
        double clay = 3 + random.nextDouble() * 45;
        SoilProfile soil = SoilProfile.of(
                List.of(
                        new Horizon(
                                0,
                                300,
                                sand,
                                clay,
                                1 + random.nextDouble() * 5,
                                6.5,
                                UNKNOWN,
                                Horizon.Measured.NOT_GIVEN),
                        new Horizon(300, 1524, clay, sand / 2 + 5, .5, 7, 12, new Horizon.Measured(1.4, .12, .28))),
                "soil.csv",
                new ArrayList<>());
        return new Zone(
                ZoneName.of("Field " + k + word(), word()),
                1 + amount(),
                new Zone.Planting(
                        any(new String[] {"corn", "soybean"}),
                        date(),
                        new Hybrid(word(), maybe(), maybe(), maybe()),
                        maybe(),
                        maybe(),
                        maybe()),
                new Zone.Land(soil, any(Drainage.values()), maybe()),
                new Zone.Seedbed(any(PreviousCrop.values()), any(Tillage.values()), maybe()),
                RandomLabels.disease(random));
    }

    private Pass pass(int k) {
        return new Pass(
                "passes.csv row " + (k + 2),
                new FieldPart(word(), word()),
                date(),
                word(),
                new Pass.Rate(amount(), "lb N/ac", amount()),
                any(Placement.values()),
                any(Inhibitor.values()),
                any(Pass.State.values()));
    }

    private Reading reading(int k) {
        return new Reading(
                "readings.csv row " + (k + 2),
                new FieldPart(word(), word()),
                date(),
                any(Reading.Kind.values()),
                amount(),
                word(),
                new Reading.Sampled(maybe(), maybe(), any(Reading.Position.values())),
                word(),
                Scouted.NOTHING);
    }

    private NitrogenProduct nitrogen(String name) {
        return new NitrogenProduct(
                name,
                random.nextDouble(),
                maybe(),
                random.nextDouble(),
                random.nextDouble(),
                random.nextDouble(),
                word());
    }

    private Product product(int k) {
        return new Product(
                "product " + k,
                any(new String[] {"SC", "EC", ""}),
                maybe(),
                maybe(),
                "$/gal",
                random.nextBoolean() ? nitrogen("n" + k) : null,
                word(),
                word(),
                RandomLabels.kind(random));
    }

    private Rig rig(int k) {
        Set<Placement> placements = random.nextBoolean() ? Set.of() : Set.of(Placement.BROADCAST, Placement.MID_INJECT);
        return new Rig(
                RigId.called("rig " + k),
                "pulled",
                new Rig.Clearance(maybe(), maybe()),
                new Rig.Boom(maybe(), random.nextInt(3), maybe(), maybe()),
                new Rig.Tank(maybe(), maybe(), maybe()),
                new Rig.Pace(maybe(), maybe(), maybe()),
                placements,
                maybe());
    }

    private Recipe recipe(int k) {
        return new Recipe("recipe " + k, maybe(), some(4, l -> new Recipe.Line(word(), amount(), "fl oz/ac")));
    }

    private Boundary boundary(int k) {
        double x = -random.nextDouble() * 90;
        double y = random.nextDouble() * 45;
        Coordinate start = new Coordinate(x, y);
        return new Boundary("Field " + k, word(), new GeometryFactory().createPolygon(new Coordinate[] {
                    start, new Coordinate(x + .01, y), new Coordinate(x, y + .01), start
                }));
    }

    private WeatherDay day(LocalDate date, boolean holes) {
        double low = random.nextDouble() * 30 - 10;
        boolean known = !holes || random.nextInt(5) > 0;
        return new WeatherDay(
                date,
                known ? low + 1 + random.nextDouble() * 15 : UNKNOWN,
                low,
                holes && random.nextInt(5) == 0 ? UNKNOWN : random.nextDouble() * 40,
                UNKNOWN,
                random.nextBoolean() ? random.nextDouble() * 9 : UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                random.nextBoolean() ? low - 1 : UNKNOWN);
    }

    private WeatherBook weather(List<WeatherDay> written, Site site) {
        WeatherFill.Filled past = WeatherFill.fill(written, site, FarmStore.WEATHER);
        List<WeatherDay> ahead = some(7, k -> day(FIRST.plusDays(100 + k), false));
        List<WeatherHour> hours = some(
                5,
                k -> new WeatherHour(
                        LocalDateTime.of(2026, 11, 1, k / 2, 0),
                        maybe(),
                        maybe(),
                        maybe(),
                        maybe(),
                        maybe(),
                        maybe(),
                        maybe(),
                        maybe()));
        List<Flag> flags = new ArrayList<>(past.flags());
        flags.addAll(some(3, k -> new Flag("forecast.csv", word() + k)));
        return new WeatherBook(
                past.series(), ahead, ahead.stream().map(d -> maybe()).toList(), hours, past.gaps(), flags);
    }

    /** Days in order with some left out and some values unknown. */
    private List<WeatherDay> written() {
        List<WeatherDay> days = new ArrayList<>();
        for (int k = 0; k < 90; k++) {
            boolean longHole = k > 30 && k < 70;
            if (k == 0 || k == 89 || !longHole && random.nextInt(6) > 0) {
                days.add(day(FIRST.plusDays(k), k > 0 && k < 89));
            }
        }
        return days;
    }
}
