// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.earleaf.field.FieldPart;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The account of one pass made. It is never edited: a mistake is corrected by a further record that points to the old.
 *
 * <p>Source: 7 CFR 110.3(a) for the five things a record of a restricted-use pesticide must hold; 40 CFR 171.303 for
 * what commercial applicators add. Earleaf asks the same for every product with a registration number, since states ask
 * more than the federal rule; plain fertiliser needs product, amount, place, area, day and name only.
 *
 * @param passId the pass that was made
 * @param extras anything more ("wind" is "6 mph from SW"); keys are lower-case words
 */
public record FiledRecord(
        Filing filing,
        String passId,
        Treated treated,
        Work work,
        List<ProductUse> products,
        Applicator applicator,
        SortedMap<String, String> extras) {
    /**
     * How it came among the records.
     *
     * @param id made by the caller, unique
     * @param corrects id of the record that this one corrects, empty for a first account
     * @param why why it was corrected, empty for a first account
     * @param filed instant of filing
     * @param filedBy who filed it
     */
    public record Filing(String id, String corrects, String why, Instant filed, String filedBy) {
        /** Of a first account. */
        public static Filing first(String id, Instant filed, String filedBy) {
            return new Filing(id, "", "", filed, filedBy);
        }
    }

    /**
     * What was treated.
     *
     * @param location where the field lies (map, section, county ... as the rule allows); may be empty for fertiliser
     * @param crop crop, commodity or site treated
     * @param area ground treated
     */
    public record Treated(FieldPart part, String location, String crop, Amount area) {}

    /**
     * How and when it was made.
     *
     * @param placement word of the placement
     * @param date the field's local date
     * @param start first drop, where known
     * @param end last drop, where known
     */
    public record Work(
            String placement, String rig, LocalDate date, Optional<ZonedDateTime> start, Optional<ZonedDateTime> end) {}

    public FiledRecord {
        products = List.copyOf(products);
        extras = Collections.unmodifiableSortedMap(new TreeMap<>(extras));
        for (String key : extras.keySet()) {
            if (!key.matches("[a-z][a-z ]*")) {
                throw new EarleafException(
                        Problem.of("record.extra-name", Said.of("where.record-extra"), Said.text(key)));
            }
        }
    }

    public String id() {
        return filing.id();
    }

    public String corrects() {
        return filing.corrects();
    }

    public String why() {
        return filing.why();
    }

    public Instant filed() {
        return filing.filed();
    }

    public String filedBy() {
        return filing.filedBy();
    }

    public String field() {
        return treated.part().field();
    }

    public String zone() {
        return treated.part().zone();
    }

    public String location() {
        return treated.location();
    }

    public String crop() {
        return treated.crop();
    }

    public Amount area() {
        return treated.area();
    }

    public String placement() {
        return work.placement();
    }

    public String rig() {
        return work.rig();
    }

    public LocalDate date() {
        return work.date();
    }

    public Optional<ZonedDateTime> start() {
        return work.start();
    }

    public Optional<ZonedDateTime> end() {
        return work.end();
    }

    public boolean isCorrection() {
        return !corrects().isEmpty();
    }

    /** Whether any product carries a registration number. */
    public boolean isRegistered() {
        return products.stream().anyMatch(ProductUse::isRegistered);
    }

    /** The longest restricted-entry interval of the mix [h]; empty when no product has one. */
    public OptionalInt reentry_h() {
        return products.stream()
                .map(ProductUse::reentry_h)
                .filter(OptionalInt::isPresent)
                .mapToInt(OptionalInt::getAsInt)
                .max();
    }

    /** What is still missing or impossible; it may be filed when this is empty. */
    public List<Problem> problems() {
        return Completeness.problems(this);
    }

    /** The text that is hashed; see {@link CanonicalText}. */
    public String canonical() {
        return CanonicalText.write(this);
    }

    public static FiledRecord parse(String canonical) {
        return CanonicalText.read(canonical);
    }
}
