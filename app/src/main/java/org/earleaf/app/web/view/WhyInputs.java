// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Dates;
import org.earleaf.decide.Option;
import org.earleaf.decide.Outlooks;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Measure;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** What went into the figures of a field on a day, by kind. */
final class WhyInputs {
    /** What may go into a figure. */
    enum Kind {
        CHOICE,
        PRICES,
        STATE,
        PASSES,
        READINGS,
        WEATHER,
        GROUND,
        RIGS
    }

    /**
     * @param from who says so: you, the model, the forecast
     */
    record Input(String name, String value, String from) {}

    private final FarmDay day;
    private final Zone zone;
    private final Optional<Option> choice;
    private final Format format;

    WhyInputs(FarmDay day, Zone zone, Optional<Option> choice, Format format) {
        this.day = day;
        this.zone = zone;
        this.choice = choice;
        this.format = format;
    }

    static String you() {
        return tell("page.why-inputs.entered-by-you");
    }

    private static String model() {
        return tell("page.why-inputs.from-the-daily-model");
    }

    List<Input> of(List<Kind> kinds) {
        return kinds.stream().flatMap(k -> of(k).stream()).toList();
    }

    private List<Input> of(Kind kind) {
        return switch (kind) {
            case CHOICE -> choice.map(this::choice).orElse(List.of());
            case PRICES -> prices();
            case STATE -> state();
            case PASSES -> passes();
            case READINGS -> readings();
            case WEATHER -> weather();
            case GROUND -> ground();
            case RIGS -> rigs();
        };
    }

    private List<Input> choice(Option o) {
        return List.of(
                new Input(
                        tell("page.why-inputs.choice"),
                        Dates.brief(o.date()) + ", " + Phrases.choice(o, format),
                        tell("page.why-inputs.of-those-worked-out")),
                new Input(
                        tell("page.why-inputs.product"),
                        o.spray()
                                .map(s -> Phrases.mix(s.mix(), format))
                                .orElseGet(() -> o.product() + ", " + format.product(o.productRate(), o.liquid()) + " "
                                        + format.productUnit(o.liquid())),
                        o.isNitrogen()
                                ? tell("page.why-inputs.rate-by-its-nitrogen")
                                : tell("page.why-inputs.rate-as-in-your-recipe")),
                new Input(
                        tell("page.why-inputs.product-and-pass-mean"),
                        format.moneyFine(o.worth().cost_usdHa()) + "/" + format.areaUnit(),
                        tell("page.why-inputs.prices-below-with-what")),
                new Input(
                        tell("page.why-inputs.yield-gained-mean"),
                        format.yieldFine(o.worth().meanYieldGain_kgHa()) + " " + format.yieldUnit(),
                        tell("page.why-inputs.futures-with-less-without", "members", Outlooks.MEMBERS)));
    }

    private List<Input> prices() {
        List<Input> all = new ArrayList<>(SettingRows.corn(day.farm().prices()));
        choice.ifPresent(o -> {
            if (o.isNitrogen()) {
                all.add(SettingRows.nitrogen(day.farm().prices(), o.product(), format));
            }
            day.farm().rigs().stream()
                    .filter(r -> r.name().equals(o.rig()))
                    .forEach(r -> all.add(SettingRows.pass(r, format)));
        });
        return all;
    }

    private List<Input> state() {
        Outlook o = day.outlook(zone);
        int today = o.today();
        return List.of(
                new Input(tell("page.why-inputs.stage"), format.say(o.stage()), model()),
                new Input(
                        tell("page.why-inputs.height"),
                        tell(
                                "page.why-inputs.to",
                                "length",
                                format.length(o.height_cm().p50()),
                                "lengthUnit",
                                format.lengthUnit(),
                                "length2",
                                format.length(o.height_cm().p10()),
                                "length3",
                                format.length(o.height_cm().p90())),
                        model()),
                new Input(
                        tell("page.why-inputs.nitrate-to-5-ft"),
                        format.nitrogen(SoilSums.of(o.trace(), today, Cell.NITRATE)) + " " + format.nitrogenUnit(),
                        model()),
                new Input(
                        tell("page.why-inputs.nitrogen-in-the-tops"),
                        tell(
                                "page.why-inputs.of-what-it-needs",
                                "nitrogen",
                                format.nitrogen(o.trace().at(today, Daily.SHOOT_N)),
                                "nitrogenUnit",
                                format.nitrogenUnit(),
                                "number",
                                Format.number(100 * o.trace().at(today, Daily.NNI), 0)),
                        model()));
    }

    private List<Input> passes() {
        List<Input> all = CalendarView.passesOn(day, zone)
                .filter(p -> p.state() == Pass.State.MADE && p.nitrogen_kgHa() > 0)
                .map(p -> new Input(
                        Dates.day(p.date()),
                        CalendarRow.what(p, format) + ", " + p.product() + ", " + Phrases.where(p.placement()),
                        you()))
                .toList();
        return all.isEmpty()
                ? List.of(new Input(
                        tell("page.why-inputs.passes-made"), tell("page.why-inputs.none-with-nitrogen"), you()))
                : all;
    }

    private List<Input> readings() {
        List<Input> all = day.farm().readings().stream()
                .filter(r -> r.isOn(zone) && !r.date().isAfter(day.on()))
                .map(WhyInputs::reading)
                .toList();
        return all.isEmpty()
                ? List.of(
                        new Input(tell("page.why-inputs.readings"), tell("page.why-inputs.none-on-this-field"), you()))
                : all;
    }

    private static Input reading(Reading r) {
        return new Input(Dates.day(r.date()), ReadingKinds.name(r.kind()) + " " + r.entered(), you());
    }

    private List<Input> weather() {
        WeatherSeries seen = day.farm().weather().observed();
        List<WeatherDay> forecast = day.farm().weather().forecast();
        List<Input> all = new ArrayList<>();
        if (!seen.isEmpty()) {
            // What a file holds beyond the day is not used for it.
            LocalDate last = seen.last().isAfter(day.on()) ? day.on() : seen.last();
            all.add(new Input(
                    tell("page.why-inputs.weather-observed"),
                    tell("page.why-inputs.to-2", "first", seen.first(), "last", last),
                    tell("page.why-inputs.your-weather-file-its-gaps")));
        }
        all.add(new Input(
                tell("page.why-inputs.forecast"),
                forecast.isEmpty()
                        ? "none"
                        : tell(
                                "page.why-inputs.to-3",
                                "date",
                                Dates.day(forecast.get(forecast.size() - 1).date())),
                tell("page.why-inputs.as-issued")));
        all.add(new Input(
                tell("page.why-inputs.after-that"),
                tell("page.why-inputs.courses-of-weather", "members", Outlooks.MEMBERS),
                tell("page.why-inputs.past-years-or-the-generator")));
        return all;
    }

    private List<Input> ground() {
        return List.of(
                new Input(tell("page.why-inputs.area"), format.area(zone.area_ha()) + " " + format.areaUnit(), you()),
                new Input(
                        tell("page.why-inputs.soil"),
                        format.say(zone.soil().texture()),
                        tell("page.why-inputs.by-its-sand-and-clay")),
                new Input(
                        tell("page.why-inputs.planted"),
                        tell(
                                "page.why-inputs.day-corn-plants",
                                "planted",
                                Dates.day(zone.planted()),
                                "relativeMaturity",
                                Format.number(zone.planting().hybrid().relativeMaturity_d(), 0),
                                "plants",
                                format.plants(zone.planting().population_m2())),
                        you()),
                new Input(
                        tell("page.why-inputs.rows-before-tillage-drainage"),
                        tell(
                                "page.why-inputs.seedbed",
                                "rows",
                                Measure.SPAN.of(zone.rowSpacing_m()),
                                "crop",
                                zone.seedbed().previousCrop(),
                                "tillage",
                                zone.seedbed().tillage(),
                                "drainage",
                                zone.land().drainage()),
                        you()));
    }

    private List<Input> rigs() {
        return day.farm().rigs().stream()
                .filter(r -> !r.isTender())
                .map(r -> SettingRows.clearance(r, format))
                .toList();
    }
}
