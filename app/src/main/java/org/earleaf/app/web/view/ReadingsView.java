// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.Comparator;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.words.Dates;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;

/** The readings of a field this season, newest first, with their photographs. */
public record ReadingsView(List<Row> rows) {
    /**
     * @param id by which it can be withdrawn
     * @param note what was written beside it
     */
    public record Row(String id, String date, String what, String note, List<Picture> pictures) {}

    /** @param says what it shows, for those who cannot see it */
    public record Picture(String id, int wide, int tall, String says) {}

    public static ReadingsView of(FarmDay day, Zone zone, List<Photograph.Note> photographs) {
        return new ReadingsView(day.farm().readings().stream()
                .filter(r -> r.isOn(zone) && !r.date().isAfter(day.on()) && isOfSeason(r, zone))
                .sorted(Comparator.comparing(Reading::date).reversed())
                .map(r -> row(r, photographs))
                .toList());
    }

    private static boolean isOfSeason(Reading r, Zone zone) {
        return r.date().getYear() == zone.planted().getYear();
    }

    private static Row row(Reading r, List<Photograph.Note> photographs) {
        return new Row(r.id(), Dates.brief(r.date()), ReadingKinds.said(r), r.note(), pictures(r, photographs));
    }

    /** Those that go with a reading. */
    static List<Picture> pictures(Reading r, List<Photograph.Note> photographs) {
        return photographs.stream()
                .filter(p -> p.reading().equals(r.id()))
                .map(p -> new Picture(
                        p.id(),
                        p.wide(),
                        p.tall(),
                        tell(
                                "page.readings.photograph-of-with",
                                "date",
                                Dates.day(r.date()),
                                "name",
                                ReadingKinds.name(r.kind()),
                                "entered",
                                r.entered())))
                .toList();
    }
}
