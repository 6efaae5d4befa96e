// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.web.Everywhere.Text;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/**
 * Pages, prints and commands tell quantities in the units that were chosen, all of them: who works in hectares finds no
 * acre, and the reverse. What a person entered stands as entered, in a label, a record or a reading.
 */
@ResourceLock(Everywhere.LOCK)
class UnitsEverywhereTest {
    private static final Pattern US =
            Pattern.compile("(?<![\\p{L}\\d_-])(?:gal|ac|lb|lbs|ft|mph|psi|°F|fl oz|oz|qt|gpm|GPM|GPA"
                    + "|acres?|inch|inches|feet|foot|pounds?|gallons?|ounces?|quarts?|miles?|Fahrenheit)(?![\\p{L}_-])"
                    + "|\\d ?(?:mi|pt|in)(?![\\p{L}_])(?! (?:\\d|eight|nine|seven|six|five|four|three|two|all|each|every|the|a|an|any|one|this|ten|[A-Z]))"
                    + "|^ *(?:in|mi)$");
    private static final Pattern METRIC =
            Pattern.compile("(?<![\\p{L}\\d_-])(?:kg|ha|mm|cm|km|kPa|MPa|°C|m/s|km/h|mL|ml|L/ha|L/min|kg/ha|t/ha"
                    + "|hectares?|lit(?:er|re)s?|met(?:re|ers)|centimet\\w+|kilogram\\w*|Celsius)(?![\\p{L}_-])"
                    + "|\\d ?(?:L|m|bar|g)(?![\\p{L}_/²³-])");

    /** What is told alike in both, and why. */
    private static final Pattern OF_BOTH = Pattern.compile(String.join(
            "|",
            // A limit and what is held against it stand in the label's own unit.
            "[^;:]*\\(label [^)]*\\)",
            // The law's own figures stand beside ours.
            "\\d+ (?:ft|in) \\([\\d.]+ c?m\\)",
            // A jar holds so many mL, and goes by syringe and kitchen scale.
            "(?:Jar\\. )?(?:- )?In \\d+ mL: .*",
            // Cards are counted by the square centimeter everywhere, and scanned by dots an inch.
            "[\\d.]+ ?(?:uL)?/cm2|[\\d.]+ cm2|uL/cm2|dots (?:per|an) inch",
            // Units among which one may choose.
            "mg/kg, lb N/ac, kg N/ha"));

    private static Everywhere everywhere;

    @BeforeAll
    static void open() throws IOException {
        everywhere = Everywhere.there();
    }

    @Test
    void every_page_and_print_that_the_server_knows_is_read() {
        assertThat(everywhere.unread())
                .as("routes without an address that answers")
                .isEmpty();
    }

    @Test
    void in_metric_no_us_unit_is_told() throws IOException {
        assertThat(found(US, true)).isEmpty();
    }

    @Test
    void in_us_units_no_metric_one_is_told() throws IOException {
        assertThat(found(METRIC, false)).isEmpty();
    }

    private static List<String> found(Pattern units, boolean metric) throws IOException {
        List<Text> all = new ArrayList<>(everywhere.pages(metric, UnitsEverywhereTest::unquoted));
        all.addAll(everywhere.commands(metric));
        List<String> entered = everywhere.entered().stream()
                .filter(e -> e.chars().anyMatch(Character::isDigit))
                .toList();
        List<String> found = new ArrayList<>();
        Map<String, List<String>> known = new HashMap<>();
        for (Text text : all) {
            Set<String> here = new TreeSet<>();
            // Lines of a print break anywhere.
            String seen = text.isPaper() ? text.seen().replaceAll("\\s+", " ") : text.seen();
            // Most lines stand on many pages.
            seen.lines().forEach(line -> here.addAll(known.computeIfAbsent(line, l -> told(l, entered, units))));
            here.forEach(h -> found.add(text.at() + ": " + h));
        }
        return found;
    }

    /** Where a line tells a unit, apart from what was entered. */
    private static List<String> told(String line, List<String> entered, Pattern units) {
        String told = line;
        for (String own : entered) {
            told = told.replace(own, "…");
        }
        told = OF_BOTH.matcher(told).replaceAll("…");
        List<String> here = new ArrayList<>();
        Matcher m = units.matcher(told);
        while (m.find()) {
            here.add(told.substring(Math.max(0, m.start() - 60), Math.min(told.length(), m.end() + 30)));
        }
        return here;
    }

    /** Without formulas and figures that stand as their source printed them. */
    private static String unquoted(String html) {
        return html.replaceAll("(?s)<(\\w+)[^>]*data-quoted=.*?</\\1>", "");
    }
}
