// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.ibm.icu.text.MessageFormat;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.farm.HiredRig;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Makes sentences of codes, values and quantities, in one language and one system of units. */
public final class Words {
    /** Set in tests: a key or argument that is missing stops the work instead of showing its code. */
    private static final boolean STRICT = "strict".equals(System.getProperty("earleaf.words"));

    /** Known to every message: the system of units, for a fixed quantity that is written for both. */
    static final String SYSTEM = "system";

    private static final Logger LOG = LoggerFactory.getLogger(Words.class);
    private static final Catalogue AMERICAN = Catalogue.of(Locale.US);

    public static final Words US = new Words(AMERICAN, false);
    public static final Words METRIC = new Words(AMERICAN, true);

    /** What the program speaks in either units; another language only in tests so far. */
    private static volatile List<Words> spoken = List.of(US, METRIC);
    /** Units of the request or command that this thread serves. */
    private static final ThreadLocal<Boolean> METRIC_HERE = ThreadLocal.withInitial(() -> false);

    private final Catalogue catalogue;
    private final boolean metric;
    private final DateForms dates;
    private final Numbers numbers;
    private final Arguments arguments = new Arguments(this);

    public Words(Catalogue catalogue, boolean metric) {
        this.catalogue = catalogue;
        this.metric = metric;
        this.dates = new DateForms(catalogue.locale());
        this.numbers = new Numbers(catalogue.locale());
    }

    public static Words in(boolean metric) {
        return spoken.get(metric ? 1 : 0);
    }

    /** Those of the request or command that this thread serves. */
    public static Words here() {
        return in(METRIC_HERE.get());
    }

    /** A request or command begins, in these units. */
    public static void begin(boolean metric) {
        METRIC_HERE.set(metric);
    }

    /** {@link #say} in the words of this request or command. */
    public static String tell(String key, Object... namesAndValues) {
        return here().say(key, namesAndValues);
    }

    /** The same for templates, where a method must have one form alone. */
    public String text(String key, Object... namesAndValues) {
        return say(key, namesAndValues);
    }

    /** From here on the whole program speaks so. */
    static void speak(Catalogue language) {
        spoken = List.of(new Words(language, false), new Words(language, true));
    }

    boolean has(String key) {
        return catalogue.has(key);
    }

    Set<String> keys() {
        return catalogue.keys();
    }

    public boolean isMetric() {
        return metric;
    }

    public Locale locale() {
        return catalogue.locale();
    }

    /** A text of the catalogue with its values: {@code say("morning.wait", "cost", Measure.MONEY_RATE.of(3))}. */
    public String say(String key, Object... namesAndValues) {
        return say(Said.of(key, namesAndValues));
    }

    public String say(Said said) {
        return Marks.dropped(made(said));
    }

    /** The word of a constant, such as a placement. */
    public String say(Enum<?> constant) {
        return Marks.dropped(made(Arguments.key(constant), Map.of()));
    }

    /** A further text of a constant: {@code Figure.WORTH.says}. */
    public String say(Enum<?> constant, String part) {
        return Marks.dropped(made(Arguments.key(constant) + "." + part, Map.of()));
    }

    /** A rig as it is told: one that can be hired by its word, for its name is a token of files; any other as entered. */
    public String rig(String name) {
        return HiredRig.find(name).map(this::say).orElse(name);
    }

    public String say(Measured quantity) {
        return form(quantity, "");
    }

    /** One form of a value, such as "number" of a quantity or "weekday" of a date; see {@link Arguments}. */
    public String form(Object value, String form) {
        Object shown = arguments
                .find(value, form)
                .orElseThrow(() -> new IllegalStateException("no form \"" + form + "\" of " + value));
        return Marks.dropped(String.valueOf(shown));
    }

    /** Safe HTML, ranks of the page as tags. */
    public String html(Said said) {
        return Marks.html(made(said));
    }

    /** The same for templates, where a method must have one form alone. */
    public String markup(String key, Object... namesAndValues) {
        return html(Said.of(key, namesAndValues));
    }

    public ToldProblem told(Problem problem) {
        String where = say(problem.place());
        String found = say(problem.seen());
        String expected = say(problem.right());
        String todo = say(problem.next());
        String sentence = say(
                "problem.sentence",
                "where",
                Said.text(where),
                "found",
                Said.text(found),
                "expected",
                Said.text(expected),
                "todo",
                Said.text(todo));
        String what = problem.rule().values().get("what") instanceof Said about ? about.code() : "";
        return new ToldProblem(problem.code(), what, where, found, expected, todo, sentence);
    }

    /** "July 1". */
    public String day(LocalDate date) {
        return form(date, "");
    }

    /** "6:30 am". */
    public String clock(LocalTime time) {
        return dates.clock(time);
    }

    /** A number to so many decimals, or the word for a value that is not known. */
    public String number(double value, int decimals) {
        return Numbers.isKnown(value) ? numbers.text(Numbers.rounded(value, decimals)) : say("amount.unknown");
    }

    /** A quantity's number in the unit in which it is shown. */
    public double value(Measured quantity) {
        return ShownUnit.of(quantity.measure(), metric).value().applyAsDouble(quantity.value());
    }

    /** The same to so many decimals, without its unit. */
    public String number(Measured quantity, int decimals) {
        return number(value(quantity), decimals);
    }

    /** The same with its unit or sign of money. */
    public String amount(Measured quantity, int decimals) {
        if (!Numbers.isKnown(quantity.value())) {
            return say("amount.unknown");
        }
        return Marks.dropped(arguments.amount(
                quantity.measure(),
                ShownUnit.of(quantity.measure(), metric),
                Numbers.rounded(value(quantity), decimals)));
    }

    /** The word of the unit in which a quantity is shown. */
    public String unit(Measure measure) {
        return say("unit." + ShownUnit.of(measure, metric).word());
    }

    String number(double value) {
        return com.ibm.icu.text.NumberFormat.getInstance(locale()).format(value);
    }

    DateForms dates() {
        return dates;
    }

    Numbers numbers() {
        return numbers;
    }

    /** With the marks of the page still in it. */
    String made(Said said) {
        return made(said.code(), said.values());
    }

    String made(String key, Map<String, Object> values) {
        Optional<MessageFormat> found = catalogue.find(key);
        if (found.isEmpty()) {
            return missing("the catalogue has no " + key, key + (values.isEmpty() ? "" : " " + values));
        }
        MessageFormat message = found.get();
        Map<String, Object> told = new HashMap<>();
        for (String name : catalogue.names(key)) {
            if (name.equals(SYSTEM)) {
                told.put(name, metric ? "metric" : "us");
                continue;
            }
            int form = name.indexOf('_');
            Object value = values.get(form < 0 ? name : name.substring(0, form));
            Optional<Object> shown =
                    value == null ? Optional.empty() : arguments.find(value, form < 0 ? "" : name.substring(form + 1));
            told.put(name, shown.orElseGet(() -> missing(key + " asks for {" + name + "}, which is not given", name)));
        }
        return message.format(told);
    }

    private static String missing(String fault, String shown) {
        if (STRICT) {
            throw new IllegalStateException(fault);
        }
        LOG.error("words: {}", fault);
        return shown;
    }
}
