// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.earleaf.exchange.table.CsvText;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Place;
import org.earleaf.field.Boundary;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.json.simple.JSONArray;
import org.json.simple.JSONObject;
import org.json.simple.parser.JSONParser;
import org.json.simple.parser.ParseException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** boundaries.geojson: outlines of fields and zones, longitude before latitude (RFC 7946). */
final class Boundaries {
    private static final double AREA_TOLERANCE = 0.05;
    private static final double FAR_DEG = 1.5;
    /** A polygon of a collection of collections is 12 deep. */
    private static final int DEEPEST = 64;

    private final String file;
    private final Findings findings;
    private final Map<String, List<FieldsCsv.FieldRow>> fields = new HashMap<>();
    private final Optional<FarmCsv.Head> head;
    private final List<Boundary> read = new ArrayList<>();

    private Boundaries(String file, Findings findings, List<FieldsCsv.FieldRow> rows, Optional<FarmCsv.Head> head) {
        this.file = file;
        this.findings = findings;
        this.head = head;
        rows.forEach(r -> fields.computeIfAbsent(r.field().toLowerCase(Locale.ROOT), k -> new ArrayList<>())
                .add(r));
    }

    /** @param rows zones of fields.csv; when empty, names are not checked */
    static List<Boundary> read(
            Path path, Findings findings, List<FieldsCsv.FieldRow> rows, Optional<FarmCsv.Head> head) {
        Boundaries work = new Boundaries(CsvText.name(path), findings, rows, head);
        CsvText.read(path, findings).ifPresent(work::parse);
        return work.read;
    }

    private void problem(String code, int feature, Said seen) {
        findings.problem(code, Place.ofFeature(file, feature), seen);
    }

    private void flag(int feature, Said what) {
        findings.flag(Place.ofFeature(file, feature), what);
    }

    private void parse(String text) {
        OptionalInt deep = JsonDepth.findBeyond(text, DEEPEST);
        if (deep.isPresent()) {
            findings.problem(
                    "geojson.too-deep",
                    new Place(file, row(text, deep.getAsInt()), ""),
                    Said.of("found.deep-brackets", "most", DEEPEST));
            return;
        }
        Object root;
        try {
            root = new JSONParser().parse(text);
        } catch (ParseException | RuntimeException | Error e) {
            int at = e instanceof ParseException p ? Math.min(Math.max(0, p.getPosition()), text.length()) : 0;
            findings.problem("geojson.unreadable", new Place(file, row(text, at), ""), Said.of("found.no-json"));
            return;
        }
        Object features = root instanceof JSONObject o ? o.get("features") : null;
        if (!(features instanceof JSONArray list) || list.isEmpty()) {
            findings.problem("geojson.no-features", Place.of(file), Said.of("found.no-features"));
            return;
        }
        for (int k = 0; k < list.size(); k++) {
            feature(k + 1, list.get(k));
        }
    }

    private static int row(String text, int at) {
        return 1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
    }

    private void feature(int number, Object feature) {
        if (!(feature instanceof JSONObject object) || !(object.get("geometry") instanceof JSONObject geometry)) {
            problem("boundary.no-geometry", number, Said.of("found.no-geometry"));
            return;
        }
        JSONObject properties = object.get("properties") instanceof JSONObject p ? p : new JSONObject();
        String field = Objects.toString(properties.get("field"), "").strip();
        String zone = Objects.toString(properties.get("zone"), "").strip();
        if (field.isEmpty()) {
            problem("boundary.no-field", number, Said.of("found.properties", "names", names(properties)));
            return;
        }
        Optional<List<FieldsCsv.FieldRow>> zones = zones(number, field, zone);
        Optional<Geometry> shape = shape(number, geometry);
        if (shape.isPresent() && zones.isPresent()) {
            checkArea(number, zones.get(), shape.get());
            read.add(new Boundary(
                    zones.get().isEmpty() ? field : zones.get().get(0).field(), zone, shape.get()));
        }
    }

    private static List<String> names(JSONObject properties) {
        List<String> names = new ArrayList<>();
        for (Object key : properties.keySet()) {
            names.add(String.valueOf(key));
        }
        return names;
    }

    /** The rows of fields.csv that lie inside the outline; empty list when fields.csv could not be read. */
    private Optional<List<FieldsCsv.FieldRow>> zones(int number, String field, String zone) {
        if (fields.isEmpty()) {
            return Optional.of(List.of());
        }
        List<FieldsCsv.FieldRow> of = fields.get(field.toLowerCase(Locale.ROOT));
        List<FieldsCsv.FieldRow> inside = of == null
                ? List.of()
                : of.stream()
                        .filter(r -> zone.isEmpty() || r.zone().equalsIgnoreCase(zone))
                        .toList();
        if (inside.isEmpty()) {
            String name = zone.isEmpty() ? field : field + ", zone " + zone;
            problem("boundary.field-unknown", number, Problem.seen(name));
            return Optional.empty();
        }
        return Optional.of(inside);
    }

    private Optional<Geometry> shape(int number, JSONObject json) {
        Geometry shape;
        try {
            shape = new GeoJsonReader().read(json.toJSONString());
        } catch (org.locationtech.jts.io.ParseException | RuntimeException e) {
            problem("boundary.unreadable", number, Said.of("found.unreadable-geometry"));
            return Optional.empty();
        }
        if (!(shape instanceof Polygonal) || shape.isEmpty()) {
            problem("boundary.no-area", number, Said.text(shape.getGeometryType()));
            return Optional.empty();
        }
        for (Coordinate c : shape.getCoordinates()) {
            if (Math.abs(c.x) > 180 || Math.abs(c.y) > 90) {
                problem("boundary.no-degrees", number, Said.of("found.point", "point", c.x + ", " + c.y));
                return Optional.empty();
            }
        }
        TopologyValidationError wrong = new IsValidOp(shape).getValidationError();
        if (wrong != null) {
            Coordinate at = wrong.getCoordinate();
            problem("boundary.crosses-itself", number, Said.of("found.crossing", "point", at.x + ", " + at.y));
            return Optional.empty();
        }
        checkNear(number, shape);
        shape.setSRID(0);
        return Optional.of(shape);
    }

    private void checkNear(int number, Geometry shape) {
        head.ifPresent(h -> {
            Coordinate c = shape.getCentroid().getCoordinate();
            double north = Math.abs(c.y - h.site().latitude_deg());
            double east = Math.abs(c.x - h.site().longitude_deg());
            if (Math.max(north, east) > FAR_DEG) {
                flag(number, Said.of("flag.outline-far", "east", c.x, "north", c.y, "most", FAR_DEG));
            }
        });
    }

    private void checkArea(int number, List<FieldsCsv.FieldRow> zones, Geometry shape) {
        double listed = zones.stream().mapToDouble(FieldsCsv.FieldRow::area_ha).sum();
        double drawn = GroundArea.of_ha(shape);
        if (!zones.isEmpty() && Math.abs(drawn / listed - 1) > AREA_TOLERANCE) {
            flag(
                    number,
                    Said.of(
                            "flag.outline-area",
                            "field",
                            zones.get(0).field(),
                            "drawn",
                            Measure.AREA.of(drawn),
                            "listed",
                            Measure.AREA.of(listed),
                            "most",
                            Measure.SHARE.of(AREA_TOLERANCE)));
        }
    }
}
