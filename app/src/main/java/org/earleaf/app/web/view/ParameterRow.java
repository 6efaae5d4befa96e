// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.math.BigDecimal;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Words;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.Support;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.Assumed;

/**
 * A number that is assumed, as a row of a table.
 *
 * @param source with its mark: filled when published, half-filled when recalled or derived, open else
 * @param spread between the members of an ensemble
 */
public record ParameterRow(
        String id, String meaning, String unit, String usual, String range, Markup source, String spread) {

    static ParameterRow of(Parameter p) {
        String word = Words.here().say(p.tag());
        Markup source =
                switch (p.tag()) {
                    case PUBLISHED -> Marks.done(word);
                    case MEMORY -> Marks.soon(word);
                    default -> Marks.open(word);
                };
        return row(p, p, source, spread(p));
    }

    static ParameterRow of(ProtectionAssumption a) {
        Support support = a.support();
        String word = Words.here().say(support);
        Markup source =
                switch (support) {
                    case PUBLISHED -> Marks.done(word);
                    case DERIVED, MEMORY -> Marks.soon(word);
                    default -> Marks.open(word);
                };
        return row(a, a, source, "");
    }

    private static ParameterRow row(Enum<?> name, Assumed number, Markup source, String spread) {
        return new ParameterRow(
                name.name(),
                Words.here().say(name),
                unit(number.unit()),
                number(number.usual()),
                tell("page.parameter-row.to", "low", number(number.low()), "high", number(number.high())),
                source,
                spread);
    }

    /** What is a word and no sign. */
    private static String unit(String unit) {
        return switch (unit) {
            case "-" -> "";
            case "share" -> tell("page.parameter-row.share");
            case "on/off" -> tell("page.parameter-row.on-off");
            case "plants" -> tell("page.parameter-row.plants");
            case "a plant" -> tell("page.parameter-row.a-plant");
            default -> unit;
        };
    }

    private static String spread(Parameter p) {
        if (p.cv() > 0) {
            return tell("page.parameter-row.of-its-value", "cv", number(p.cv()));
        }
        return p.sd() > 0 ? number(p.sd()) + " " + unit(p.unit()) : tell("page.parameter-row.none");
    }

    private static String number(double value) {
        String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return plain.startsWith("-") ? "\u2212" + plain.substring(1) : plain;
    }
}
