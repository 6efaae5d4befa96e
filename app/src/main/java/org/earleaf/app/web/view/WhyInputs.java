// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.decide.Option;
import org.earleaf.decide.Outlooks;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
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

    static final String YOU = "Entered by you";
    private static final String MODEL = "From the daily model";

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
                new Input("Choice", Format.day(o.date()) + ", " + Words.choice(o, format), "Of those worked out"),
                new Input(
                        "Product",
                        o.spray()
                                .map(s -> Words.mix(s.mix(), format))
                                .orElseGet(() -> o.product() + ", " + format.product(o.productRate(), o.liquid()) + " "
                                        + format.productUnit(o.liquid())),
                        o.isNitrogen() ? "Rate by its nitrogen" : "Rate as in your recipe"),
                new Input(
                        "Product and pass, mean",
                        format.moneyFine(o.worth().cost_usdHa()) + "/" + format.areaUnit(),
                        "Prices below; with what may follow"),
                new Input(
                        "Yield gained, mean",
                        format.yieldFine(o.worth().meanYieldGain_kgHa()) + " " + format.yieldUnit(),
                        Outlooks.MEMBERS + " futures, with less without"));
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
                new Input("Stage", o.stage(), MODEL),
                new Input(
                        "Height",
                        format.length(o.height_cm().p50()) + " " + format.lengthUnit() + " ("
                                + format.length(o.height_cm().p10()) + " to "
                                + format.length(o.height_cm().p90()) + ")",
                        MODEL),
                new Input(
                        "Nitrate to 5 ft",
                        format.nitrogen(SoilSums.of(o.trace(), today, Cell.NITRATE)) + " " + format.nitrogenUnit(),
                        MODEL),
                new Input(
                        "Nitrogen in the tops",
                        format.nitrogen(o.trace().at(today, Daily.SHOOT_N)) + " " + format.nitrogenUnit() + ", "
                                + Format.number(100 * o.trace().at(today, Daily.NNI), 0) + " % of what it needs",
                        MODEL));
    }

    private List<Input> passes() {
        List<Input> all = CalendarView.passesOn(day, zone)
                .filter(p -> p.state() == Pass.State.MADE && p.nitrogen_kgHa() > 0)
                .map(p -> new Input(
                        Format.date(p.date()),
                        CalendarRow.what(p, format) + ", " + p.product() + ", " + Words.where(p.placement()),
                        YOU))
                .toList();
        return all.isEmpty() ? List.of(new Input("Passes made", "none with nitrogen", YOU)) : all;
    }

    private List<Input> readings() {
        List<Input> all = day.farm().readings().stream()
                .filter(r -> r.isOn(zone) && !r.date().isAfter(day.on()))
                .map(WhyInputs::reading)
                .toList();
        return all.isEmpty() ? List.of(new Input("Readings", "none on this field", YOU)) : all;
    }

    private static Input reading(Reading r) {
        return new Input(Format.date(r.date()), ReadingKinds.name(r.kind()) + " " + r.entered(), YOU);
    }

    private List<Input> weather() {
        WeatherSeries seen = day.farm().weather().observed();
        List<WeatherDay> forecast = day.farm().weather().forecast();
        List<Input> all = new ArrayList<>();
        if (!seen.isEmpty()) {
            // What a file holds beyond the day is not used for it.
            LocalDate last = seen.last().isAfter(day.on()) ? day.on() : seen.last();
            all.add(new Input(
                    "Weather observed",
                    Format.date(seen.first()) + " " + seen.first().getYear() + " to " + Format.date(last) + " "
                            + last.getYear(),
                    "Your weather file, its gaps filled"));
        }
        all.add(new Input(
                "Forecast",
                forecast.isEmpty()
                        ? "none"
                        : "to " + Format.date(forecast.get(forecast.size() - 1).date()),
                "As issued"));
        all.add(new Input("After that", Outlooks.MEMBERS + " courses of weather", "Past years, or the generator"));
        return all;
    }

    private List<Input> ground() {
        return List.of(
                new Input("Area", format.area(zone.area_ha()) + " " + format.areaUnit(), YOU),
                new Input("Soil", format.say(zone.soil().texture()), "By its sand and clay, entered by you"),
                new Input(
                        "Planted",
                        Format.date(zone.planted()) + ", " + Format.number(zone.relativeMaturity_d(), 0) + "-day corn, "
                                + format.plants(zone.population_m2()) + " plants",
                        YOU),
                new Input(
                        "Rows, before, tillage, drainage",
                        format.length(100 * zone.rowSpacing_m()) + " " + format.lengthUnit() + ", "
                                + Stream.of(zone.previousCrop(), zone.tillage(), zone.drainage())
                                        .map(t -> t.toString().toLowerCase(Locale.US))
                                        .reduce((a, b) -> a + ", " + b)
                                        .orElse(""),
                        YOU));
    }

    private List<Input> rigs() {
        return day.farm().rigs().stream()
                .filter(r -> !r.isTender())
                .map(r -> SettingRows.clearance(r, format))
                .toList();
    }
}
