// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.words.Words;
import org.earleaf.field.Zone;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Replant;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Flag;
import org.jspecify.annotations.Nullable;

/**
 * What {@code field} prints as JSON: where a zone stands.
 *
 * <p>Amounts of soil and sums are per area of field; the cells of {@code soil} add up to the field's total. Sums run from
 * the start of the run. {@code crop_n} is all nitrogen in the plants, of which {@code shoot_n} above ground.
 */
final class FieldJson {
    private final Outlook outlook;
    private final SeasonTrace trace;
    private final int day;
    private final Keys out;

    private FieldJson(Outlook outlook, boolean metric) {
        this.outlook = outlook;
        this.trace = outlook.trace();
        this.day = outlook.today();
        this.out = new Keys(metric);
    }

    static Map<String, @Nullable Object> of(Outlook outlook, boolean metric) {
        FieldJson json = new FieldJson(outlook, metric);
        json.crop();
        json.nitrogen();
        json.ahead();
        return json.out.map();
    }

    /** For a zone whose crop the season model does not know: every key is there, with the reason. */
    static Map<String, @Nullable Object> notModelled(Zone zone, LocalDate on) {
        return new Keys(false)
                .put("field", zone.field())
                .put("zone", zone.zone())
                .put("on", on)
                .put("not_modelled", notModelledSentence(zone))
                .map();
    }

    static String notModelledSentence(Zone zone) {
        return tell("cli.field-json.grows-the-season-is-modelled", "label", zone.label(), "crop", zone.crop());
    }

    private void crop() {
        out.put("field", outlook.zone().field())
                .put("zone", outlook.zone().zone())
                .put("on", outlook.on())
                .put("gdd", JsonUnit.HEAT, at(Daily.GDD))
                .put("stage", Words.here().say(outlook.stage()))
                .put("leaf_collars", outlook.leafCollars())
                .put("height", JsonUnit.HEIGHT, outlook.height_cm())
                .put("soil", soil());
    }

    private double at(Daily what) {
        return trace.at(day, what);
    }

    private List<Object> soil() {
        List<Object> cells = new ArrayList<>();
        for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                cells.add(new Keys(out.isMetric())
                        .put("column", column == SeasonTrace.ROW ? "row" : "middle")
                        .put("top", JsonUnit.DEPTH, SoilProfile.top_mm(layer))
                        .put("bottom", JsonUnit.DEPTH, SoilProfile.bottom_mm(layer))
                        .put("water", JsonUnit.WATER, trace.field(day, Cell.WATER, column, layer))
                        .put("nitrate", JsonUnit.NITROGEN, trace.field(day, Cell.NITRATE, column, layer))
                        .put("ammonium", JsonUnit.NITROGEN, trace.field(day, Cell.AMMONIUM, column, layer))
                        .put("urea", JsonUnit.NITROGEN, trace.field(day, Cell.UREA, column, layer))
                        .map());
            }
        }
        return cells;
    }

    private void nitrogen() {
        double surface = trace.surface(day, SeasonTrace.ROW) + trace.surface(day, SeasonTrace.MIDDLE);
        Map<String, @Nullable Object> losses = Json.object(
                "leached", shown(at(Daily.LEACHED)),
                "denitrified", shown(at(Daily.DENITRIFIED)),
                "volatilised", shown(at(Daily.VOLATILISED)));
        out.put("surface_n", JsonUnit.NITROGEN, surface)
                .put("crop_n", JsonUnit.NITROGEN, at(Daily.SHOOT_N) + at(Daily.ROOT_N))
                .put("shoot_n", JsonUnit.NITROGEN, at(Daily.SHOOT_N))
                .put("fertilised", JsonUnit.NITROGEN, at(Daily.FERTILISED))
                .put("deposited", JsonUnit.NITROGEN, at(Daily.DEPOSITED))
                .put("mineralised", JsonUnit.NITROGEN, at(Daily.MINERALISED) - at(Daily.TAKEN_BACK))
                .put(JsonUnit.NITROGEN.key("losses", out.isMetric()), losses)
                .put("immobilised", JsonUnit.NITROGEN, at(Daily.RESIDUE_NET));
    }

    private double shown(double nitrogen_kgHa) {
        return JsonUnit.NITROGEN.value(nitrogen_kgHa, out.isMetric());
    }

    private void ahead() {
        out.put("n_short", outlook.nShort())
                .put("yield", JsonUnit.YIELD, outlook.yield_kgHa())
                .put(
                        "limited_by",
                        outlook.ahead()
                                .limitedBy()
                                .name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', ' '))
                .put("emergence_date", outlook.emergence())
                .put("silk_date", outlook.silk())
                .put("maturity_date", outlook.maturity())
                .put("not_ripe_probability", outlook.unripe())
                .put("replant", replant(outlook.ahead().replant(), out.isMetric()))
                .put("out_of_reach", reach(outlook.reach()))
                .put(
                        "balance",
                        Json.object(
                                "water_mm", outlook.remainder().water_mm(),
                                "nitrogen_kg_ha", outlook.remainder().nitrogen_kgHa()))
                .put("flags", flags(outlook.flags(), out.isMetric()));
    }

    /** What planting a thin stand again would bring; null where none was counted. */
    static @Nullable Map<String, @Nullable Object> replant(Optional<Replant> replant, boolean metric) {
        return replant.map(r -> new Keys(metric)
                        .put("counted", r.counted())
                        .put("stand", JsonUnit.PLANTS, r.counted_m2())
                        .put("keep", JsonUnit.YIELD, r.keep_kgHa())
                        .put("again_date", r.again())
                        .put("again", JsonUnit.YIELD, r.again_kgHa())
                        .put("cost", JsonUnit.MONEY, r.cost_usdHa())
                        .put("gain", JsonUnit.MONEY, r.gain_usdHa())
                        .put("says", Words.in(metric).say(r.said()))
                        .map())
                .orElse(null);
    }

    /** {@code date} is the first day out of reach, null when the rig fits to the end of the season. */
    static List<Object> reach(List<OutOfReach> reach) {
        List<Object> rigs = new ArrayList<>();
        reach.forEach(r -> rigs.add(Json.object("rig", r.rig(), "last_day", r.lastDay(), "date", r.date())));
        return rigs;
    }

    private static List<Object> flags(List<Flag> flags, boolean metric) {
        List<Object> texts = new ArrayList<>();
        Say say = new Say(metric);
        flags.forEach(f -> texts.add(say.say(f)));
        return texts;
    }
}
