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
import org.jspecify.annotations.Nullable;

/** A correction as it stands in the form; it opens with what was filed. */
public record CorrectionForm(
        @Nullable List<String> amount,
        @Nullable String area,
        @Nullable String start,
        @Nullable String end,
        @Nullable String wind,
        @Nullable String temperature,
        @Nullable String note,
        @Nullable String location,
        @Nullable String licence,
        @Nullable String why,
        @Nullable String person) {
    static CorrectionForm of(FiledRecord r, ZoneId home, String person) {
        return new CorrectionForm(
                r.products().stream().map(p -> p.amount().text()).toList(),
                r.area().text(),
                clock(r.start(), home),
                clock(r.end(), home),
                r.extras().getOrDefault("wind", ""),
                r.extras().getOrDefault("temperature", ""),
                r.extras().getOrDefault("note", ""),
                r.location(),
                r.applicator().certification(),
                "",
                person);
    }

    private static String clock(Optional<ZonedDateTime> time, ZoneId home) {
        return time.map(t -> t.withZoneSameInstant(home).toLocalTime().toString())
                .orElse("");
    }

    RecordCorrection correction(FiledRecord wrong, Farm farm) {
        List<String> said = amount == null ? List.of() : amount;
        if (said.size() != wrong.products().size()) {
            throw new EarleafException(Problem.of(
                    "correction.one-for-each-of-the",
                    Said.text("amounts"),
                    Said.of("found.of-them", "said", said.size()),
                    "products",
                    wrong.products().size()));
        }
        List<Amount> amounts = new ArrayList<>();
        for (int k = 0; k < said.size(); k++) {
            amounts.add(RecordEntry.amount(
                            said.get(k),
                            tell(
                                    "page.correction.amount-of",
                                    "name",
                                    wrong.products().get(k).name()))
                    .orElse(wrong.products().get(k).amount()));
        }
        Map<String, String> extras = new TreeMap<>();
        extras.put("wind", ReadingForm.text(wind));
        extras.put("temperature", ReadingForm.text(temperature));
        extras.put("note", ReadingForm.text(note));
        return new RecordCorrection(
                wrong,
                amounts,
                RecordEntry.area(ReadingForm.text(area), "area", farm, wrong).orElse(wrong.area()),
                new Hours(
                        RecordEntry.time(ReadingForm.text(start), "start"),
                        RecordEntry.time(ReadingForm.text(end), "end")),
                ReadingForm.text(location),
                ReadingForm.text(licence),
                extras,
                ReadingForm.text(why),
                ReadingForm.text(person));
    }
}
