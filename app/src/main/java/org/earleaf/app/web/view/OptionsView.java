// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.Whisker;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.decide.Worth;
import org.earleaf.farm.Prices;
import org.earleaf.field.Zone;
import org.earleaf.units.Measure;

/**
 * What each choice is worth on one field: the best by date, the rates and placements beside it, and the long list.
 *
 * @param curves worth by rate, date and price
 * @param tables one for each thing that could be chosen otherwise
 * @param barred placements that cannot be chosen on the day to go
 * @param protection passes against disease and insects
 */
public record OptionsView(
        String name,
        String place,
        List<Markup> constants,
        Advice advice,
        List<WorthCurves.Curve> curves,
        List<Table> tables,
        List<Barred> barred,
        Every every,
        ProtectionView protection) {
    private static final List<Figure> FIGURES = List.of(
            Figure.WORTH,
            Figure.CHANCE,
            Figure.BAD_CASE,
            Figure.BREAK_EVEN,
            Figure.WAIT,
            Figure.CHOICE_MADE,
            Figure.REACH,
            Figure.SPRAY,
            Figure.ENTERED);
    private static final int LISTED = 100;

    /** What this page shows, to ask why. */
    public List<Figure> figures() {
        return FIGURES;
    }

    /**
     * What to do, and why.
     *
     * @param go names the choice to make in addresses, empty when there is none
     * @param changes what would change the advice
     */
    public record Advice(Markup headline, String why, String go, List<String> changes) {}

    /**
     * The long list.
     *
     * @param rows the best choices of all, most gain first
     * @param of how many there are
     */
    public record Every(List<Row> rows, int of) {}

    public record Table(String title, String first, List<Row> rows) {}

    /**
     * @param label what differs in this table
     * @param whole the choice in full
     * @param key names it in addresses
     */
    public record Row(String label, String whole, String key, WorthView worth, boolean picked) {}

    public static OptionsView of(FarmDay day, Zone zone, Format format) {
        List<Option> options = zone.isCorn() ? day.options(zone) : List.of();
        // The brief may wait for a better day than that of the highest gain; pages must say the same.
        Optional<Option> go = LoadView.find(day, zone, "");
        Whisker scale = Whisker.scaleOf(options.stream().map(Option::worth).toList());
        Prices prices = day.farm().prices();
        List<Markup> constants = List.of(
                Markup.text(tell("page.options.what-a-pass-is-worth")),
                new Say()
                        .text(tell("page.options.corn", "corn", Format.number(prices.corn_usdBu(), 2)))
                        .unit(tell("page.options.a-bushel"))
                        .done(),
                Markup.text(tell("page.options.against-doing-nothing-over")));
        return new OptionsView(
                zone.label(),
                Places.of(day.farm()).of(zone),
                constants,
                advice(day, zone, go, format),
                go.map(o -> WorthCurves.of(day, day.outlook(zone), options, o, format))
                        .orElse(List.of()),
                go.map(o -> tables(o, options, scale, format)).orElse(List.of()),
                go.map(o -> Barred.of(day.farm(), day.outlook(zone), options, o.date(), format))
                        .orElse(List.of()),
                new Every(
                        options.stream()
                                .limit(LISTED)
                                .map(o -> row(o, "", scale, false, format))
                                .toList(),
                        options.size()),
                ProtectionView.of(
                        zone.isCorn()
                                ? day.protection(zone)
                                : new ProtectionAnswer(List.of(), Optional.empty(), List.of(), List.of()),
                        format));
    }

    private static Advice advice(FarmDay day, Zone zone, Optional<Option> go, Format format) {
        return new Advice(
                headline(zone, go, day, format),
                go.map(o -> why(o, format)).orElse(""),
                go.map(Choice::key).orElse(""),
                go.map(o -> Changes.of(day, zone, o, format)).orElse(List.of()));
    }

    private static String why(Option o, Format format) {
        return String.join(" ", format.say(o.why()));
    }

    private static Markup headline(Zone zone, Optional<Option> go, FarmDay day, Format format) {
        if (go.isEmpty()) {
            Say say = new Say().sentence(tell("page.options.no-pass-is-offered-on", "label", zone.label()));
            day.brief().leftOut().stream()
                    .filter(l -> l.field().equals(zone.field()) && l.zone().equals(zone.zone()))
                    .findFirst()
                    .ifPresent(l -> say.sentence(format.say(l.reason())));
            return say.done();
        }
        Option best = go.get();
        Worth worth = best.worth();
        String what =
                format.nitrogen(best.nitrogen_kgHa()) + " " + format.massUnit() + " " + Phrases.where(best.placement());
        if (worth.mean_usdHa() <= 0) {
            return new Say()
                    .sentence(tell("page.options.no-pass-pays-on", "label", zone.label()))
                    .sentence(tell(
                            "page.options.the-best-would-lose",
                            "what",
                            what,
                            "money",
                            format.money(-worth.mean_usdHa()),
                            "areaName",
                            format.areaName()))
                    .done();
        }
        return new Say()
                .sentence(tell(
                        "page.options.gains",
                        "capital",
                        Phrases.capital(what + " " + Dates.soon(best.date(), day.on())),
                        "gain",
                        gain(worth, format),
                        "areaName",
                        format.areaName()))
                .sentence(tell("page.options.it-pays-in-futures", "chance", Measure.CHANCE.of(worth.chanceItPays())))
                .done();
    }

    private static String gain(Worth worth, Format format) {
        return format.moneyValue(worth.mean_usdHa()) < 1
                ? tell("page.options.less-than-1")
                : "$" + format.money(worth.mean_usdHa());
    }

    private static List<Table> tables(Option best, List<Option> options, Whisker scale, Format format) {
        Stream<Option> sameButRate = options.stream()
                .filter(o -> o.date().equals(best.date())
                        && o.placement() == best.placement()
                        && o.rig().equals(best.rig())
                        && o.product().equals(best.product()));
        Stream<Option> sameDay = options.stream().filter(o -> o.date().equals(best.date()));
        String day = Dates.brief(best.date());
        By<LocalDate> date = new By<>(
                tell("page.options.by-date"),
                tell("page.options.the-best-of-each-day"),
                Option::date,
                o -> Dates.brief(o.date()) + ": " + Phrases.choice(o, format));
        By<Double> rate = new By<>(
                tell("page.options.by-rate"),
                tell("page.options.rate", "day", day),
                Option::nitrogen_kgHa,
                o -> format.nitrogen(o.nitrogen_kgHa()) + " " + format.nitrogenUnit() + ", " + o.product());
        By<String> placement = new By<>(
                tell("page.options.by-placement"),
                tell("page.options.placement", "day", day),
                o -> o.placement().word() + o.rig(),
                o -> Phrases.capital(format.say(o.placement())) + ", "
                        + Words.here().rig(o.rig()) + ", " + format.nitrogen(o.nitrogen_kgHa()) + " "
                        + format.massUnit());
        return List.of(
                table(date, options.stream(), best, scale, format),
                table(rate, sameButRate, best, scale, format),
                table(placement, sameDay, best, scale, format));
    }

    /**
     * What the rows of a table differ in.
     *
     * @param first head of the first column
     */
    private record By<K>(String title, String first, Function<Option, K> differs, Function<Option, String> label) {}

    /** One row for each value of what differs, the best of it; by that value where it has an order. */
    private static <K extends Comparable<? super K>> Table table(
            By<K> by, Stream<Option> options, Option best, Whisker scale, Format format) {
        Function<Option, K> differs = by.differs;
        Map<K, Option> bests = new LinkedHashMap<>();
        options.forEach(o -> bests.merge(differs.apply(o), o, (a, b) -> better(a, b, best)));
        List<Option> rows = new ArrayList<>(bests.values());
        boolean ordered = differs.apply(best) instanceof String;
        rows.sort(
                ordered ? Comparator.comparing((Option o) -> -o.worth().mean_usdHa()) : Comparator.comparing(differs));
        return new Table(
                by.title,
                by.first,
                rows.stream()
                        .map(o -> row(o, by.label.apply(o), scale, o.equals(best), format))
                        .toList());
    }

    /** The choice to make stands for its row even where another gains a cent more. */
    private static Option better(Option a, Option b, Option go) {
        if (a.equals(go) || b.equals(go)) {
            return go;
        }
        return b.worth().mean_usdHa() > a.worth().mean_usdHa() ? b : a;
    }

    private static Row row(Option o, String label, Whisker scale, boolean picked, Format format) {
        String whole = Dates.brief(o.date()) + ", " + Phrases.choice(o, format) + ", " + o.product();
        return new Row(label, whole, Choice.key(o), WorthView.of(o.worth(), scale, "", picked, format), picked);
    }
}
