// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.math.BigDecimal;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Markup;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.Support;
import org.earleaf.season.parameter.Parameter;

/**
 * A number that is assumed, as a row of a table.
 *
 * @param source with its mark: filled when published, half-filled when recalled or derived, open else
 * @param spread between the members of an ensemble
 */
public record ParameterRow(
        String id, String meaning, String unit, String usual, String range, Markup source, String spread) {

    /** No amounts stand in these texts. */
    private static final org.earleaf.app.words.Words SPOKEN = org.earleaf.app.words.Words.US;

    static ParameterRow of(Parameter p) {
        String word = SPOKEN.say(p.tag());
        Markup source =
                switch (p.tag()) {
                    case PUBLISHED -> Marks.done(word);
                    case MEMORY -> Marks.soon(word);
                    default -> Marks.open(word);
                };
        return new ParameterRow(
                p.name(),
                SPOKEN.say(p),
                unit(p.unit()),
                number(p.usual()),
                tell("page.parameter-row.to", "low", number(p.low()), "high", number(p.high())),
                source,
                spread(p));
    }

    static ParameterRow of(ProtectionAssumption a) {
        Support support = a.support();
        String word = SPOKEN.say(support);
        Markup source =
                switch (support) {
                    case PUBLISHED -> Marks.done(word);
                    case DERIVED, MEMORY -> Marks.soon(word);
                    default -> Marks.open(word);
                };
        return new ParameterRow(
                a.name(),
                SPOKEN.say(a),
                unit(a.unit()),
                number(a.usual()),
                tell("page.parameter-row.to", "low", number(a.low()), "high", number(a.high())),
                source,
                "");
    }

    private static String unit(String unit) {
        return unit.equals("-") ? "" : unit;
    }

    private static String spread(Parameter p) {
        if (p.cv() > 0) {
            return tell("page.parameter-row.of-its-value", "cv", number(p.cv()));
        }
        return p.sd() > 0 ? number(p.sd()) + " " + p.unit() : "none";
    }

    private static String number(double value) {
        String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return plain.startsWith("-") ? "\u2212" + plain.substring(1) : plain;
    }
}
