// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.ibm.icu.text.ListFormatter;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/**
 * What a message gets for an argument. A value {@code rate} is there as {@code rate}, and in further forms as
 * {@code rate_FORM}: number, unit, value (for plurals), fine, fine_number, said
 * ("$47 an acre"), said_fine of a quantity; the forms of {@link DateForms} of
 * a date; or, comma, count of a list; name of a constant; spelled of a count ("three"), opening ("Three") where it is the
 * first word of a sentence.
 */
final class Arguments {
    private static final int TEN = 10;
    private static final Set<String> FORMS = Set.of("", "number", "value", "fine", "fine_number", "said", "said_fine");

    private final Words words;

    Arguments(Words words) {
        this.words = words;
    }

    /** The value in a form ("" the usual one), or empty when it has no such form. */
    Optional<Object> find(Object value, String form) {
        if (value instanceof Measured measured) {
            return quantity(measured, form);
        }
        if (value instanceof List<?> list) {
            return list(list, form);
        }
        if (value instanceof LocalDate date) {
            return words.dates().find(date, form).map(Object.class::cast);
        }
        if (value instanceof LocalDateTime time) {
            return "time".equals(form)
                    ? Optional.of(words.dates().clock(time.toLocalTime()))
                    : words.dates().find(time, form).map(Object.class::cast);
        }
        if (value instanceof Integer count && (form.equals("spelled") || form.equals("opening"))) {
            return Optional.of(words.numbers().spelled(count, form.equals("opening")));
        }
        if (value instanceof Enum<?> constant && form.equals("name")) {
            return Optional.of(constant.name());
        }
        if (value instanceof Enum<?> constant && !form.isEmpty()) {
            return Optional.of(words.made(key(constant) + "." + form, Map.of()));
        }
        return form.isEmpty() ? Optional.of(plain(value)) : Optional.empty();
    }

    private Object plain(Object value) {
        if (value instanceof Number) {
            return value;
        }
        if (value instanceof Said said) {
            return words.made(said);
        }
        if (value instanceof Enum<?> constant) {
            return words.made(key(constant), Map.of());
        }
        if (value instanceof LocalTime time) {
            return words.dates().clock(time);
        }
        if (value instanceof Quantity entered) {
            String digits =
                    BigDecimal.valueOf(entered.entered()).stripTrailingZeros().toPlainString();
            return Marks.dropped(digits) + " " + Marks.in("u", Marks.dropped(entered.unit()));
        }
        return Marks.dropped(words.rig(String.valueOf(value)));
    }

    /** "Placement.BROADCAST", "Pass.State.MADE". */
    static String key(Enum<?> constant) {
        Class<?> type = constant.getDeclaringClass();
        String name = type.getSimpleName();
        for (Class<?> outer = type.getEnclosingClass(); outer != null; outer = outer.getEnclosingClass()) {
            name = outer.getSimpleName() + "." + name;
        }
        return name + "." + constant.name();
    }

    private Optional<Object> list(List<?> list, String form) {
        if (form.equals("count")) {
            return Optional.of(list.size());
        }
        List<String> told = list.stream()
                .map(item -> find(item, "").orElseThrow())
                .map(item -> item instanceof Number n ? words.number(n.doubleValue()) : String.valueOf(item))
                .toList();
        return switch (form) {
            case "" -> Optional.of(ListFormatter.getInstance(words.locale()).format(told));
            case "or" ->
                Optional.of(ListFormatter.getInstance(words.locale(), ListFormatter.Type.OR, ListFormatter.Width.WIDE)
                        .format(told));
            case "comma" -> Optional.of(String.join(", ", told));
            default -> Optional.empty();
        };
    }

    private Optional<Object> quantity(Measured q, String form) {
        ShownUnit shown = ShownUnit.of(q.measure(), words.isMetric());
        boolean fine = form.contains("fine");
        if (form.equals("unit")) {
            return Optional.of(words.made("unit." + shown.word(), Map.of()));
        }
        if (!FORMS.contains(form)) {
            return Optional.empty();
        }
        if (!Numbers.isKnown(q.value())) {
            return Optional.of(words.say("amount.unknown"));
        }
        BigDecimal number =
                Numbers.rounded(shown.value().applyAsDouble(q.value()), fine ? shown.fine() : shown.decimals());
        if (form.equals("value")) {
            return Optional.of(number);
        }
        if (form.startsWith("said")) {
            return Optional.of(said(shown, number));
        }
        if (q.measure() == Measure.CHANCE) {
            String tenths = tenths(q.value(), number);
            return Optional.of(
                    form.endsWith("number") ? tenths : words.made(Said.of("amount.chance", "tenths", tenths)));
        }
        return Optional.of(form.endsWith("number") ? words.numbers().text(number) : amount(q.measure(), shown, number));
    }

    /** As it is said: "$47 an acre", "40 lb an acre". */
    private String said(ShownUnit shown, BigDecimal number) {
        Said each = Said.of("said." + shown.word());
        return shown.word().startsWith("usd")
                ? words.made(Said.of(
                        "amount.money-said",
                        "sign",
                        Numbers.sign(number),
                        "digits",
                        words.numbers().digits(number),
                        "each",
                        each))
                : words.made(Said.of("amount.said", "number", words.numbers().text(number), "each", each));
    }

    /** A chance that is not nought or one never reads so. */
    private String tenths(double share, BigDecimal tenths) {
        if (tenths.signum() == 0 && share > 0) {
            return words.say("amount.chance.least");
        }
        return tenths.intValue() == TEN && share < 1
                ? words.say("amount.chance.most")
                : words.numbers().text(tenths);
    }

    String amount(Measure measure, ShownUnit shown, BigDecimal number) {
        return switch (measure) {
            case MONEY, MONEY_RATE, NITROGEN_PRICE, CORN_PRICE ->
                words.made(Said.of(
                        "amount.money",
                        "sign",
                        Numbers.sign(number),
                        "digits",
                        words.numbers().digits(number),
                        "each",
                        Said.of("each." + shown.word())));
            case SHARE ->
                words.made(Said.of("amount.share", "number", words.numbers().text(number)));
            case DAYS -> words.made(Said.of("amount.days", "n", number));
            case HOURS -> words.made(Said.of("amount.hours", "n", number));
            default ->
                words.made(Said.of(
                        "amount.usual",
                        "number",
                        words.numbers().text(number),
                        "unit",
                        Said.of("unit." + shown.word())));
        };
    }
}
