// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.Dimension;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What a record must hold before it may be filed.
 *
 * <p>Source: 7 CFR 110.3(a)(1) to (5); for commercial work 40 CFR 171.303. State rules may ask more.
 */
final class Completeness {
    private final FiledRecord r;
    private final List<Problem> problems = new ArrayList<>();

    /** What a record holds. */
    enum Part {
        FIELD,
        APPLICATOR,
        FILED_BY,
        AREA,
        PRODUCT,
        AMOUNT,
        START,
        END,
        WHY,
        LOCATION,
        CROP,
        CERTIFICATION,
        CUSTOMER,
        CUSTOMER_ADDRESS,
        TRAINING_RECORD
    }

    private Completeness(FiledRecord r) {
        this.r = r;
    }

    static List<Problem> problems(FiledRecord record) {
        Completeness c = new Completeness(record);
        c.always();
        if (record.isRegistered()) {
            c.registered();
        }
        return List.copyOf(c.problems);
    }

    private void always() {
        need(r.field(), Problem.of("record.no-field", at(Part.FIELD), nothing()));
        need(r.applicator().name(), Problem.of("record.no-applicator", at(Part.APPLICATOR), nothing()));
        need(r.filedBy(), Problem.of("record.no-filer", at(Part.FILED_BY), nothing()));
        if (r.area().number().signum() <= 0
                || Dimension.AREA.findInside(1, r.area().unit()).isEmpty()) {
            Said found = Said.text(r.area().text());
            problems.add(Problem.of("record.no-area", at(Part.AREA), found, "units", Dimension.AREA.words()));
        }
        if (r.products().isEmpty()) {
            problems.add(Problem.of("record.no-product", at(Part.PRODUCT), nothing()));
        }
        for (ProductUse p : r.products()) {
            need(p.name(), Problem.of("record.product-unnamed", at(Part.PRODUCT), nothing()));
            if (p.amount().number().signum() <= 0) {
                Said found = Said.of("found.amount-of", "amount", p.amount().text(), "product", p.name());
                problems.add(Problem.of("record.no-amount", at(Part.AMOUNT), found));
            }
        }
        times();
        if (r.isCorrection()) {
            need(r.why(), Problem.of("record.no-reason", at(Part.WHY), nothing()));
        }
    }

    private void times() {
        if (r.start().isEmpty()) {
            return;
        }
        LocalDateTime start = r.start().get().toLocalDateTime();
        if (!start.toLocalDate().equals(r.date())) {
            problems.add(Problem.of("record.start-other-day", at(Part.START), time(start), "day", r.date()));
        }
        if (r.end().isPresent() && r.end().get().isBefore(r.start().get())) {
            Said found = time(r.end().get().toLocalDateTime());
            problems.add(Problem.of("record.end-before-start", at(Part.END), found, "start", start));
        }
    }

    private void registered() {
        need(r.location(), Problem.of("record.no-location", at(Part.LOCATION), nothing()));
        need(r.crop(), Problem.of("record.no-crop", at(Part.CROP), nothing()));
        Applicator a = r.applicator();
        need(a.certification(), Problem.of("record.no-certification", at(Part.CERTIFICATION), nothing()));
        if (a.kind() == Applicator.Kind.COMMERCIAL) {
            commercial(a);
        }
    }

    private void commercial(Applicator a) {
        need(a.customer(), Problem.of("record.no-customer", at(Part.CUSTOMER), nothing()));
        need(a.customerAddress(), Problem.of("record.no-customer-address", at(Part.CUSTOMER_ADDRESS), nothing()));
        if (r.start().isEmpty()) {
            problems.add(Problem.of("record.no-start", at(Part.START), nothing()));
        }
        if (!a.helper().isBlank()) {
            need(a.helperTraining(), Problem.of("record.no-training", at(Part.TRAINING_RECORD), nothing()));
        }
    }

    private void need(String text, Problem missing) {
        if (text.isBlank()) {
            problems.add(missing);
        }
    }

    private Said at(Part part) {
        return Said.of("where.record-part", "field", r.field(), "day", r.date(), "part", part);
    }

    private static Said nothing() {
        return Said.of("found.nothing");
    }

    private static Said time(LocalDateTime time) {
        return Said.of("found.time", "time", time);
    }
}
