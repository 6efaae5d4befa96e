// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.decide.Spray;
import org.earleaf.decide.Worth;
import org.earleaf.farm.Prices;
import org.earleaf.field.Zone;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Spread;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.units.Measure;

/**
 * What is behind one figure: of one field and choice, or in general.
 *
 * @param changes what would change the advice
 * @param others the other figures
 * @param places fields to choose from, by place
 */
public record WhyView(
        About about, Answer answer, Work work, List<String> changes, List<Figure> others, Map<String, String> places) {
    /**
     * What is asked about.
     *
     * @param place of the field, empty in general
     * @param choice key of the choice, empty where it is not of one
     */
    public record About(String name, String place, String choice) {}

    /**
     * The figure in words.
     *
     * @param sum the figure worked out before the reader's eyes, empty where it takes a season's run
     * @param reasons for the choice, where that is asked about
     */
    public record Answer(Markup headline, String says, String sum, List<String> reasons) {}

    /**
     * What it is worked out from, and how.
     *
     * @param filled in on this field where nothing was entered
     */
    public record Work(
            List<WhyInputs.Input> inputs, List<Equation> equations, List<ParameterRow> assumed, List<String> filled) {}

    /** In general, with the fields to choose from. */
    public static WhyView general(FarmDay day, Figure figure) {
        Map<String, String> places = new LinkedHashMap<>();
        Places.of(day.farm()).all().forEach((place, zone) -> {
            if (zone.isCorn()) {
                places.put(place, zone.label());
            }
        });
        return new WhyView(
                new About(tell("page.why.why"), "", ""),
                new Answer(
                        new Say()
                                .sentence(tell("page.why.how-it-is-worked-out", "title", figure.title()))
                                .done(),
                        figure.says(),
                        "",
                        List.of()),
                new Work(List.of(), figure.equations(), assumed(figure, Optional.empty()), List.of()),
                List.of(),
                others(figure),
                places);
    }

    /** @param chosen the choice asked for; empty for the one to make, if there is one */
    public static WhyView of(FarmDay day, Zone zone, Figure figure, Optional<Option> chosen, Format format) {
        Outlook outlook = day.outlook(zone);
        Optional<Option> choice = figure.isOfChoice() ? chosen : Optional.empty();
        Figure behind = figure.behind(choice);
        return new WhyView(
                new About(
                        zone.label(),
                        Places.of(day.farm()).of(zone),
                        choice.map(Choice::key).orElse("")),
                answer(
                        figure,
                        headline(day, outlook, figure, chosen, format),
                        choice,
                        day.farm().prices(),
                        format),
                new Work(
                        new WhyInputs(day, zone, choice, format).of(behind.inputs()),
                        behind.equations(),
                        assumed(behind, choice),
                        outlook.flags().stream().map(format::say).toList()),
                chosen.map(o -> Changes.of(day, zone, o, format))
                        .orElse(List.of(tell("page.why.a-reading-of-this-field"))),
                others(figure),
                Map.of());
    }

    private static Answer answer(
            Figure figure, Markup headline, Optional<Option> choice, Prices prices, Format format) {
        return new Answer(
                headline,
                figure.says(),
                choice.filter(o -> figure == Figure.WORTH || figure == Figure.BREAK_EVEN)
                        .map(o -> sum(figure, o.worth(), prices, format))
                        .orElse(""),
                figure == Figure.CHOICE_MADE
                        ? choice.map(o -> format.say(o.why())).orElse(List.of())
                        : List.of());
    }

    private static List<ParameterRow> assumed(Figure figure, Optional<Option> choice) {
        if (figure != Figure.SPRAY) {
            return figure.assumed().stream().map(ParameterRow::of).toList();
        }
        List<ProtectionAssumption> all = List.of(ProtectionAssumption.values());
        return choice.flatMap(Option::spray).map(Spray::assumptions).orElse(all).stream()
                .map(ParameterRow::of)
                .toList();
    }

    private static List<Figure> others(Figure but) {
        return Arrays.stream(Figure.values()).filter(f -> f != but).toList();
    }

    private static Markup headline(
            FarmDay day, Outlook outlook, Figure figure, Optional<Option> choice, Format format) {
        String value = value(day, outlook, figure, choice, format);
        return new Say()
                .sentence(
                        value.isEmpty()
                                ? tell("page.why.title", "title", figure.title())
                                : tell("page.why.title-and-value", "title", figure.title(), "value", value))
                .done();
    }

    private static String shortOn(DateSpread dates) {
        if (dates.p50().isPresent()) {
            return tell("page.why.short", "likely", dates.p50().get(), "spread", Dates.range(dates));
        }
        return tell("page.why.short-in", "chance", Measure.CHANCE.of(dates.probability()));
    }

    private static String made(Spread kgHa) {
        return tell(
                "page.why.yield",
                "likely",
                Measure.YIELD.of(kgHa.p50()),
                "low",
                Measure.YIELD.of(kgHa.p10()),
                "high",
                Measure.YIELD.of(kgHa.p90()));
    }

    private static String value(FarmDay day, Outlook o, Figure figure, Optional<Option> choice, Format format) {
        return switch (figure) {
            case WORTH, CHANCE, BAD_CASE, BREAK_EVEN, WAIT, CHOICE_MADE, SPRAY ->
                choice.map(c -> ofChoice(figure, c, day, format)).orElse(tell("page.why.no-pass-is-offered"));
            case SHORT -> shortOn(o.nShort());
            case YIELD -> made(o.yield_kgHa());
            case STAGE ->
                tell(
                        "page.why.stage",
                        "stage",
                        o.stage(),
                        "height",
                        Measure.HEIGHT.of(o.height_cm().p50()));
            case SOIL ->
                tell("page.why.today", "rate", Measure.NITROGEN_RATE.of(SoilSums.mineral(o.trace(), o.today())));
            case REACH -> String.join("; ", CalendarRow.reach(o));
            case READING ->
                day.brief().readings().stream()
                        .filter(r -> r.field().equals(o.zone().field())
                                && r.zone().equals(o.zone().zone())
                                && !Double.isNaN(r.worth_usdHa()))
                        .map(Brief.ReadingWorthTaking::worth_usdHa)
                        .map(w -> tell("page.why.reading", "worth", Measure.MONEY_RATE.of(w)))
                        .findFirst()
                        .orElse(tell("page.why.not-worth-the-drive-or"));
            case RUNS ->
                tell("page.why.for-the-whole-farm", "seasons", day.brief().seasonsSimulated());
            default -> "";
        };
    }

    private static String ofChoice(Figure figure, Option c, FarmDay day, Format format) {
        Worth w = c.worth();
        return switch (figure) {
            case WORTH ->
                tell(
                        "page.why.worth",
                        "mean",
                        Measure.MONEY_RATE.of(w.mean_usdHa()),
                        "low",
                        Measure.MONEY_RATE.of(w.p10_usdHa()),
                        "high",
                        Measure.MONEY_RATE.of(w.p90_usdHa()));
            case CHANCE -> tell("page.why.futures", "chance", Measure.CHANCE.of(w.chanceItPays()));
            case BAD_CASE -> format.words().say(Measure.MONEY_RATE.of(w.badCase_usdHa()));
            case BREAK_EVEN -> tell("page.why.a-bushel", "breakEven", WorthView.breakEven(w));
            case WAIT -> tell("page.why.on", "cost", Measure.MONEY_RATE.of(c.waitCost_usdHaDay()), "day", c.date());
            default -> Phrases.choice(c, format) + ", " + Dates.soon(c.date(), day.on());
        };
    }

    /** The arithmetic of the mean, with the figures it is made of. */
    private static String sum(Figure figure, Worth w, Prices p, Format format) {
        if (figure == Figure.WORTH) {
            return tell(
                    "page.why.less-a-bushel-times-bu",
                    "corn",
                    Measure.CORN_PRICE.of(p.corn_usdBu()),
                    "harvest",
                    Measure.CORN_PRICE.of(p.harvestCost_usdBu()),
                    "bushels",
                    format.bushelsFine(w.meanYieldGain_kgHa()),
                    "cost",
                    Measure.MONEY_RATE.of(w.cost_usdHa()),
                    "gain",
                    Measure.MONEY_RATE.of(w.mean_usdHa()));
        }
        return w.meanYieldGain_kgHa() <= 0
                ? tell("page.why.no-yield-is-gained-on")
                : tell(
                        "page.why.spent-shared-by-bu-gained",
                        "cost",
                        Measure.MONEY_RATE.of(w.cost_usdHa()),
                        "bushels",
                        format.bushelsFine(w.meanYieldGain_kgHa()),
                        "harvest",
                        Measure.CORN_PRICE.of(p.harvestCost_usdBu()),
                        "price",
                        WorthView.breakEven(w));
    }
}
