// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.load.LoadGround;
import org.earleaf.load.TankLoad;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.units.Figure;
import org.locationtech.jts.geom.Point;

/** What earlier records and the farm's map tell, so that nothing is asked twice. */
final class Known {
    private Known() {}

    /** The certificate that this person gave last, and where the field lies as told last, else by the map. */
    static TankForm fill(TankForm form, TankLoad load, List<Chain.Entry> book, Farm farm) {
        LoadGround ground = load.grounds().get(0);
        String licence = newest(book, farm, form.who().isEmpty() ? "" : form.who(), "")
                .map(r -> r.applicator().certification())
                .orElse("");
        String location = newest(book, farm, "", ground.field())
                .map(FiledRecord::location)
                .filter(l -> !l.isBlank())
                .orElseGet(() -> map(ground, farm));
        return form.knowing(licence, location);
    }

    private static Optional<FiledRecord> newest(List<Chain.Entry> book, Farm farm, String person, String field) {
        return book.stream()
                .map(Chain.Entry::record)
                .filter(r -> r.isRegistered())
                .filter(r -> person.isEmpty() || r.applicator().name().equalsIgnoreCase(person))
                .filter(r -> field.isEmpty() || field(r, farm).equals(field))
                .reduce((before, after) -> after);
    }

    /** What the field of a record is called today. */
    private static String field(FiledRecord r, Farm farm) {
        return farm.passes().stream()
                .filter(p -> p.id().equals(r.passId()))
                .map(Pass::field)
                .findFirst()
                .orElse(r.field());
    }

    /** The middle of its boundary, in degrees. */
    private static String map(LoadGround ground, Farm farm) {
        return farm.ground().boundaries().stream()
                .filter(b -> b.field().equals(ground.field()))
                .filter(b -> b.zone().isEmpty() || b.zone().equals(ground.zone()))
                .findFirst()
                .map(b -> {
                    Point middle = b.shape_lonLat().getInteriorPoint();
                    return tell(
                            "page.known.farm-map",
                            "degrees",
                            degrees(middle.getY(), "N", "S"),
                            "degrees2",
                            degrees(middle.getX(), "E", "W"));
                })
                .orElse("");
    }

    private static String degrees(double value, String above, String below) {
        return Figure.fixed(value < 0 ? -value : value, 4) + "° " + (value < 0 ? below : above);
    }
}
