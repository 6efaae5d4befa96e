// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.RainBars;
import org.earleaf.app.web.drawing.SeasonCurve;
import org.earleaf.app.web.drawing.SoilCutaway.Clearance;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.farm.Rig;
import org.earleaf.field.Zone;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Spread;
import org.earleaf.season.SeasonTrace;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;

/**
 * The page of one field.
 *
 * @param yields what it will make
 */
public record FieldLeaf(
        Top top,
        DayView day,
        Slider slider,
        Shown shown,
        Curve curve,
        List<Markup> yields,
        LedgerView ledger,
        Behind behind) {
    /** Index below which nitrogen is short. */
    private static final Measured MARK = Measure.SHARE.of(SeasonTrace.SHORT_NNI);

    /** The field with its constants, and how it stands. */
    public record Top(String name, String place, List<Figured> constants, Markup headline) {}

    /** What the slider runs over. */
    public record Slider(Markup rain, String firstDay, String lastDay) {}

    /**
     * With or without a pass.
     *
     * @param pass "With 50 lb today", empty when no pass pays
     * @param with whether the soil is shown with the pass
     */
    public record Shown(String pass, boolean with) {}

    /** How long the nitrogen lasts. */
    public record Curve(Markup drawing, String says) {}

    /**
     * What the figures rest on.
     *
     * @param assumed for lack of an entry
     * @param balance what the run cannot account for
     */
    public record Behind(List<String> assumed, String balance) {}

    private static final List<Figure> FIGURES = List.of(
            Figure.SHORT,
            Figure.SOIL,
            Figure.CROP_NITROGEN,
            Figure.YIELD,
            Figure.LEDGER,
            Figure.STAGE,
            Figure.REACH,
            Figure.CHOICE_MADE,
            Figure.ENTERED,
            Figure.REMAINDER);
    private static final int DRAWN_BEFORE_D = 30;
    private static final int DRAWN_AFTER_D = 45;

    /** What this page shows, to ask why. */
    public List<Figure> figures() {
        return FIGURES;
    }

    /** @param date the day to show, in the run's reach */
    public static FieldLeaf of(FarmDay farmDay, Zone zone, LocalDate date, boolean with, Format format) {
        // The brief first: it brings the outlooks of all fields with it.
        Optional<Option> pass = bestPass(farmDay, zone);
        Outlook o = farmDay.outlook(zone);
        Optional<Outlook> after = pass.map(p -> farmDay.outlookWith(zone, p));
        String place = Places.of(farmDay.farm()).of(zone);
        boolean shownWith = with && after.isPresent();
        DayView day = day(shownWith ? after.get() : o, farmDay, place, date, shownWith, format);
        return new FieldLeaf(
                new Top(zone.label(), place, constants(o, format), FieldHeadline.of(o, format)),
                day,
                slider(o),
                new Shown(pass.map(p -> label(p, farmDay.on(), format)).orElse(""), shownWith),
                new Curve(curve(o, after), curveSays(o, pass, after, format)),
                yields(o, pass, after, format),
                LedgerView.of(o.trace(), o.today(), format),
                new Behind(o.flags().stream().map(format::say).toList(), remainder(o, format)));
    }

    private static Slider slider(Outlook o) {
        SeasonTrace t = o.trace();
        return new Slider(
                RainBars.of(t, o.today(), tell("page.field-leaf.rain-by-day-solid-has")),
                Dates.day(t.first()),
                Dates.day(t.date(t.days() - 1)));
    }

    private static String label(Option pass, LocalDate on, Format format) {
        return tell(
                "page.field-leaf.with",
                "nitrogen",
                format.nitrogen(pass.nitrogen_kgHa()),
                "massUnit",
                format.massUnit(),
                "soon",
                Dates.soon(pass.date(), on));
    }

    private static String remainder(Outlook o, Format format) {
        Words words = format.words();
        return tell(
                "page.field-leaf.what-the-run-cannot-account",
                "waterBalance",
                words.number(Measure.RAIN.of(o.remainder().water_mm()), 6),
                "waterUnit",
                words.unit(Measure.RAIN),
                "nitrogenBalance",
                words.number(Measure.NITROGEN_RATE.of(o.remainder().nitrogen_kgHa()), 6),
                "nitrogenUnit",
                words.unit(Measure.NITROGEN_RATE));
    }

    /** The day's part alone, for the slider. */
    public static DayView day(FarmDay farmDay, Zone zone, LocalDate date, boolean with, Format format) {
        Optional<Option> pass = with ? bestPass(farmDay, zone) : Optional.empty();
        Outlook o = pass.map(p -> farmDay.outlookWith(zone, p)).orElseGet(() -> farmDay.outlook(zone));
        return day(o, farmDay, Places.of(farmDay.farm()).of(zone), date, pass.isPresent(), format);
    }

    private static DayView day(Outlook o, FarmDay farmDay, String place, LocalDate date, boolean with, Format format) {
        String address = "/field/" + place + "?" + (with ? "with=true&" : "");
        return DayView.of(o, date, clearances(o, farmDay.farm().rigs(), date, format), address, format);
    }

    private static Optional<Option> bestPass(FarmDay farmDay, Zone zone) {
        Optional<Option> proposed = farmDay.brief().passes().stream()
                .filter(Option::isNitrogen)
                .filter(p -> p.field().equals(zone.field()) && p.zone().equals(zone.zone()))
                .findFirst();
        return proposed.or(() -> LoadView.unlessEnough(farmDay, zone)
                .filter(p -> p.worth().mean_usdHa() > 0)
                .findFirst());
    }

    static List<Figured> constants(Outlook o, Format format) {
        Zone z = o.zone();
        List<Figured> all = new ArrayList<>();
        all.add(new Figured(
                Figure.ENTERED,
                new Say()
                        .text(format.area(z.area_ha()))
                        .unit(format.areaUnit())
                        .text(", " + format.say(z.soil().texture()))
                        .done()));
        all.add(new Figured(
                Figure.ENTERED,
                Markup.text(tell(
                        z.planted().isAfter(o.on()) ? "page.field-leaf.to-be-planted" : "page.field-leaf.planted",
                        "day",
                        z.planted(),
                        "relativeMaturity",
                        Format.number(z.planting().hybrid().relativeMaturity_d(), 0),
                        "plants",
                        format.plants(z.planting().population_m2())))));
        all.add(new Figured(
                Figure.STAGE,
                o.leafCollars() > 0
                        ? new Say()
                                .text(format.say(o.stage()) + ", ")
                                .markup(format.height(o.height_cm()))
                                .done()
                        : Markup.text(format.say(o.stage()))));
        return all;
    }

    private static List<Clearance> clearances(Outlook o, List<Rig> rigs, LocalDate date, Format format) {
        List<Clearance> lines = new ArrayList<>();
        if (Phrases.isRipe(o)) {
            return lines;
        }
        for (Rig rig : rigs) {
            Optional<OutOfReach> reach =
                    o.reach().stream().filter(r -> r.rig().equals(rig.name())).findFirst();
            boolean drawn = lines.stream().noneMatch(l -> l.height_cm() == 100 * rig.clearance_m());
            if (reach.isEmpty() || rig.isTender() || rig.isHired() || !drawn) {
                continue;
            }
            boolean tooTall = reach.get().date().filter(d -> !d.isAfter(date)).isPresent()
                    || (reach.get().lastDay().isEmpty() && !date.isBefore(o.on()));
            String clears = format.length(100 * rig.clearance_m()) + " " + format.lengthUnit();
            lines.add(new Clearance(
                    tooTall
                            ? tell("page.field-leaf.too-tall-for-the", "name", rig.name(), "clears", clears)
                            : tell("page.field-leaf.clears", "name", rig.name(), "clears", clears),
                    100 * rig.clearance_m()));
        }
        return lines;
    }

    private static Markup curve(Outlook o, Optional<Outlook> after) {
        SeasonTrace t = o.trace();
        Optional<LocalDate> up = o.emergence();
        LocalDate end = t.date(t.days() - 1);
        LocalDate wanted = later(o.on().plusDays(DRAWN_AFTER_D), up.orElse(end).plusDays(DRAWN_AFTER_D));
        LocalDate to = earlier(end, wanted);
        if (up.isEmpty() || !up.get().isBefore(to)) {
            return Markup.NONE;
        }
        // A finished season is shown whole.
        LocalDate from = Phrases.isRipe(o) ? up.get() : later(up.get(), o.on().minusDays(DRAWN_BEFORE_D));
        SeasonCurve curve = new SeasonCurve(t.first(), o.ahead().nniByDay(), from, to, o.on());
        return curve.draw(
                "curve-says", o.nShort(), after.map(a -> likeliest(a.ahead().nniByDay())));
    }

    private static List<Double> likeliest(List<Spread> nni) {
        return nni.stream().map(Spread::p50).toList();
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static String curveSays(Outlook o, Optional<Option> pass, Optional<Outlook> after, Format format) {
        List<String> all =
                new ArrayList<>(List.of(tell("page.field-leaf.black-likeliest-no-further"), falls(o.nShort())));
        pass.ifPresent(p -> all.add(dashes(p, after.map(Outlook::nShort), format)));
        return String.join(" ", all);
    }

    private static String falls(DateSpread when) {
        if (when.p50().isEmpty()) {
            return tell(
                    "page.field-leaf.it-falls-below-in-some",
                    "mark",
                    MARK,
                    "chance",
                    Measure.CHANCE.of(when.probability()));
        }
        LocalDate day = when.p50().get();
        return when.p10().equals(when.p90())
                ? tell("page.field-leaf.it-falls-below-about", "mark", MARK, "day", day)
                : tell("page.field-leaf.it-falls-below-between", "mark", MARK, "day", day, "range", Dates.range(when));
    }

    private static String dashes(Option pass, Optional<DateSpread> after, Format format) {
        String nitrogen = format.nitrogen(pass.nitrogen_kgHa()) + " " + format.nitrogenUnit();
        Optional<LocalDate> day = after.flatMap(DateSpread::p50);
        return day.isPresent()
                ? tell("page.field-leaf.red-dashes-about", "nitrogen", nitrogen, "date", pass.date(), "day", day.get())
                : tell(
                        "page.field-leaf.red-dashes-chance",
                        "nitrogen",
                        nitrogen,
                        "date",
                        pass.date(),
                        "chance",
                        Measure.CHANCE.of(after.map(DateSpread::probability).orElse(0.0)));
    }

    private static List<Markup> yields(Outlook o, Optional<Option> pass, Optional<Outlook> after, Format format) {
        List<Markup> all = new ArrayList<>();
        if (Phrases.isRipe(o)) {
            return all;
        }
        all.add(format.markup(Said.of("page.field-leaf.if-nothing-more-is-done", "yield", yieldOf(o))));
        o.notRipe().ifPresent(said -> all.add(format.markup(said)));
        o.ahead().replant().ifPresent(r -> all.add(format.markup(r.said())));
        if (pass.isPresent() && after.isPresent()) {
            all.add(format.markup(Said.of(
                    "page.field-leaf.with-2",
                    "choice",
                    Phrases.choice(pass.get(), format),
                    "soon",
                    Dates.soon(pass.get().date(), o.on()),
                    "yield",
                    yieldOf(after.get()))));
        }
        return all;
    }

    private static Said yieldOf(Outlook o) {
        Spread y = o.yield_kgHa();
        return Said.of(
                "page.field-leaf.yield",
                "likely",
                Measure.YIELD.of(y.p50()),
                "low",
                Measure.YIELD.of(y.p10()),
                "high",
                Measure.YIELD.of(y.p90()),
                "limit",
                o.ahead().limitedBy());
    }
}
