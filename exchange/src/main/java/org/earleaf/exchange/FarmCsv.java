// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Parts;
import org.earleaf.entry.PriceEntry;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.YesNo;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.SunTime;

/** farm.csv: what there is once for the whole business, as key and value. */
final class FarmCsv {
    /** What farm.csv says. */
    record Head(String name, Site site, ZoneId timeZone, Prices prices, Settings settings) {}

    private final Sheet sheet;
    private final Findings findings;
    private final Column keyColumn;
    private final Column value;
    private final Map<String, Row> keys = new LinkedHashMap<>();
    private final Set<String> missing = new HashSet<>();
    private final Set<String> asked = new LinkedHashSet<>();
    private final List<String> inFile = new ArrayList<>();
    private boolean whole = true;

    private FarmCsv(Sheet sheet) {
        this.sheet = sheet;
        this.findings = sheet.findings();
        this.keyColumn = sheet.text("key");
        this.value = sheet.text("value");
    }

    static Optional<Head> read(Sheet sheet) {
        FarmCsv file = new FarmCsv(sheet);
        if (!sheet.isComplete()) {
            return Optional.empty();
        }
        if (sheet.rows().isEmpty()) {
            sheet.refuseNoRows();
            return Optional.empty();
        }
        for (Row row : sheet.rows()) {
            String name = row.text(file.keyColumn).toLowerCase(Locale.ROOT);
            file.inFile.add(name);
            Row before = file.keys.putIfAbsent(name, row);
            if (before != null) {
                row.refuse(
                        "row.twice",
                        file.keyColumn,
                        Said.of("found.second-time-row", "what", name, "row", String.valueOf(before.line())));
            }
        }
        return file.read();
    }

    private Optional<Head> read() {
        String name = text("name");
        int longitudeAt = keys.containsKey("longitude") ? keys.get("longitude").line() : 0;
        Site site = new Site(
                required("latitude", Measures.DEGREES, Ranges.LATITUDE),
                required("longitude", Measures.DEGREES, Ranges.LONGITUDE),
                required("elevation", Measures.ELEVATION_M, Ranges.ELEVATION));
        Optional<ZoneId> zone = timeZone();
        Place at = new Place(sheet.name(), longitudeAt, "longitude");
        // NaN was refused already.
        zone.filter(z -> !Double.isNaN(site.longitude_deg()))
                .flatMap(z -> SunTime.findProblem(site.longitude_deg(), z))
                .ifPresent(p -> {
                    whole = false;
                    findings.problem(at, p);
                });
        Prices prices = PriceEntry.of(new KeyParts());
        Map<Setting, Double> settings = settings();
        List.copyOf(keys.keySet()).forEach(this::unknown);
        return whole && zone.isPresent()
                ? Optional.of(new Head(name, site, zone.get(), prices, new Settings(settings)))
                : Optional.empty();
    }

    private Map<Setting, Double> settings() {
        Map<Setting, Double> own = new EnumMap<>(Setting.class);
        for (Setting setting : Setting.values()) {
            OptionalDouble value =
                    switch (setting.unit()) {
                        case "on/off" -> yesNo(setting.word());
                        case "share" -> optional(setting, Measures.PLAIN_SHARE);
                        case "mg/kg" -> optional(setting, Measures.NITRATE_MGKG);
                        case "m" -> optional(setting, Measures.LENGTH_M);
                        case "$/ha" -> optional(setting, Measures.USD_HA);
                        case "m/s" -> optional(setting, Measures.SPEED_MS);
                        case "h" -> optional(setting, Measures.HOURS);
                        case "min" -> optional(setting, Measures.MINUTES);
                        case "days" -> optional(setting, Measures.DAYS);
                        case "ha" -> optional(setting, Measures.AREA_HA);
                        default -> throw new IllegalStateException("no measure reads " + setting.unit());
                    };
            value.ifPresent(v -> own.put(setting, v));
        }
        return own;
    }

    private OptionalDouble optional(Setting setting, Measure measure) {
        return optional(setting.word(), measure, Ranges.of(setting));
    }

    private OptionalDouble yesNo(String key) {
        asked.add(key);
        Row row = keys.remove(key);
        if (row == null) {
            return OptionalDouble.empty();
        }
        Column column = valueOf(key, Measure.PLAIN, Allowed.ANY, "").orElseThrow();
        String word = row.text(column);
        Optional<Boolean> yes = YesNo.find(word);
        if (yes.isEmpty()) {
            whole = false;
            row.refuse("word.not-yes-or-no", column, Problem.seen(word));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(yes.get() ? 1 : 0);
    }

    /** Prices by their keys, each of which names the unit of its value. */
    private final class KeyParts implements Parts {
        @Override
        public String text(String part) {
            return keys.entrySet().stream()
                    .filter(key -> measure(part).find(part, key.getKey()).isPresent())
                    .map(key -> key.getValue().cell(value))
                    .findFirst()
                    .orElse("");
        }

        @Override
        public double number(String part, Allowed allowed) {
            return find(part, measure(part), allowed).orElse(Double.NaN);
        }

        @Override
        public double number(String part, Allowed allowed, double usual) {
            return find(part, measure(part), allowed).orElseGet(() -> {
                Measure.Unit first = measure(part).first();
                String key = part + "_" + first.ending();
                String shown = first.text(usual);
                remark(part, Said.of("flag.key-missing", "key", key, "taken", shown));
                return usual;
            });
        }

        @Override
        public double needed(String part, Allowed allowed) {
            return required(part, measure(part), allowed);
        }

        @Override
        public Optional<LocalDate> date(String part) {
            return Optional.empty();
        }

        @Override
        public void refuse(Problem problem) {
            whole = false;
            findings.problem(Place.of(sheet.name()), problem);
        }

        @Override
        public void remark(String part, Said said) {
            findings.flag(Place.of(sheet.name()), said);
        }

        @Override
        public void assumed(String part, String word) {
            remark(part, Said.text(word));
        }

        @Override
        public boolean isGood() {
            return whole;
        }
    }

    private static Measure measure(String part) {
        if (part.equals("n_price")) {
            return Measures.USD_KG;
        }
        if (part.equals(PriceEntry.UAN)) {
            return perKg(NitrogenProduct.findBuiltIn("UAN 32").orElseThrow());
        }
        return NitrogenProduct.builtIn().stream()
                .filter(product -> PriceEntry.part(product).equals(part))
                .findFirst()
                .map(FarmCsv::perKg)
                .orElse(Measures.CORN_USDBU);
    }

    /** Money for a kilogram of product. */
    private static Measure perKg(NitrogenProduct product) {
        Measure mass = Measure.of("usd_ton", 1 / (2000 * Units.KG_PER_LB))
                .and("usd_t", 1e-3)
                .and("usd_lb", 1 / Units.KG_PER_LB)
                .and("usd_kg", 1);
        if (!product.isLiquid()) {
            return mass;
        }
        return mass.and("usd_gal", 1 / (Units.L_PER_GAL * product.density_kgL()))
                .and("usd_l", 1 / product.density_kgL());
    }

    private String text(String key) {
        Row row = keys.remove(key);
        if (row == null) {
            missing(key, key);
            return "";
        }
        return row.text(valueOf(key, Measure.PLAIN, Allowed.ANY, "").orElseThrow());
    }

    private Optional<ZoneId> timeZone() {
        Row row = keys.get("time_zone");
        String zone = text("time_zone");
        if (row == null || zone.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ZoneId.of(zone));
        } catch (DateTimeException e) {
            Column column = valueOf("time_zone", Measure.PLAIN, Allowed.ANY, "").orElseThrow();
            row.refuse("time-zone.unknown", column, Problem.seen(zone));
            return Optional.empty();
        }
    }

    private double required(String key, Measure measure, Allowed limits) {
        OptionalDouble number = find(key, measure, limits);
        if (number.isEmpty()) {
            missing(key, measure.names(key));
        }
        return number.orElse(Double.NaN);
    }

    private OptionalDouble optional(String key, Measure measure, Allowed limits) {
        return find(key, measure, limits);
    }

    private OptionalDouble find(String key, Measure measure, Allowed limits) {
        asked.add(key);
        OptionalDouble found = OptionalDouble.empty();
        for (String inFile : List.copyOf(keys.keySet())) {
            Optional<Column> column = valueOf(key, measure, limits, inFile);
            if (column.isEmpty()) {
                continue;
            }
            Row row = Objects.requireNonNull(keys.remove(inFile));
            if (found.isPresent()) {
                row.refuse("key.two-units", column.get(), Said.of("found.second-time", "what", key));
            } else {
                found = OptionalDouble.of(row.number(column.get()));
            }
            whole &= row.isGood();
        }
        return found;
    }

    /** The value column as the key names its unit; empty when the key in the file is another. */
    private Optional<Column> valueOf(String key, Measure measure, Allowed limits, String inFile) {
        String named = inFile.isEmpty() ? key : inFile;
        return measure.find(key, named)
                .map(unit -> new Column(key, true, limits, "value of " + named, value.index(), unit));
    }

    private void missing(String key, String names) {
        whole = false;
        missing.add(key);
        findings.problem(
                "key.missing",
                new Place(sheet.name(), 0, "key"),
                Said.of("found.keys", "key", key, "keys", List.copyOf(inFile)),
                "names",
                names);
    }

    private void unknown(String key) {
        Row row = keys.get(key);
        Optional<String> base =
                asked.stream().filter(a -> key.startsWith(a + "_")).findFirst();
        if (base.isPresent() && missing.contains(base.get())) {
            return;
        }
        if (row != null && base.isPresent()) {
            row.refuse("key.unit-unknown", keyColumn, Problem.seen(key), "key", base.get());
        } else if (row != null) {
            findings.flag(row.place(), Said.of("flag.key-unknown", "key", key));
        }
    }
}
