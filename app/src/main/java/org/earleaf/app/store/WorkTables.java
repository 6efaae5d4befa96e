// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.List;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;

/** What was done and what was seen. */
final class WorkTables {
    static final Table<Pass> PASSES = Table.named(
                    "pass",
                    (Pass p) -> "pass " + place(p.field(), p.zone()) + " " + p.date() + " " + p.product(),
                    p -> List.of(p.field(), p.zone(), p.date(), p.product(), p.placement()))
            .key("id", Pass::id)
            .key("field", Pass::field)
            .key("zone", Pass::zone)
            .key("date_", Pass::date)
            .key("product", Pass::product)
            .number("rate", "rate", Pass::rate, Shown.PLAIN)
            .text("rate_unit", "unit of the rate", Pass::rateUnit)
            .number("nitrogen_kg_ha", "nitrogen", Pass::nitrogen_kgHa, Shown.RATE)
            .key("placement", Pass::placement)
            .text("inhibitor", "inhibitor", Pass::inhibitor)
            .text("state", "state", Pass::state)
            .read(WorkTables::pass);

    static final Table<Reading> READINGS = Table.named(
                    "reading",
                    (Reading r) -> "reading " + place(r.field(), r.zone()) + " " + r.date() + " "
                            + r.kind().word(),
                    r -> List.of(r.field(), r.zone(), r.date(), r.kind(), r.top_mm(), r.bottom_mm(), r.position()))
            .key("id", Reading::id)
            .key("field", Reading::field)
            .key("zone", Reading::zone)
            .key("date_", Reading::date)
            .key("kind", Reading::kind)
            .number("amount", "", Reading::value, Shown.PLAIN)
            .text("entered", "value", Reading::entered)
            .number("top_mm", "top", Reading::top_mm, Shown.DEPTH)
            .number("bottom_mm", "bottom", Reading::bottom_mm, Shown.DEPTH)
            .key("position_", Reading::position)
            .text("note", "note", Reading::note)
            .read(WorkTables::reading);

    static final Table<Irrigation> IRRIGATION = Table.named(
                    "irrigation",
                    (Irrigation i) -> "irrigation " + place(i.field(), i.zone()) + " " + i.date(),
                    i -> List.of(i.field(), i.zone(), i.date()))
            .key("field", Irrigation::field)
            .key("zone", Irrigation::zone)
            .key("date_", Irrigation::date)
            .number("depth_mm", "water", Irrigation::depth_mm, Shown.WATER)
            .read(r -> new Irrigation(r.text("field"), r.text("zone"), r.date("date_"), r.number("depth_mm")));

    static final Table<Manure> MANURE = Table.named(
                    "manure",
                    (Manure m) -> "manure " + place(m.field(), m.zone()) + " " + m.date(),
                    m -> List.of(m.field(), m.zone(), m.date()))
            .key("field", Manure::field)
            .key("zone", Manure::zone)
            .key("date_", Manure::date)
            .number("organic_n_kg_ha", "organic nitrogen", Manure::organicN_kgHa, Shown.RATE)
            .number("ammonium_n_kg_ha", "ammonium nitrogen", Manure::ammoniumN_kgHa, Shown.RATE)
            .text("placement", "placement", Manure::placement)
            .read(WorkTables::manure);

    private WorkTables() {}

    static Pass withId(String id, Pass p) {
        return new Pass(
                id,
                p.field(),
                p.zone(),
                p.date(),
                p.product(),
                p.rate(),
                p.rateUnit(),
                p.nitrogen_kgHa(),
                p.placement(),
                p.inhibitor(),
                p.state());
    }

    static Reading withId(String id, Reading r) {
        return new Reading(
                id,
                r.field(),
                r.zone(),
                r.date(),
                r.kind(),
                r.value(),
                r.entered(),
                r.top_mm(),
                r.bottom_mm(),
                r.position(),
                r.note());
    }

    private static String place(String field, String zone) {
        return new GroundTables.Place(field, zone).label();
    }

    private static Pass pass(Row r) {
        return new Pass(
                r.text("id"),
                r.text("field"),
                r.text("zone"),
                r.date("date_"),
                r.text("product"),
                r.number("rate"),
                r.text("rate_unit"),
                r.number("nitrogen_kg_ha"),
                r.word(Placement.class, "placement"),
                r.word(Inhibitor.class, "inhibitor"),
                r.word(Pass.State.class, "state"));
    }

    private static Reading reading(Row r) {
        return new Reading(
                r.text("id"),
                r.text("field"),
                r.text("zone"),
                r.date("date_"),
                r.word(Reading.Kind.class, "kind"),
                r.number("amount"),
                r.text("entered"),
                r.number("top_mm"),
                r.number("bottom_mm"),
                r.word(Reading.Position.class, "position_"),
                r.text("note"));
    }

    private static Manure manure(Row r) {
        return new Manure(
                r.text("field"),
                r.text("zone"),
                r.date("date_"),
                r.number("organic_n_kg_ha"),
                r.number("ammonium_n_kg_ha"),
                r.word(Placement.class, "placement"));
    }
}
