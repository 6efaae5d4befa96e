// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.YesNo;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.units.EarleafException;

/** The columns of fields.csv that say what makes leaf disease likelier. */
final class DiseaseColumns {
    private static final String NONE = "none";

    private final Column rating;
    private final Map<Disease, Column> ratings = new EnumMap<>(Disease.class);
    private final Column history;
    private final Column wetPlace;

    DiseaseColumns(Sheet sheet) {
        rating = sheet.optionalNumber("disease_rating", Measure.PLAIN, Ranges.DISEASE_RATING);
        for (Disease d : Disease.values()) {
            ratings.put(
                    d,
                    sheet.optionalNumber(d.word().replace(' ', '_') + "_rating", Measure.PLAIN, Ranges.DISEASE_RATING));
        }
        history = sheet.optionalText("disease_history");
        wetPlace = sheet.optionalText("wet_place");
    }

    DiseaseFacts read(Row row) {
        Map<Disease, Double> byDisease = new EnumMap<>(Disease.class);
        ratings.forEach((disease, column) -> {
            double value = row.number(column);
            if (!Double.isNaN(value)) {
                byDisease.put(disease, value);
            }
        });
        boolean wet = row.word(wetPlace, YesNo::find, YesNo.WORDS).orElse(false);
        return new DiseaseFacts(row.number(rating), byDisease, known(row), wet);
    }

    private Set<Disease> known(Row row) {
        Set<Disease> all = EnumSet.noneOf(Disease.class);
        String cell = row.text(history);
        for (String word : cell.equalsIgnoreCase(NONE) ? new String[0] : cell.split(";")) {
            if (word.isBlank()) {
                continue;
            }
            Optional<Disease> disease = Disease.find(word);
            if (disease.isEmpty()) {
                row.refuse(
                        history,
                        EarleafException.coded(
                                "disease.unknown",
                                history.base(),
                                word.strip(),
                                "diseases",
                                Stream.of(Disease.values()).map(Disease::word).toList()));
            }
            disease.ifPresent(all::add);
        }
        return all;
    }
}
