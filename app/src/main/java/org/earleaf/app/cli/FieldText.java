// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.label.Cautions;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Measure;

/** Where a zone stands, as a page to read. */
final class FieldText {
    private static final String ROW = "%-10s %9s %9s   %9s %9s   %9s %9s";

    private final Outlook outlook;
    private final SeasonTrace trace;
    private final int day;
    private final Say say;
    private final Page page = new Page();

    private FieldText(Outlook outlook, boolean metric) {
        this.outlook = outlook;
        this.trace = outlook.trace();
        this.day = outlook.today();
        this.say = new Say(metric);
    }

    static String of(Outlook outlook, boolean metric) {
        FieldText text = new FieldText(outlook, metric);
        text.standing();
        text.soil();
        text.comeAndGone();
        text.ahead();
        return text.page.toString();
    }

    private void standing() {
        page.title(outlook.zone().label() + ", " + Dates.full(outlook.on()));
        page.say(tell("cli.field.nitrogen-runs-short", "shortOn", Say.shortOn(outlook.nShort())));
        page.say(tell(
                "cli.field.corn-tall-planted-f-degree",
                "stage",
                say.say(outlook.stage()),
                "spread",
                say.spread(Measure.HEIGHT, outlook.height_cm(), 0),
                "planted",
                Dates.day(outlook.zone().planted()),
                "heat",
                say.amount(Measure.HEAT, at(Daily.GDD), 0),
                "emergence",
                outlook.emergence().map(Dates::day).orElse(tell("cli.field.not-yet")),
                "silk",
                outlook.silk().map(Dates::day).orElse(tell("cli.field.not-reached")),
                "maturity",
                outlook.maturity().map(Dates::day).orElse(tell("cli.field.not-reached"))));
    }

    private double at(Daily what) {
        return trace.at(day, what);
    }

    private void heads() {
        page.row(
                ROW,
                tell("cli.field.depth", "unit", say.unit(Measure.DEPTH)),
                tell("cli.field.nitrate"),
                "",
                tell("cli.field.ammonium"),
                "",
                tell("cli.field.water"),
                "");
        String row = tell("cli.field.row");
        String middle = tell("cli.field.middle");
        page.row(ROW, "", row, middle, row, middle, row, middle);
    }

    private void soil() {
        String n = say.unit(Measure.MASS_RATE);
        page.head(tell("cli.field.the-soil-nitrogen-of-field", "n", n, "unit", say.unit(Measure.RAIN)));
        heads();
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            String depth = tell(
                    "cli.field.to",
                    "depth",
                    say.number(Measure.DEPTH, SoilProfile.top_mm(layer), 0),
                    "depth2",
                    say.number(Measure.DEPTH, SoilProfile.bottom_mm(layer), 0));
            page.row(
                    ROW,
                    depth,
                    n(Cell.NITRATE, 0, layer),
                    n(Cell.NITRATE, 1, layer),
                    n(Cell.AMMONIUM, 0, layer),
                    n(Cell.AMMONIUM, 1, layer),
                    water(0, layer),
                    water(1, layer));
        }
        page.row(
                ROW,
                tell("cli.field.together"),
                total(Cell.NITRATE, 0),
                total(Cell.NITRATE, 1),
                total(Cell.AMMONIUM, 0),
                total(Cell.AMMONIUM, 1),
                "",
                "");
    }

    private String n(Cell what, int column, int layer) {
        return say.number(Measure.MASS_RATE, trace.field(day, what, column, layer), 1);
    }

    private String water(int column, int layer) {
        return say.number(Measure.RAIN, trace.field(day, Cell.WATER, column, layer), say.metric() ? 0 : 2);
    }

    private String total(Cell what, int column) {
        double sum = 0;
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            sum += trace.field(day, what, column, layer);
        }
        return say.number(Measure.MASS_RATE, sum, 1);
    }

    private void comeAndGone() {
        page.head(tell(
                "cli.field.what-has-come-and-gone",
                "first",
                Dates.day(trace.first()),
                "unit",
                say.unit(Measure.MASS_RATE)));
        line(tell("cli.field.given"), at(Daily.FERTILISED));
        line(tell("cli.field.from-rain-and-air"), at(Daily.DEPOSITED));
        line(tell("cli.field.freed-by-the-soil-less"), at(Daily.MINERALISED) - at(Daily.TAKEN_BACK));
        line(tell("cli.field.held-by-residue"), at(Daily.RESIDUE_NET));
        line(tell("cli.field.leached"), at(Daily.LEACHED));
        line(tell("cli.field.lost-as-gas-from-wet"), at(Daily.DENITRIFIED));
        line(tell("cli.field.lost-as-ammonia-from-the"), at(Daily.VOLATILISED));
        line(
                tell("cli.field.on-the-surface"),
                trace.surface(day, SeasonTrace.ROW) + trace.surface(day, SeasonTrace.MIDDLE));
        line(tell("cli.field.in-the-crop-shoot-and"), at(Daily.SHOOT_N) + at(Daily.ROOT_N));
    }

    private void line(String what, double nitrogen_kgHa) {
        page.row("%-44s %8s", what, say.number(Measure.MASS_RATE, nitrogen_kgHa, 1));
    }

    private void ahead() {
        page.head(tell("cli.field.what-lies-ahead-if-nothing"));
        page.say(tell(
                "cli.field.yield-at-15-5-moisture",
                "spread",
                say.spread(Measure.YIELD, outlook.yield_kgHa(), say.metric() ? 1 : 0),
                "limitedBy",
                say.say(outlook.ahead().limitedBy())));
        outlook.notRipe().ifPresent(said -> page.say(say.say(said)));
        outlook.ahead().replant().ifPresent(r -> page.say(say.say(r.said())));
        for (OutOfReach r : outlook.reach()) {
            page.say(reach(r));
        }
        outlook.flags().forEach(f -> page.say(tell("cli.field.note", "f", say.say(f)), ""));
        page.gap().say(Words.here().say(Cautions.LABEL));
    }

    static String reach(OutOfReach r) {
        if (r.date().isEmpty()) {
            return tell("cli.field.the-fits-to-the-end", "rig", r.rig());
        }
        return r.lastDay().isEmpty()
                ? tell("cli.field.the-does-not-fit-any", "rig", r.rig())
                : tell(
                        "cli.field.the-fits-to",
                        "rig",
                        r.rig(),
                        "lastDay",
                        Dates.day(r.lastDay().get()));
    }
}
