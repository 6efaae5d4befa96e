// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.WorthPlot;
import org.earleaf.app.web.drawing.WorthPlot.Point;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.decide.Option;
import org.earleaf.decide.Worth;
import org.earleaf.outlook.Outlook;

/** What a pass is worth by rate, by date and by the price of corn, drawn from the options that were worked out. */
final class WorthCurves {
    private static final double CHEAPEST_USDBU = 2;
    private static final double DEAREST_USDBU = 8;
    /** Two prices nearer than this cannot both be named. */
    private static final double ROOM_USDBU = 1;

    private final FarmDay day;
    private final Outlook outlook;
    private final List<Option> options;
    private final Option go;
    private final Format format;

    private WorthCurves(FarmDay day, Outlook outlook, List<Option> options, Option go, Format format) {
        this.day = day;
        this.outlook = outlook;
        this.options = options;
        this.go = go;
        this.format = format;
    }

    /** A drawing with its finding. */
    record Curve(String title, String id, Markup drawing, String says) {}

    static List<Curve> of(FarmDay day, Outlook outlook, List<Option> options, Option go, Format format) {
        WorthCurves curves = new WorthCurves(day, outlook, options, go, format);
        List<Curve> all = new ArrayList<>();
        curves.byRate().ifPresent(all::add);
        curves.byDate().ifPresent(all::add);
        curves.byPrice().ifPresent(all::add);
        return all;
    }

    private double money(double usdHa) {
        return format.moneyValue(usdHa);
    }

    private double rate(Option o) {
        return format.nitrogenValue(o.nitrogen_kgHa());
    }

    private boolean isLikeGo(Option o) {
        return o.placement() == go.placement()
                && o.rig().equals(go.rig())
                && o.product().equals(go.product());
    }

    /** Every rate is run on all members on the first day only; so the curve is of that day. */
    private Optional<Curve> byRate() {
        LocalDate first = options.stream()
                .filter(this::isLikeGo)
                .map(Option::date)
                .min(Comparator.naturalOrder())
                .orElse(go.date());
        List<Option> rates = options.stream()
                .filter(o -> isLikeGo(o) && o.date().equals(first))
                .sorted(Comparator.comparingDouble(Option::nitrogen_kgHa))
                .toList();
        if (rates.size() < 3) {
            return Optional.empty();
        }
        double most = rate(rates.get(rates.size() - 1));
        WorthPlot plot = new WorthPlot(0, most)
                .band(line(rates, Worth::p10_usdHa), line(rates, Worth::p90_usdHa))
                .line(line(rates, Worth::badCase_usdHa), "kn da")
                .line(line(rates, Worth::mean_usdHa), "k3")
                .dots(
                        rates.stream()
                                .filter(o -> o.then().isPresent())
                                .map(o -> new Point(rate(o), money(o.worth().mean_usdHa())))
                                .toList(),
                        "kno")
                .chosen(
                        new Point(rate(go), money(go.worth().mean_usdHa())),
                        format.nitrogen(go.nitrogen_kgHa()) + " " + format.massUnit() + " "
                                + Dates.soon(go.date(), day.on()));
        for (int k = 0; k <= 4; k++) {
            String unit = k == 4 ? " " + format.nitrogenUnit() : "";
            plot.tick(most * k / 4, Format.number(most * k / 4, 0) + unit, k % 2 == 1 ? "so only-w" : "so");
        }
        return Optional.of(new Curve(
                tell("page.worth-curves.by-rate"),
                "by-rate",
                plot.draw("by-rate", format.moneyUnit()),
                rateSays(rates, first)));
    }

    private List<Point> line(List<Option> rates, ToDoubleFunction<Worth> of) {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
        rates.forEach(o -> points.add(new Point(rate(o), money(of.applyAsDouble(o.alone())))));
        return points;
    }

    private String rateSays(List<Option> rates, LocalDate first) {
        Option best = rates.stream()
                .max(Comparator.comparingDouble(o -> o.alone().mean_usdHa()))
                .orElseThrow();
        List<Option> near = rates.stream()
                .filter(o -> money(best.alone().mean_usdHa() - o.alone().mean_usdHa()) <= 5)
                .toList();
        List<String> all = new ArrayList<>();
        all.add(tell(
                "page.worth-curves.gain-on-rates-nothing-after",
                "where",
                Phrases.where(go.placement()),
                "first",
                first,
                "rates",
                rates.size()));
        if (near.size() > 1) {
            all.add(tell(
                    "page.worth-curves.the-top-is-flat-from",
                    "nitrogen",
                    format.nitrogen(near.get(0).nitrogen_kgHa()),
                    "nitrogen2",
                    format.nitrogen(near.get(near.size() - 1).nitrogen_kgHa()),
                    "massUnit",
                    format.massUnit()));
        }
        if (rates.stream().anyMatch(o -> o.then().isPresent())) {
            all.add(tell("page.worth-curves.rings-with-the-best-pass"));
        }
        if (!go.date().equals(first)) {
            all.add(tell("page.worth-curves.the-red-dot-is-of"));
        }
        return String.join(" ", all);
    }

    private void days(WorthPlot plot, LocalDate from, int days) {
        for (int k = 0; k <= days; k++) {
            LocalDate date = from.plusDays(k);
            String cls = date.equals(day.on()) ? "rd" : k % 4 == 0 ? "so" : "so only-w";
            if (k % 2 == 0) {
                plot.tick(k, k % 4 == 0 ? Dates.tight(date) : date.getDayOfMonth() + "", cls);
            }
        }
    }

    private Optional<Curve> byDate() {
        Map<LocalDate, Option> bests = new TreeMap<>();
        for (Option o : options) {
            bests.merge(
                    o.date(),
                    o,
                    (a, b) -> a.equals(go) || b.equals(go)
                            ? go
                            : b.worth().mean_usdHa() > a.worth().mean_usdHa() ? b : a);
        }
        if (bests.size() < 2) {
            return Optional.empty();
        }
        LocalDate from = day.on();
        LocalDate last = bests.keySet().stream().max(Comparator.naturalOrder()).orElseThrow();
        Optional<LocalDate> closes = closes().filter(d -> !d.isAfter(last.plusDays(7)));
        LocalDate end =
                closes.map(d -> d.plusDays(4)).filter(d -> d.isAfter(last)).orElse(last);
        int days = (int) ChronoUnit.DAYS.between(from, end);
        WorthPlot plot = new WorthPlot(-.5, days + .5);
        closes.ifPresent(d -> plot.closedFrom(
                ChronoUnit.DAYS.between(from, d) + .5,
                ChronoUnit.DAYS.between(from, d.isAfter(last) ? d : last) + .5,
                tell("page.worth-curves.no-longer-fits", "rig", go.rig())));
        bests.values().forEach(o -> {
            Worth w = o.worth();
            plot.stem(at(o), money(w.p10_usdHa()), money(w.mean_usdHa()), money(w.p90_usdHa()));
        });
        plot.chosen(
                new Point(at(go), money(go.worth().mean_usdHa())),
                format.nitrogen(go.nitrogen_kgHa()) + " " + format.massUnit());
        days(plot, from, days);
        return Optional.of(new Curve(
                tell("page.worth-curves.by-date"),
                "by-date",
                plot.draw("by-date", format.moneyUnit()),
                dateSays(closes, last)));
    }

    /** The last day on which the rig still fits. */
    private Optional<LocalDate> closes() {
        return outlook.reach().stream()
                .filter(r -> r.rig().equals(go.rig()))
                .flatMap(r -> r.lastDay().filter(d -> r.date().isPresent()).stream())
                .findFirst();
    }

    private double at(Option o) {
        return ChronoUnit.DAYS.between(day.on(), o.date());
    }

    private String dateSays(Optional<LocalDate> closes, LocalDate last) {
        List<String> all = new ArrayList<>();
        all.add(tell(
                "page.worth-curves.the-best-that-can-be",
                "moneyFine",
                format.moneyFine(go.waitCost_usdHaDay()),
                "areaName",
                format.areaName(),
                "date",
                go.date()));
        closes.ifPresent(d -> all.add(tell(
                last.isAfter(d) ? "page.worth-curves.too-tall-then-another-rig" : "page.worth-curves.too-tall",
                "d",
                d,
                "rig",
                go.rig())));
        return String.join(" ", all);
    }

    private Optional<Curve> byPrice() {
        Worth worth = go.worth();
        double now = day.farm().prices().corn_usdBu();
        if (Double.isNaN(worth.meanAt_usdHa(now))) {
            return Optional.empty();
        }
        List<Point> ends = List.of(
                new Point(CHEAPEST_USDBU, money(worth.meanAt_usdHa(CHEAPEST_USDBU))),
                new Point(DEAREST_USDBU, money(worth.meanAt_usdHa(DEAREST_USDBU))));
        double pays = worth.breakEvenCorn_usdBu();
        WorthPlot plot = new WorthPlot(CHEAPEST_USDBU, DEAREST_USDBU).line(ends, "k3");
        plot.chosenOnRise(
                new Point(now, money(worth.mean_usdHa())),
                tell("page.worth-curves.today", "now", Format.number(now, 2)));
        if (pays > CHEAPEST_USDBU && pays < DEAREST_USDBU) {
            plot.dots(List.of(new Point(pays, 0)), "k");
            if (pays < now - ROOM_USDBU || pays > now + ROOM_USDBU) {
                plot.wordOnRise(new Point(pays, 0), "$" + Format.number(pays, 2));
            }
        }
        for (int k = 0; k <= 6; k++) {
            plot.tick(CHEAPEST_USDBU + k, "$" + (2 + k), k % 2 == 0 ? "so" : "so only-w");
        }
        String says = tell("page.worth-curves.mean-gain-of-the-choice", "pays", Format.number(pays, 2));
        return Optional.of(new Curve(
                tell("page.worth-curves.by-price-of-corn"),
                "by-price",
                plot.draw("by-price", format.moneyUnit()),
                says));
    }
}
