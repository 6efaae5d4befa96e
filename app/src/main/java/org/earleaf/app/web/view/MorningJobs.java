// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.earleaf.app.web.drawing.Thumbnail;
import org.earleaf.app.web.drawing.Whisker;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.brief.RigDay;
import org.earleaf.decide.Option;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;
import org.earleaf.week.Week;

/** The morning's jobs by rig, each in three lines. */
record MorningJobs(Brief brief, Places places, Format format) {
    /** More jobs of a rig on a day stand behind a line with their sum. */
    private static final int FEW = 6;

    List<MorningView.RigRow> rows(List<RigDay> days) {
        Whisker scale = Whisker.scaleOf(days.stream()
                .flatMap(d -> d.jobs().stream())
                .map(p -> p.way().worth())
                .toList());
        return days.stream().map(d -> row(d, scale)).toList();
    }

    private MorningView.RigRow row(RigDay day, Whisker scale) {
        return new MorningView.RigRow(
                Phrases.capital(Words.here().rig(day.rig())),
                isOfOnePlacement(day) ? Phrases.where(day.jobs().get(0).way().placement()) : "",
                day.leaves()
                        .map(out -> tell(
                                "page.morning.out",
                                "hours",
                                Dates.hours(
                                        out.toLocalTime(),
                                        day.ends().orElse(out).toLocalTime())))
                        .orElse(""),
                day.jobs().size() > FEW ? sum(day) : Markup.NONE,
                day.jobs().stream()
                        .map(p -> job(p, !isOfOnePlacement(day), scale))
                        .toList());
    }

    private static boolean isOfOnePlacement(RigDay day) {
        return day.jobs().stream().map(p -> p.way().placement()).distinct().count() == 1;
    }

    /** "6 fields, 344 ac, 40 to 50 lb N/ac, 8 loads. Worth $42/ac." */
    private Markup sum(RigDay day) {
        Say say = new Say().strong(tell("page.morning.n-fields", "n", day.jobs().size()));
        if (!Double.isNaN(day.area_ha())) {
            say.text(", " + format.area(day.area_ha())).unit(format.areaUnit());
        }
        ToDoubleFunction<Option> rate = Option::nitrogen_kgHa;
        String least = Double.isNaN(day.least(rate)) ? "" : format.nitrogen(day.least(rate));
        String most = least.isEmpty() ? "" : format.nitrogen(day.most(rate));
        if (!least.isEmpty()) {
            say.text(", " + (least.equals(most) ? least : tell("page.phrases.to", "first", least, "last", most)))
                    .unit(format.nitrogenUnit());
        }
        return say.text((day.loads() == 0 ? "" : ", " + PlanView.loads(day.loads())) + ". "
                        + tell("page.morning.worth-said", "worth", Measure.MONEY_RATE.of(day.worth_usdHa())))
                .done();
    }

    private MorningView.JobRow job(Brief.Proposed p, boolean placed, Whisker scale) {
        Option o = p.way();
        Optional<Outlook> outlook = MorningView.outlook(brief, o);
        double area_ha = p.turn()
                .map(t -> t.pass().area_ha())
                .orElse(outlook.map(k -> k.zone().area_ha()).orElse(Double.NaN));
        return new MorningView.JobRow(
                new MorningView.Ground(
                        MorningView.label(o.field(), o.zone()),
                        Double.isNaN(area_ha) ? "" : format.area(area_ha) + " " + format.areaUnit(),
                        places.of(o.field(), o.zone()),
                        outlook.map(this::thumbnail).orElse(Markup.NONE)),
                p.turn()
                        .map(t -> Dates.hours(t.start().toLocalTime(), t.end().toLocalTime()))
                        .orElse(""),
                Choice.key(o),
                new MorningView.Act(
                        what(p, placed),
                        reason(o, outlook),
                        MorningView.why(o, format),
                        o.isNitrogen(),
                        SprayView.assumed(o)),
                WorthView.of(o.worth(), scale, "$0", false, format),
                waiting(o, area_ha),
                own(p, format).orElse(""));
    }

    /**
     * "40 lb N/ac, UAN 32, 11.3 gal/ac, 2 loads"; of a spray what goes on and against what.
     *
     * @param placed whether it tells where it goes; else the rig's line does
     */
    private Markup what(Brief.Proposed p, boolean placed) {
        Option o = p.way();
        int loads = p.turn().map(Week.Stop::loads).orElse(0);
        Say say = new Say()
                .markup(Phrases.rate(o, format))
                .text((placed ? " " + Phrases.where(o.placement()) : "") + ", ");
        return say.markup(Phrases.product(o, format))
                .text(loads == 0 ? "" : ", " + PlanView.loads(loads))
                .done();
    }

    /** When it is short, told as likely as it is; of a spray the first reason. */
    private String reason(Option o, Optional<Outlook> outlook) {
        if (!o.isNitrogen()) {
            return o.why().isEmpty() ? "" : format.say(o.why().get(0).said());
        }
        return outlook.map(k -> shortOn(k.nShort(), brief.on())).orElse("");
    }

    static String shortOn(DateSpread dates, LocalDate on) {
        Optional<LocalDate> likely = dates.p50();
        if (likely.isEmpty()) {
            return dates.probability() <= 0
                    ? tell("page.morning.never-short")
                    : tell("page.morning.short-in", "chance", Measure.CHANCE.of(dates.probability()));
        }
        return likely.get().isAfter(on)
                ? tell("page.morning.short-about", "day", likely.get(), "range", Dates.range(dates))
                : tell("page.morning.short-since", "day", likely.get());
    }

    /** @param area_ha NaN where it is not known */
    private MorningView.Waiting waiting(Option o, double area_ha) {
        double cost = o.waitCost_usdHaDay();
        return new MorningView.Waiting(
                format.moneyFine(cost),
                Double.isNaN(area_ha) || cost <= 0
                        ? ""
                        : tell("page.morning.a-field", "number", Format.number(cost * area_ha, 0)));
    }

    private Markup thumbnail(Outlook o) {
        double left = SoilSums.mineral(o.trace(), o.today());
        String label = tell(
                "page.morning.soil-under-two-rows-to",
                "label",
                o.zone().label(),
                "nitrogen",
                format.nitrogen(left),
                "nitrogenUnit",
                format.nitrogenUnit());
        return Thumbnail.of(o.zone(), o.trace(), o.today(), format, label);
    }

    /** What would be best for the field by itself, where the plan does otherwise. */
    static Optional<String> own(Brief.Proposed p, Format format) {
        return p.own().map(own -> format.say(own.said()));
    }
}
