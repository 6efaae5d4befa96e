// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.Comparator;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;

/**
 * A field whose season is not modelled: what was done on it, what is planned and what was read.
 *
 * @param ground its area and soil
 */
public record OtherCropView(
        String name, String place, Markup ground, String planted, List<String> headline, List<Done> passes) {
    /** A pass on it. */
    public record Done(String date, String what, String state) {}

    public static OtherCropView of(FarmDay day, Zone zone, Format format) {
        Markup ground = new Say()
                .text(format.area(zone.area_ha()))
                .unit(format.areaUnit())
                .text(", " + zone.soil().texture())
                .done();
        return new OtherCropView(
                zone.label(),
                Places.of(day.farm()).of(zone),
                ground,
                tell(
                        zone.planted().isAfter(day.on()) ? "page.other-crop.to-be-planted" : "page.other-crop.planted",
                        "day",
                        zone.planted()),
                List.of(
                        tell("page.other-crop.grows", "label", zone.label(), "crop", zone.crop()),
                        tell("page.other-crop.its-season-is-not-modelled")),
                CalendarView.passesOn(day, zone)
                        .sorted(Comparator.comparing(Pass::date).reversed())
                        .map(p -> done(p, format))
                        .toList());
    }

    private static Done done(Pass p, Format format) {
        return new Done(
                Dates.brief(p.date()),
                CalendarRow.what(p, format) + ", " + Phrases.where(p.placement()),
                p.state() == Pass.State.MADE ? tell("page.made") : tell("page.other-crop.planned-by-you"));
    }
}
