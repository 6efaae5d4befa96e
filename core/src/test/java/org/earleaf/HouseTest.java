// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Keeps things small enough to be read. What was wider or longer when a limit came stands in a list beside this test,
 * under {@code src/test/house}, a name and its figure a line. The lists only shrink: nothing new may pass a limit, nothing
 * listed may grow, and what has been mended has to be taken off, which {@code -Dearleaf.write} does.
 */
class HouseTest {
    private static final long MOST_PARTS = 9;
    private static final long MOST_PARAMETERS = 6;
    private static final long MOST_LINES = 40;
    private static final long MOST_FILES = 30;
    /** Of core's own package: it explains the flow and holds nothing. */
    private static final String ROOT = "org.earleaf";

    /** Two words side by side: a single one may be a name, a key or a unit. */
    private static final Pattern PROSE = Pattern.compile("\\p{L}{2,}[,;:.]? \\p{L}{2,}");

    private static final int MOST_WORDS = 6;

    private static final String FILED = "the text of a record, hashed as filed: its words never change";
    private static final String UNITS = "units as people write them in files and boxes";
    private static final String SPOTS = "the cell of a key, named as the column of a spot is";
    private static final String CELLS = "words of cells and boxes; what people are shown is the catalogue's";
    private static final String NAMES = "names by which files, plans and records hold a thing that no farm lists";

    /** What holds words of a format and no prose, with the reason. */
    private static final Map<String, String> TOKENS = Map.ofEntries(
            Map.entry("Account.java", FILED),
            Map.entry("CanonicalText.java", FILED),
            Map.entry("LoadAccount.java", FILED),
            Map.entry("RecordTable.java", FILED),
            Map.entry("Dose.java", UNITS),
            Map.entry("Observed.java", UNITS),
            Map.entry("RateUnit.java", UNITS),
            Map.entry("FarmCsv.java", SPOTS),
            Map.entry("Disease.java", CELLS),
            Map.entry("MixFacts.java", CELLS),
            Map.entry("MixLine.java", CELLS),
            Map.entry("Placement.java", CELLS),
            Map.entry("Scouted.java", CELLS),
            Map.entry("NitrogenProduct.java", NAMES),
            Map.entry("HiredRig.java", NAMES));

    private static final Path HOUSE = Sources.house();
    private static final Sources SHIPPED = Sources.of(files("core", "exchange", "app"));

    @Test
    void no_record_or_constructor_has_more_than_nine_parts() {
        holds("wide-constructors", most(code(Sources.Code::constructor), Sources.Code::parameters), MOST_PARTS);
    }

    @Test
    void no_method_has_more_than_six_parameters() {
        holds("wide-methods", most(code(each -> !each.constructor()), Sources.Code::parameters), MOST_PARAMETERS);
    }

    @Test
    void no_method_is_longer_than_forty_lines() {
        holds("long-methods", most(SHIPPED.code().stream(), Sources.Code::lines), MOST_LINES);
    }

    @Test
    void no_package_of_core_holds_more_than_thirty_files_and_its_root_holds_none() {
        Map<String, Long> files = SHIPPED.units().stream()
                .filter(unit -> isOfCore(unit.file()) && !unit.file().endsWith("package-info.java"))
                .collect(Collectors.groupingBy(Sources.Unit::inPackage, TreeMap::new, Collectors.counting()));
        holds("full-packages", files, name -> name.equals(ROOT) ? 0 : MOST_FILES);
    }

    /** Core and exchange tell codes, values and quantities; the sentences that people read are made in the app. */
    @Test
    void core_and_exchange_hold_no_prose() {
        List<String> prose = SHIPPED.words().stream()
                .filter(words ->
                        isWordless(words.file()) && PROSE.matcher(words.text()).find())
                .filter(words -> !TOKENS.containsKey(name(words.file())) || !isToken(words.text()))
                .map(words -> name(words.file()) + ": " + words.text())
                .toList();
        assertThat(prose).isEmpty();
    }

    @Test
    void every_file_that_may_hold_tokens_holds_some() {
        Set<String> holding = SHIPPED.words().stream()
                .filter(words ->
                        isWordless(words.file()) && PROSE.matcher(words.text()).find())
                .map(words -> name(words.file()))
                .collect(Collectors.toSet());
        assertThat(holding).isEqualTo(TOKENS.keySet());
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    /** A few words that end no sentence. */
    private static boolean isToken(String text) {
        return text.split(" ").length <= MOST_WORDS && !text.matches("(?s).*[.!?;:]\\s*");
    }

    private static boolean isWordless(Path file) {
        return isOfCore(file) || file.startsWith(HOUSE.resolve("exchange"));
    }

    private static boolean isOfCore(Path file) {
        return file.startsWith(HOUSE.resolve("core"));
    }

    private static Stream<Sources.Code> code(Predicate<Sources.Code> which) {
        return SHIPPED.code().stream().filter(which);
    }

    private static Map<String, Long> most(Stream<Sources.Code> code, ToLongFunction<Sources.Code> figure) {
        return code.collect(Collectors.toMap(Sources.Code::name, figure::applyAsLong, Math::max, TreeMap::new));
    }

    private static void holds(String list, Map<String, Long> figures, long most) {
        holds(list, figures, name -> most);
    }

    private static void holds(String list, Map<String, Long> figures, ToLongFunction<String> most) {
        Path file = HOUSE.resolve("core/src/test/house/" + list + ".txt");
        Map<String, Long> over = new TreeMap<>(figures);
        over.entrySet().removeIf(each -> each.getValue() <= most.applyAsLong(each.getKey()));
        Map<String, Long> listed = read(file);
        Map<String, Long> worse = new TreeMap<>(over);
        worse.entrySet().removeIf(each -> each.getValue() <= listed.getOrDefault(each.getKey(), 0L));
        assertThat(worse)
                .as(list + ": part what is over the limit; its list may not grow")
                .isEmpty();
        if (System.getProperty("earleaf.write") != null) {
            write(file, over);
            return;
        }
        assertThat(listed.keySet())
                .as(list + ": what is mended comes off its list: mvn -pl core test -Dtest=HouseTest -Dearleaf.write")
                .isEqualTo(over.keySet());
    }

    private static Map<String, Long> read(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.map(line -> line.split(" "))
                    .collect(Collectors.toMap(line -> line[0], line -> Long.valueOf(line[1]), Long::max, TreeMap::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file, Map<String, Long> over) {
        try {
            Files.write(
                    file,
                    over.entrySet().stream()
                            .map(e -> e.getKey() + " " + e.getValue())
                            .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(String... rooms) {
        return Stream.of(rooms)
                .flatMap(room -> Sources.files(HOUSE.resolve(room + "/src/main/java")))
                .toList();
    }
}
