// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import org.earleaf.label.Cautions;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;

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
        page.title(outlook.zone().label() + ", " + Say.full(outlook.on()));
        page.say("Nitrogen runs short: " + Say.shortOn(outlook.nShort()) + ".");
        page.say("Corn " + outlook.stage() + ", " + say.spread(Measure.HEIGHT, outlook.height_cm(), 0)
                + " tall; planted "
                + Say.day(outlook.zone().planted()) + ", " + Say.number(at(Daily.GDD), 0) + " F degree days. Emerged "
                + Say.day(outlook.emergence(), "not yet") + ", silk " + Say.day(outlook.silk(), "not reached")
                + ", black layer " + Say.day(outlook.maturity(), "not reached") + ".");
    }

    private double at(Daily what) {
        return trace.at(day, what);
    }

    private void soil() {
        String n = Measure.NITROGEN.unit(say.metric());
        page.head("The soil: nitrogen (" + n + " of field) and water (" + Measure.WATER.unit(say.metric()) + ")");
        page.row(ROW, "Depth, " + Measure.DEPTH.unit(say.metric()), "nitrate", "", "ammonium", "", "water", "");
        page.row(ROW, "", "row", "middle", "row", "middle", "row", "middle");
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            String depth = say.number(Measure.DEPTH, SoilProfile.top_mm(layer), 0) + " to "
                    + say.number(Measure.DEPTH, SoilProfile.bottom_mm(layer), 0);
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
                "together",
                total(Cell.NITRATE, 0),
                total(Cell.NITRATE, 1),
                total(Cell.AMMONIUM, 0),
                total(Cell.AMMONIUM, 1),
                "",
                "");
    }

    private String n(Cell what, int column, int layer) {
        return say.number(Measure.NITROGEN, trace.field(day, what, column, layer), 1);
    }

    private String water(int column, int layer) {
        return say.number(Measure.WATER, trace.field(day, Cell.WATER, column, layer), say.metric() ? 0 : 2);
    }

    private String total(Cell what, int column) {
        double sum = 0;
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            sum += trace.field(day, what, column, layer);
        }
        return say.number(Measure.NITROGEN, sum, 1);
    }

    private void comeAndGone() {
        page.head(
                "What has come and gone since " + Say.day(trace.first()) + ", " + Measure.NITROGEN.unit(say.metric()));
        line("Given", at(Daily.FERTILISED));
        line("From rain and air", at(Daily.DEPOSITED));
        line("Freed by the soil, less what it took back", at(Daily.MINERALISED) - at(Daily.TAKEN_BACK));
        line("Held by residue", at(Daily.RESIDUE_NET));
        line("Leached", at(Daily.LEACHED));
        line("Lost as gas from wet soil", at(Daily.DENITRIFIED));
        line("Lost as ammonia from the surface", at(Daily.VOLATILISED));
        line("On the surface", trace.surface(day, SeasonTrace.ROW) + trace.surface(day, SeasonTrace.MIDDLE));
        line("In the crop, shoot and root", at(Daily.SHOOT_N) + at(Daily.ROOT_N));
    }

    private void line(String what, double nitrogen_kgHa) {
        page.row("%-44s %8s", what, say.number(Measure.NITROGEN, nitrogen_kgHa, 1));
    }

    private void ahead() {
        page.head("What lies ahead, if nothing more is done");
        page.say("Yield " + say.spread(Measure.YIELD, outlook.yield_kgHa(), 0) + " at 15.5 % moisture, limited by "
                + say.say(outlook.limitedBy()) + ".");
        for (OutOfReach r : outlook.reach()) {
            page.say(reach(r));
        }
        outlook.flags().forEach(f -> page.say("Note: " + say.say(f) + ".", ""));
        page.gap().say(Cautions.LABEL);
    }

    static String reach(OutOfReach r) {
        if (r.date().isEmpty()) {
            return "The " + r.rig() + " fits to the end of the season.";
        }
        return r.lastDay().isEmpty()
                ? "The " + r.rig() + " does not fit any more."
                : "The " + r.rig() + " fits to " + Say.day(r.lastDay().get()) + ".";
    }
}
