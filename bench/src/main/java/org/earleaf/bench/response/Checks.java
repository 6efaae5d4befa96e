// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Values held against the reference run: what was asked, what came, what was due, how far it may stray. */
public final class Checks {
    /** One value; {@code NaN} never passes. */
    public record Check(String what, double value, double due, double tolerance) {
        public boolean isWithin() {
            return Math.abs(value - due) <= tolerance + 1e-9;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s: %.3g, due %.3g, difference %+.2g, allowed %.2g",
                    what,
                    value,
                    due,
                    value - due,
                    tolerance);
        }
    }

    private final List<Check> all = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();
    private String row = "";

    /** Begins a row of a table; the values that follow are printed with it. */
    void row(String name) {
        row = name;
        line.setLength(0);
        line.append(String.format(Locale.ROOT, "%-34s", name));
    }

    /** A value of the row with the digits of the print, the value due in brackets. */
    void add(String column, double value, double due, double tolerance, int digits) {
        Check check = new Check(row + ", " + column, value, due, tolerance);
        all.add(check);
        String form = " %s %." + digits + "f (%." + digits + "f)%s";
        line.append(String.format(Locale.ROOT, form, column, value, due, check.isWithin() ? "" : " <-- OUTSIDE"));
    }

    String line() {
        return line.toString();
    }

    public List<Check> all() {
        return List.copyOf(all);
    }

    public List<Check> outside() {
        return all.stream().filter(c -> !c.isWithin()).toList();
    }
}
