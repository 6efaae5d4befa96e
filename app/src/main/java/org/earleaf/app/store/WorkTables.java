// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.earleaf.app.store.Names.Kind.FIELD;
import static org.earleaf.app.store.Names.Kind.PRODUCT;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.earleaf.field.Disease;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Incidence;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.jspecify.annotations.Nullable;

/** What was done and what was seen, this season and before. */
final class WorkTables {
    static final Table<Pass> PASSES = Table.named(
                    "pass",
                    (Pass p) -> "pass " + place(p.field(), p.zone()) + " " + p.date() + " " + p.product(),
                    p -> List.of(Names.field(p.field()), p.zone(), p.date(), Names.product(p.product()), p.placement()))
            .key("id", Pass::id)
            .called("field", FIELD, Pass::field)
            .key("zone", Pass::zone)
            .key("date_", Pass::date)
            .called("product", PRODUCT, Pass::product)
            .number("rate", "rate", p -> p.rate().entered(), Shown.PLAIN)
            .text("rate_unit", "unit of the rate", p -> p.rate().unit())
            .number("nitrogen_kg_ha", "nitrogen", Pass::nitrogen_kgHa, Shown.RATE)
            .key("placement", Pass::placement)
            .text("inhibitor", "inhibitor", Pass::inhibitor)
            .text("state", "state", Pass::state)
            .read(WorkTables::pass);

    static final Table<Reading> READINGS = Table.named(
                    "reading",
                    (Reading r) -> "reading " + place(r.field(), r.zone()) + " " + r.date() + " "
                            + r.kind().word(),
                    r -> List.of(
                            Names.field(r.field()),
                            r.zone(),
                            r.date(),
                            r.kind(),
                            r.top_mm(),
                            r.bottom_mm(),
                            r.position()))
            .key("id", Reading::id)
            .called("field", FIELD, Reading::field)
            .key("zone", Reading::zone)
            .key("date_", Reading::date)
            .key("kind", Reading::kind)
            .number("amount", "", Reading::value, Shown.PLAIN)
            .text("entered", "value", Reading::entered)
            .number("top_mm", "top", Reading::top_mm, Shown.DEPTH)
            .number("bottom_mm", "bottom", Reading::bottom_mm, Shown.DEPTH)
            .key("position_", Reading::position)
            .text("note", "note", Reading::note)
            .text("found", "what was found", r -> found(r.scouted()))
            .text("positive", "plants that show it", r -> shows(r.scouted()))
            .text("plants", "plants looked at", r -> plants(r.scouted()))
            .text("leaf", "highest leaf", r -> leaf(r.scouted()))
            .text("counts", "what the value counts", r -> r.scouted().by())
            .number("lady_beetles", "lady beetles", r -> r.scouted().enemies().ladyBeetles(), Shown.PLAIN)
            .number("lacewings", "lacewings", r -> r.scouted().enemies().lacewings(), Shown.PLAIN)
            .number("mummies", "mummies", r -> r.scouted().enemies().mummies(), Shown.PLAIN)
            .text("above_threshold", "above its threshold", r -> r.scouted().aboveThreshold() ? 1 : 0)
            .read(WorkTables::reading);

    static final Table<Irrigation> IRRIGATION = Table.named(
                    "irrigation",
                    (Irrigation i) -> "irrigation " + place(i.field(), i.zone()) + " " + i.date(),
                    i -> List.of(Names.field(i.field()), i.zone(), i.date()))
            .called("field", FIELD, Irrigation::field)
            .key("zone", Irrigation::zone)
            .key("date_", Irrigation::date)
            .number("depth_mm", "water", Irrigation::depth_mm, Shown.WATER)
            .read(r -> new Irrigation(r.called(FIELD, "field"), r.text("zone"), r.date("date_"), r.number("depth_mm")));

    static final Table<Manure> MANURE = Table.named(
                    "manure",
                    (Manure m) -> "manure " + place(m.field(), m.zone()) + " " + m.date(),
                    m -> List.of(Names.field(m.field()), m.zone(), m.date()))
            .called("field", FIELD, Manure::field)
            .key("zone", Manure::zone)
            .key("date_", Manure::date)
            .number("organic_n_kg_ha", "organic nitrogen", Manure::organicN_kgHa, Shown.RATE)
            .number("ammonium_n_kg_ha", "ammonium nitrogen", Manure::ammoniumN_kgHa, Shown.RATE)
            .text("placement", "placement", Manure::placement)
            .read(WorkTables::manure);

    static final Table<PastYear> PAST = Table.named(
                    "past_year",
                    (PastYear p) -> p.part().label() + ", " + p.year(),
                    p -> List.of(Names.field(p.field()), p.zone(), p.year()))
            .called("field", FIELD, PastYear::field)
            .key("zone", PastYear::zone)
            .key("year_", PastYear::year)
            .text("crop", "crop", PastYear::crop)
            .number("yield_kg_ha", "yield", PastYear::yield_kgHa, Shown.GRAIN)
            .number("nitrogen_kg_ha", "nitrogen", PastYear::nitrogen_kgHa, Shown.RATE)
            .read(r -> new PastYear(
                    new FieldPart(r.called(FIELD, "field"), r.text("zone")),
                    r.whole("year_"),
                    r.word(PreviousCrop.class, "crop"),
                    r.number("yield_kg_ha"),
                    r.number("nitrogen_kg_ha")));

    private WorkTables() {}

    private static String found(Scouted s) {
        return s.disease().map(Disease::word).orElse(s.insect());
    }

    private static @Nullable Integer shows(Scouted s) {
        return s.counted().map(Incidence::shows).orElse(null);
    }

    private static @Nullable Integer plants(Scouted s) {
        return s.counted().map(Incidence::plants).orElse(null);
    }

    private static @Nullable Integer leaf(Scouted s) {
        return s.leaf().isPresent() ? (Integer) s.leaf().getAsInt() : null;
    }

    private static Scouted scouted(Row r, Reading.Kind kind) {
        boolean insects = kind == Reading.Kind.INSECTS;
        double plants = r.number("plants");
        double leaf = r.number("leaf");
        return new Scouted(
                insects ? Optional.empty() : Disease.find(r.text("found")),
                insects ? r.text("found") : "",
                Double.isNaN(leaf) ? OptionalInt.empty() : OptionalInt.of((int) leaf),
                Double.isNaN(plants)
                        ? Optional.empty()
                        : Optional.of(new Incidence((int) r.number("positive"), (int) plants)),
                r.word(Scouted.By.class, "counts"),
                new Scouted.Enemies(r.number("lady_beetles"), r.number("lacewings"), r.number("mummies")),
                r.whole("above_threshold") == 1);
    }

    private static String place(String field, String zone) {
        return new FieldPart(field, zone).label();
    }

    private static Pass pass(Row r) {
        return new Pass(
                r.text("id"),
                new FieldPart(r.called(FIELD, "field"), r.text("zone")),
                r.date("date_"),
                r.called(PRODUCT, "product"),
                new Pass.Rate(r.number("rate"), r.text("rate_unit"), r.number("nitrogen_kg_ha")),
                r.word(Placement.class, "placement"),
                r.word(Inhibitor.class, "inhibitor"),
                r.word(Pass.State.class, "state"));
    }

    private static Reading reading(Row r) {
        Reading.Kind kind = r.word(Reading.Kind.class, "kind");
        return new Reading(
                r.text("id"),
                new FieldPart(r.called(FIELD, "field"), r.text("zone")),
                r.date("date_"),
                kind,
                r.number("amount"),
                r.text("entered"),
                new Reading.Sampled(
                        r.number("top_mm"), r.number("bottom_mm"), r.word(Reading.Position.class, "position_")),
                r.text("note"),
                scouted(r, kind));
    }

    private static Manure manure(Row r) {
        return new Manure(
                r.called(FIELD, "field"),
                r.text("zone"),
                r.date("date_"),
                r.number("organic_n_kg_ha"),
                r.number("ammonium_n_kg_ha"),
                r.word(Placement.class, "placement"));
    }
}
