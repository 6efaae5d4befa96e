// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace.Cell;

/** Every field of the farm, the one that runs short first on top. */
public record FieldsView(String date, Markup headline, List<Row> rows) {
    public record Row(
            String name,
            String place,
            Markup ground,
            String stage,
            Markup height,
            String nitrate,
            Markup shortOn,
            Markup yield) {}

    public static FieldsView of(FarmDay day, Format format) {
        Places places = Places.of(day.farm());
        List<Outlook> corn = day.farm().zones().stream()
                .filter(Zone::isCorn)
                .map(day::outlook)
                .sorted(Comparator.comparing((Outlook o) -> o.nShort().p50().orElse(LocalDate.MAX)))
                .toList();
        List<Row> rows =
                new ArrayList<>(corn.stream().map(o -> row(o, places, format)).toList());
        day.farm().zones().stream().filter(z -> !z.isCorn()).forEach(z -> rows.add(notModelled(z, places, format)));
        List<Outlook> growing = corn.stream().filter(o -> !Phrases.isRipe(o)).toList();
        Markup headline = growing.isEmpty() && !corn.isEmpty()
                ? new Say().sentence(tell("page.fields.the-corn-is-ripe")).done()
                : headline(growing, day.on());
        return new FieldsView(Dates.weekday(day.on()), headline, List.copyOf(rows));
    }

    private static Markup headline(List<Outlook> corn, LocalDate on) {
        if (corn.isEmpty()) {
            return new Say()
                    .sentence(tell("page.fields.no-corn-stands-on-this"))
                    .done();
        }
        long likely = corn.stream().filter(o -> o.nShort().p50().isPresent()).count();
        Optional<LocalDate> first = corn.get(0).nShort().p50();
        if (first.isEmpty()) {
            return new Say()
                    .sentence(
                            corn.size() == 1
                                    ? tell("page.fields.the-field-is-not-likely")
                                    : tell("page.fields.none-of-the-fields-is", "n", corn.size()))
                    .done();
        }
        String name = corn.get(0).zone().label();
        String when = first.get().isAfter(on)
                ? tell("page.fields.first-about", "name", name, "longDay", Dates.weekday(first.get()))
                : tell("page.fields.has-been-short-since", "name", name, "longDay", Dates.weekday(first.get()));
        String which = likely == corn.size()
                ? tell("page.fields.all-likely", "n", corn.size())
                : tell("page.fields.some-likely", "likely", (int) likely, "n", corn.size());
        return new Say().sentence(which).sentence(when).done();
    }

    private static Row row(Outlook o, Places places, Format format) {
        Zone z = o.zone();
        return new Row(
                z.label(),
                places.of(z),
                ground(z, format),
                format.say(o.stage()),
                o.leafCollars() > 0 ? format.height(o.height_cm()) : Markup.NONE,
                format.nitrogen(SoilSums.of(o.trace(), o.today(), Cell.NITRATE)),
                Phrases.shortDate(o.nShort()),
                new Say()
                        .text(format.yield(o.yield_kgHa().p50()))
                        .range(tell(
                                "page.fields.to",
                                "yield",
                                format.yield(o.yield_kgHa().p10()),
                                "yield2",
                                format.yield(o.yield_kgHa().p90())))
                        .done());
    }

    private static Row notModelled(Zone z, Places places, Format format) {
        return new Row(
                z.label(),
                places.of(z),
                ground(z, format),
                tell("page.fields.not-modelled", "crop", Phrases.capital(z.crop())),
                Markup.NONE,
                "",
                Markup.NONE,
                Markup.NONE);
    }

    private static Markup ground(Zone z, Format format) {
        return new Say()
                .text(format.area(z.area_ha()))
                .unit(format.areaUnit())
                .text(", " + format.say(z.soil().texture()))
                .done();
    }
}
