// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.entry.RecordEntry;
import org.earleaf.farm.Farm;
import org.earleaf.record.Amount;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.Hours;
import org.earleaf.record.RecordCorrection;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.springframework.util.MultiValueMap;

/** A correction as it stands in the form; it opens with what was filed. */
public record CorrectionForm(List<String> amounts, Boxes boxes) {
    public CorrectionForm {
        amounts = List.copyOf(amounts);
    }

    static CorrectionForm of(MultiValueMap<String, String> sent) {
        return new CorrectionForm(sent.getOrDefault("amount", List.of()), new Boxes(sent.toSingleValueMap()));
    }

    static CorrectionForm of(FiledRecord r, ZoneId home, String person) {
        Boxes boxes = new Boxes(Map.of(
                "area", r.area().text(),
                "start", clock(r.start(), home),
                "end", clock(r.end(), home),
                "wind", r.extras().getOrDefault("wind", ""),
                "temperature", r.extras().getOrDefault("temperature", ""),
                "note", r.extras().getOrDefault("note", ""),
                "location", r.location(),
                "licence", r.applicator().certification(),
                "person", person));
        return new CorrectionForm(
                r.products().stream().map(p -> p.amount().text()).toList(), boxes);
    }

    public String box(String name) {
        return boxes.box(name);
    }

    private static String clock(Optional<ZonedDateTime> time, ZoneId home) {
        return time.map(t -> t.withZoneSameInstant(home).toLocalTime().toString())
                .orElse("");
    }

    RecordCorrection correction(FiledRecord wrong, Farm farm) {
        if (amounts.size() != wrong.products().size()) {
            throw new EarleafException(Problem.of(
                    "correction.one-for-each-of-the",
                    Said.text("amounts"),
                    Said.of("found.of-them", "said", amounts.size()),
                    "products",
                    wrong.products().size()));
        }
        List<Amount> right = new ArrayList<>();
        for (int k = 0; k < amounts.size(); k++) {
            right.add(RecordEntry.amount(
                            amounts.get(k),
                            tell(
                                    "page.correction.amount-of",
                                    "name",
                                    wrong.products().get(k).name()))
                    .orElse(wrong.products().get(k).amount()));
        }
        Map<String, String> extras = new TreeMap<>();
        extras.put("wind", boxes.said("wind"));
        extras.put("temperature", boxes.said("temperature"));
        extras.put("note", boxes.said("note"));
        return new RecordCorrection(
                wrong,
                right,
                RecordEntry.area(boxes.said("area"), "area", farm, wrong).orElse(wrong.area()),
                new Hours(RecordEntry.time(boxes.said("start"), "start"), RecordEntry.time(boxes.said("end"), "end")),
                boxes.said("location"),
                boxes.said("licence"),
                extras,
                boxes.said("why"),
                boxes.said("person"));
    }
}
