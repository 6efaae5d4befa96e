// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.Dimension;
import org.earleaf.units.Problem;

/**
 * What a record must hold before it may be filed.
 *
 * <p>Source: 7 CFR 110.3(a)(1) to (5); for commercial work 40 CFR 171.303. State rules may ask more.
 */
final class Completeness {
    private static final String RULE = "needed by 7 CFR 110.3(a)";

    private final FiledRecord r;
    private final List<Problem> problems = new ArrayList<>();

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
        need("field", r.field(), "the field's name");
        need("applicator", r.applicator().name(), "the name of who made the pass");
        need("filed by", r.filedBy(), "the name of who files it");
        if (r.area().number().signum() <= 0
                || Dimension.AREA.findInside(1, r.area().unit()).isEmpty()) {
            say("area", r.area().text(), "an area above 0 in " + Dimension.AREA.words(), "Give the ground treated.");
        }
        if (r.products().isEmpty()) {
            say("product", "none", "at least one product with its total amount", "Give what was put on.");
        }
        for (ProductUse p : r.products()) {
            need("product", p.name(), "the product's name");
            if (p.amount().number().signum() <= 0) {
                say(p.name() + ", amount", p.amount().text(), "an amount above 0", "Give the total of the product.");
            }
        }
        times();
        if (r.isCorrection()) {
            need("why", r.why(), "the reason for the correction");
        }
    }

    private void times() {
        if (r.start().isPresent() && !r.start().get().toLocalDate().equals(r.date())) {
            say("start", r.start().get().toString(), "a time on " + r.date(), "Give the day on which it began.");
        }
        if (r.start().isPresent()
                && r.end().isPresent()
                && r.end().get().isBefore(r.start().get())) {
            say(
                    "end",
                    r.end().get().toString(),
                    "a time after the start " + r.start().get(),
                    "Check both.");
        }
    }

    private void registered() {
        need(
                "location",
                r.location(),
                "where the field lies: county, range, township and section, or map reference, " + RULE);
        need("crop", r.crop(), "the crop or site treated, " + RULE);
        need(
                "certification",
                r.applicator().certification(),
                "the number of the certificate, " + RULE + "; write \"none\" where the product does not ask for one");
        Applicator a = r.applicator();
        if (a.kind() == Applicator.Kind.COMMERCIAL) {
            need("customer", a.customer(), "the customer's name (40 CFR 171.303)");
            need("customer address", a.customerAddress(), "the customer's address (40 CFR 171.303)");
            if (r.start().isEmpty()) {
                say("start", "nothing", "the time of application (40 CFR 171.303)", "Give it.");
            }
            if (!a.helper().isBlank()) {
                need(
                        "training record",
                        a.helperTraining(),
                        "where the helper's training record is kept (40 CFR 171.303)");
            }
        }
    }

    private void need(String what, String text, String expected) {
        if (text.isBlank()) {
            say(what, "nothing", expected, "Give it.");
        }
    }

    private void say(String what, String found, String expected, String todo) {
        problems.add(new Problem("record of " + r.field() + " on " + r.date() + ", " + what, found, expected, todo));
    }
}
