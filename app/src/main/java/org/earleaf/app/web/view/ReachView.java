// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;

/**
 * Fields that a rig can soon no longer enter.
 *
 * @param passed one sentence a rig: where it does not fit any more
 */
public record ReachView(List<Row> rows, List<String> passed) {
    private static final int SOON_D = 7;
    private static final int DRAWN_D = 21;

    public record Row(String name, String place, String rig, Markup height, Markup lastDay, String then) {}

    private record Timed(LocalDate last, Row row) {}

    static ReachView of(Brief brief, Farm farm, Places places, Format format) {
        List<Timed> rows = new ArrayList<>();
        Map<String, List<String>> passed = new LinkedHashMap<>();
        for (Outlook o : brief.outlooks()) {
            for (OutOfReach r : o.reach()) {
                Optional<Rig> rig = findOwnRig(farm, r.rig());
                if (rig.isEmpty() || o.leafCollars() <= 0) {
                    continue;
                }
                if (r.lastDay().isEmpty()) {
                    passed.computeIfAbsent(r.rig(), k -> new ArrayList<>())
                            .add(o.zone().label());
                } else if (r.date().isPresent()
                        && ChronoUnit.DAYS.between(brief.on(), r.lastDay().get()) <= DRAWN_D) {
                    rows.add(new Timed(r.lastDay().get(), row(o, r, rig.get(), brief, places, format)));
                }
            }
        }
        rows.sort(Comparator.comparing(Timed::last));
        List<String> sentences = passed.entrySet().stream()
                .map(e -> tell(
                        "page.reach.no-longer-fits-on",
                        "name",
                        Phrases.capital(e.getKey()),
                        "getValue",
                        String.join("; ", e.getValue())))
                .toList();
        return new ReachView(rows.stream().map(Timed::row).toList(), sentences);
    }

    private static Row row(Outlook o, OutOfReach r, Rig rig, Brief brief, Places places, Format format) {
        LocalDate last = r.lastDay().orElseThrow();
        String day = Dates.brief(last);
        boolean soon = ChronoUnit.DAYS.between(brief.on(), last) <= SOON_D;
        return new Row(
                o.zone().label(),
                places.of(o.zone()),
                tell(
                        "page.reach.clears",
                        "name",
                        Phrases.capital(rig.name()),
                        "length",
                        format.length(100 * rig.clearance_m()),
                        "lengthUnit",
                        format.lengthUnit()),
                format.height(o.height_cm()),
                soon ? Marks.soon(day) : Marks.done(day),
                then(o, r));
    }

    /** Which rig still fits after this one. */
    private static String then(Outlook o, OutOfReach gone) {
        LocalDate last = gone.lastDay().orElseThrow();
        return o.reach().stream()
                .filter(r -> r.lastDay().isPresent() && r.lastDay().get().isAfter(last))
                .map(ReachView::fits)
                .findFirst()
                .orElse(tell("page.reach.nothing-on-this-farm"));
    }

    private static String fits(OutOfReach r) {
        String rig = Phrases.capital(Words.here().rig(r.rig()));
        return r.date().isEmpty()
                ? tell("page.reach.to-the-end", "rig", rig)
                : tell("page.reach.to", "rig", rig, "lastDay", r.lastDay().orElseThrow());
    }

    private static Optional<Rig> findOwnRig(Farm farm, String name) {
        return farm.rigs().stream()
                .filter(r -> r.name().equals(name) && !r.isTender() && !r.isHired())
                .findFirst();
    }
}
