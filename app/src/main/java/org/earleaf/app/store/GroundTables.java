// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.earleaf.app.store.Names.Kind.FIELD;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.earleaf.field.Boundary;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldId;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneId;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.soil.Texture;
import org.earleaf.units.EarleafException;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;

/** Zones, their soil and their outlines. */
final class GroundTables {
    static final Table<Layer> SOIL = Table.named(
                    "soil_layer",
                    (Layer l) -> "soil of " + l.at().label() + ", layer " + (l.layer() + 1),
                    l -> List.of(Names.field(l.at().field()), l.at().zone(), l.layer()))
            .called("field", FIELD, l -> l.at().field())
            .key("zone", l -> l.at().zone())
            .key("layer", Layer::layer)
            .number("wilting_point", "wilting point", l -> l.water().wp(), Shown.SHARE)
            .number("field_capacity", "field capacity", l -> l.water().fc(), Shown.SHARE)
            .number("saturation", "saturation", l -> l.water().sat(), Shown.SHARE)
            .number("conductivity_mm_h", "conductivity", l -> l.water().ksat_mmh(), Shown.CONDUCTIVITY)
            .number("bulk_density_g_cm3", "bulk density", Layer::bulkDensity_gcm3, Shown.BULK_DENSITY)
            .number("om_pct", "organic matter", Layer::om_pct, Shown.PERCENT)
            .number("ph", "pH", Layer::ph, Shown.PLAIN)
            .number("cec_cmol_kg", "cation exchange capacity [cmol/kg]", Layer::cec_cmolKg, Shown.PLAIN)
            .read(Layer::read);

    static final Table<Boundary> BOUNDARIES = Table.named(
                    "boundary",
                    (Boundary b) -> "boundary of " + new FieldPart(b.field(), b.zone()).label(),
                    b -> List.of(Names.field(b.field()), b.zone()))
            .called("field", FIELD, Boundary::field)
            .key("zone", Boundary::zone)
            .key("shape", b -> WKBWriter.toHex(new WKBWriter().write(b.shape_lonLat())))
            .read(GroundTables::boundary);

    private GroundTables() {}

    /** One layer of a zone's soil. */
    record Layer(
            FieldPart at,
            int layer,
            SoilWater water,
            double bulkDensity_gcm3,
            double om_pct,
            double ph,
            double cec_cmolKg) {
        static List<Layer> of(Zone z) {
            List<Layer> layers = new ArrayList<>();
            SoilProfile s = z.soil();
            for (int k = 0; k < SoilProfile.LAYERS; k++) {
                layers.add(new Layer(
                        new FieldPart(z.field(), z.zone()),
                        k,
                        s.water().get(k),
                        s.bulkDensity_gcm3().get(k),
                        s.om_pct().get(k),
                        s.ph().get(k),
                        s.cec_cmolKg().get(k)));
            }
            return layers;
        }

        private static Layer read(Row r) {
            return new Layer(
                    new FieldPart(r.called(FIELD, "field"), r.text("zone")),
                    r.whole("layer"),
                    new SoilWater(
                            r.number("wilting_point"),
                            r.number("field_capacity"),
                            r.number("saturation"),
                            r.number("conductivity_mm_h")),
                    r.number("bulk_density_g_cm3"),
                    r.number("om_pct"),
                    r.number("ph"),
                    r.number("cec_cmol_kg"));
        }
    }

    /** Zones stand on the soil given; the name of its texture lies with the zone. */
    static Table<Zone> zones(List<Layer> soil) {
        Map<FieldPart, Map<Integer, Layer>> byPlace = new java.util.HashMap<>();
        soil.forEach(l -> byPlace.computeIfAbsent(l.at(), p -> new TreeMap<>()).put(l.layer(), l));
        Table.Builder<Zone> columns = Table.named(
                        "zone", (Zone z) -> "field " + z.label(), z -> List.of(Names.field(z.field()), z.zone()))
                .called("field", FIELD, Zone::field)
                .key("zone", Zone::zone)
                .number("area_ha", "area", Zone::area_ha, Shown.AREA);
        return DiseaseColumns.add(hybrid(ground(planting(columns)))
                        .text("texture", "texture", z -> z.soil().texture().word()))
                .read(r -> zone(r, byPlace));
    }

    private static Table.Builder<Zone> planting(Table.Builder<Zone> table) {
        return table.text("crop", "crop", Zone::crop)
                .text("planted", "planted", Zone::planted)
                .number(
                        "relative_maturity_d",
                        "relative maturity [d]",
                        z -> z.planting().hybrid().relativeMaturity_d(),
                        Shown.PLAIN)
                .number("population_m2", "population", z -> z.planting().population_m2(), Shown.PLANTS)
                .number("row_spacing_m", "row spacing", Zone::rowSpacing_m, Shown.SPACING);
    }

    private static Table.Builder<Zone> ground(Table.Builder<Zone> table) {
        return table.text("previous_crop", "previous crop", z -> z.seedbed().previousCrop())
                .text("drainage", "drainage", z -> z.land().drainage())
                .text("tillage", "tillage", z -> z.seedbed().tillage())
                .number("residue_cover", "residue cover", z -> z.seedbed().residueCover(), Shown.SHARE)
                .number("curve_number", "curve number", z -> z.land().curveNumber(), Shown.PLAIN);
    }

    private static Table.Builder<Zone> hybrid(Table.Builder<Zone> table) {
        return table.text("hybrid", "hybrid", z -> z.planting().hybrid().name())
                .number(
                        "gdd_silk",
                        "heat to silk [F d]",
                        z -> z.planting().hybrid().gddSilk(),
                        Shown.PLAIN)
                .number(
                        "gdd_black_layer",
                        "heat to black layer [F d]",
                        z -> z.planting().hybrid().gddBlackLayer(),
                        Shown.PLAIN)
                .number(
                        "yield_goal_kg_ha",
                        "yield goal, dry grain",
                        z -> z.planting().yieldGoal_kgHa(),
                        Shown.RATE);
    }

    private static Zone zone(Row r, Map<FieldPart, Map<Integer, Layer>> soil) {
        FieldPart place = new FieldPart(r.called(FIELD, "field"), r.text("zone"));
        ZoneId id = new ZoneId(new FieldId(r.text("field")), place.zone());
        Map<Integer, Layer> layers = Objects.requireNonNullElse(soil.get(place), Map.of());
        var hybrid = new Hybrid(
                r.text("hybrid"), r.number("relative_maturity_d"), r.number("gdd_silk"), r.number("gdd_black_layer"));
        var planting = new Zone.Planting(
                r.text("crop"),
                r.date("planted"),
                hybrid,
                r.number("population_m2"),
                r.number("row_spacing_m"),
                r.number("yield_goal_kg_ha"));
        var land = new Zone.Land(
                profile(List.copyOf(layers.values()), r.text("texture")),
                r.word(Drainage.class, "drainage"),
                r.number("curve_number"));
        var seedbed = new Zone.Seedbed(
                r.word(PreviousCrop.class, "previous_crop"),
                r.word(Tillage.class, "tillage"),
                r.number("residue_cover"));
        return new Zone(
                new ZoneName(id, place.field(), place.zone()),
                r.number("area_ha"),
                planting,
                land,
                seedbed,
                DiseaseColumns.read(r));
    }

    private static SoilProfile profile(List<Layer> layers, String texture) {
        return new SoilProfile(
                layers.stream().map(Layer::water).toList(),
                layers.stream().map(Layer::bulkDensity_gcm3).toList(),
                layers.stream().map(Layer::om_pct).toList(),
                layers.stream().map(Layer::ph).toList(),
                layers.stream().map(Layer::cec_cmolKg).toList(),
                Texture.findByWord(texture)
                        .orElseThrow(() -> new IllegalArgumentException("no texture is called " + texture)));
    }

    private static Boundary boundary(Row r) {
        String hex = r.text("shape");
        try {
            return new Boundary(
                    r.called(FIELD, "field"), r.text("zone"), new WKBReader().read(WKBReader.hexToBytes(hex)));
        } catch (ParseException | IllegalArgumentException e) {
            throw EarleafException.coded("store.shape-unreadable", r.text("field"), String.valueOf(e.getMessage()));
        }
    }
}
