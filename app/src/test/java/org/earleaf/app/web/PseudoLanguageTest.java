// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.DateFormatSymbols;
import com.ibm.icu.text.RuleBasedNumberFormat;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.earleaf.app.Main;
import org.earleaf.app.words.PseudoLanguage;
import org.earleaf.app.words.Words;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.season.parameter.Parameter;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Pages and commands in a language in which every letter of the catalogue wears a mark: a word in plain letters is no
 * text of the catalogue. It is data of the farm, or a name of the code that a page shows as such.
 */
@Isolated("the whole program speaks another language")
class PseudoLanguageTest {
    private static final Pattern WORD = Pattern.compile("(?<![\\p{L}\\d_/.-])[A-Za-z]{3,}(?![\\p{L}\\d_/.-])");
    /** Of an entry in the book of records, in fours: four letters in a row are no word. */
    private static final Pattern FINGERPRINT = Pattern.compile("\\b[0-9a-f]{4}(?: [0-9a-f]{4})+\\b");

    private static final List<String> PAGES = List.of(
            "/",
            "/calendar",
            "/field",
            "/field/mill-eighty",
            "/field/mill-eighty/options",
            "/walk",
            "/rigs",
            "/loads",
            "/loads/new",
            "/shelf",
            "/records",
            "/assumptions",
            "/why/short?place=mill-eighty",
            "/no-such-page");
    private static final Pattern QUOTED = Pattern.compile("(?s)<(\\w+)[^>]*\\slang=\"en\"[^>]*>(.*?)</\\1>");
    private static final String REFERENCE = reference();
    /** What a page names exactly as the code and files do. */
    private static final Set<String> CODES = Stream.concat(
                    Stream.of(Parameter.values()), Stream.of(ProtectionAssumption.values()))
            .map(Enum::name)
            .collect(Collectors.toSet());

    private static final int WIDE = 1000;
    private static final int SPELLED = 20;
    private static Set<String> data = Set.of();
    private static Everywhere everywhere;

    @BeforeAll
    static void start() throws IOException {
        // First in the language of every day: a text that a class keeps from its first use would speak it for ever.
        commands(Main.commandLine(), new TreeSet<>());
        everywhere = Everywhere.there();
        everywhere.commands(false);
        data = data();
        PseudoLanguage.begin();
    }

    @AfterAll
    static void stop() {
        PseudoLanguage.end();
    }

    @Test
    void every_word_of_pages_and_helps_is_in_the_catalogue() {
        Set<String> found = new TreeSet<>();
        everywhere.pages(PAGES, PseudoLanguageTest::spoken).forEach(page -> page.seen()
                .lines()
                .filter(line -> !line.equals(SeededLoads.OUTLET))
                .forEach(line -> words(page.at(), line, found)));
        commands(Main.commandLine(), found);
        assertThat(found).as("plain words that are in no catalogue").isEmpty();
    }

    /** Names of a calendar's lines, and lines without a text, are those of the standard (RFC 5545). */
    private static String ofCalendar(String line) {
        return line.replaceFirst("^(?:(?:SUMMARY|DESCRIPTION|LOCATION|X-[A-Z-]+):|[A-Z]+[:;].*)", "");
    }

    private static void held(Set<String> found) throws IOException {
        Files.write(Path.of("target/plain-words.txt"), found);
        assertThat(found.stream().map(each -> each.substring(0, each.indexOf(' '))))
                .as("plain words that are in no catalogue; where they stand: target/plain-words.txt")
                .isEmpty();
    }

    /** The same of every other page, of prints, and of what commands print. */
    @Test
    void nor_is_anything_else_that_is_printed_or_shown() throws IOException {
        Set<String> given = new TreeSet<>(data);
        everywhere
                .names()
                .flatMap(name -> WORD.matcher(name).results())
                .forEach(word -> given.add(word.group().toLowerCase(Locale.ROOT)));
        List<Everywhere.Text> texts = new ArrayList<>(everywhere.pages(false, PseudoLanguageTest::spoken));
        texts.addAll(everywhere.commands(false));
        Set<String> found = new TreeSet<>();
        texts.forEach(text -> text.seen()
                .lines()
                .map(line -> text.at().startsWith("/plan.ics") ? ofCalendar(line) : line)
                .map(line -> FINGERPRINT.matcher(line).replaceAll(""))
                .forEach(line -> words(text.at(), line, given, found)));
        held(found);
    }

    /** A header takes no letter beyond Latin-1 as it is: with the letter goes the name. */
    @Test
    void a_print_keeps_its_name_in_any_letters() {
        List<String> names = everywhere.prints();
        assertThat(names)
                .contains(
                        Words.in(false).say("page.paper.load", "id", "1") + ".pdf",
                        Words.in(false).say("page.paper.record", "number", "1") + ".pdf",
                        Words.in(false).say("page.paper.posting", "number", "1") + ".pdf")
                .doesNotContain("");
        assertThat(names)
                .noneMatch(name -> WORD.matcher(name.replace(".pdf", "")).find());
    }

    private static void commands(CommandLine line, Set<String> left) {
        StringWriter help = new StringWriter();
        line.setUsageHelpWidth(WIDE).usage(new PrintWriter(help, true), CommandLine.Help.Ansi.OFF);
        String text = help.toString();
        for (String name : names(line)) {
            text = text.replaceAll("(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-])", "");
        }
        for (String each : text.split("\n")) {
            words("--help of " + line.getCommandSpec().qualifiedName(), each, left);
        }
        line.getSubcommands().values().forEach(sub -> commands(sub, left));
    }

    /** Names of commands and options and what stands for their values: what is typed is the same in every language. */
    private static List<String> names(CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        Set<String> names = new TreeSet<>(line.getSubcommands().keySet());
        names.add(spec.qualifiedName());
        spec.options().forEach(option -> {
            names.addAll(List.of(option.names()));
            names.add(option.paramLabel());
        });
        spec.positionalParameters().forEach(part -> names.add(part.paramLabel()));
        return names.stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    /** What a page says of its own: all of it is in English. */
    private static String spoken(String page) {
        return unquoted(page.replaceFirst("<html lang=\"en\"", "<html"));
    }

    /** A page without what it quotes, in English and marked as such, from the reference that travels with the program. */
    private static String unquoted(String body) {
        return QUOTED.matcher(body).replaceAll(quoted -> {
            assertThat(quoted.group(2).lines().map(PseudoLanguageTest::letters)).allMatch(REFERENCE::contains);
            return "";
        });
    }

    private static String letters(String html) {
        return html.replaceAll("&#?\\w+;|[^A-Za-z]", "").toLowerCase(Locale.ROOT);
    }

    private static String reference() {
        try {
            return letters(Files.readString(Path.of("../docs/equations.md")).replaceAll("\\{@\\w+ ([^}]*)}", "$1"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void words(String where, String text, Set<String> into) {
        words(where, text, data, into);
    }

    private static void words(String where, String text, Set<String> given, Set<String> into) {
        if (CODES.contains(text.strip())) {
            return;
        }
        Matcher m = WORD.matcher(text);
        while (m.find()) {
            if (!given.contains(m.group().toLowerCase(Locale.ROOT))) {
                into.add(m.group() + " (" + where + ": " + text.strip() + ")");
            }
        }
    }

    /** What is the same in every language: names that a person gave, what the dates and numbers of the language bring. */
    private static Set<String> data() throws IOException {
        Set<String> data = new TreeSet<>(given());
        Locale locale = Words.US.locale();
        DateFormatSymbols dates = DateFormatSymbols.getInstance(locale);
        for (int context : List.of(DateFormatSymbols.FORMAT, DateFormatSymbols.STANDALONE)) {
            for (int width : List.of(DateFormatSymbols.WIDE, DateFormatSymbols.ABBREVIATED)) {
                data.addAll(List.of(dates.getMonths(context, width)));
                data.addAll(List.of(dates.getWeekdays(context, width)));
            }
        }
        RuleBasedNumberFormat spelled = new RuleBasedNumberFormat(locale, RuleBasedNumberFormat.SPELLOUT);
        IntStream.rangeClosed(0, SPELLED).forEach(n -> data.add(spelled.format(n)));
        data.add(Main.commandLine().getCommandName());
        return data.stream().map(word -> word.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    }

    /** Names that a person gave: of the fixture's fields, rigs, products and people. */
    private static Set<String> given() throws IOException {
        Set<String> given = new TreeSet<>();
        Path sources = Path.of("src/test/java/org/earleaf/app/web");
        try (Stream<Path> files = Files.list(sources)) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("Fixture"))
                    .collect(Collectors.toList())) {
                Matcher m = Pattern.compile("\"([^\"]*)\"").matcher(Files.readString(file));
                while (m.find()) {
                    Matcher word = WORD.matcher(m.group(1));
                    while (word.find()) {
                        given.add(word.group());
                    }
                }
            }
        }
        return given;
    }
}
