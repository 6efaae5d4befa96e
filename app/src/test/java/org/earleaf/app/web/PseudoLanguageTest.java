// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.app.Main;
import org.earleaf.app.words.PseudoLanguage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import picocli.CommandLine;

/**
 * Pages and commands in a language in which every letter of the catalogue wears a mark: a word in plain letters is no
 * text of the catalogue. It is data of the farm, or stands on the list of what is left, which only gets shorter.
 */
@Isolated("the whole program speaks another language")
class PseudoLanguageTest {
    private static final Path LEFT = Path.of("src/test/words/left.txt");
    private static final Pattern WORD = Pattern.compile("(?<![\\p{L}\\d_/.-])[A-Za-z]{3,}(?![\\p{L}\\d_/.-])");
    private static final Pattern SEEN =
            Pattern.compile("(?:aria-label|title|placeholder|alt|data-h)=\"([^\"]*)\"|>([^<]+)<");
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
    private static WebServer server;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        // First in the language of every day: a text that a class keeps from its first use would speak it for ever.
        server = Preview.start(0);
        for (String page : PAGES) {
            shown(page);
        }
        commands(Main.commandLine(), new TreeSet<>());
        server.close();
        PseudoLanguage.begin();
        server = Preview.start(0);
    }

    @AfterAll
    static void stop() {
        server.close();
        PseudoLanguage.end();
    }

    @Test
    void only_what_is_listed_is_not_in_the_catalogue() throws IOException, InterruptedException {
        Set<String> left = new TreeSet<>();
        for (String page : PAGES) {
            words(shown(page), left);
        }
        commands(Main.commandLine(), left);
        left.removeAll(data());
        if (System.getProperty("earleaf.write") != null) {
            Files.createDirectories(LEFT.getParent());
            Files.write(LEFT, left);
        }
        List<String> listed = Files.readAllLines(LEFT);
        assertThat(left).as("plain words that are in no catalogue").isSubsetOf(listed);
        assertThat(listed)
                .as("what is in the catalogue now comes off the list: -Dtest=PseudoLanguageTest -Dearleaf.write")
                .isSubsetOf(left);
    }

    private static void commands(CommandLine line, Set<String> left) {
        StringWriter help = new StringWriter();
        line.usage(new PrintWriter(help, true), CommandLine.Help.Ansi.OFF);
        // Names of options and what stands for their values are the same in every language.
        words(help.toString().replaceAll("--?[a-z-]+(=[^ \\]]+)?", ""), left);
        line.getSubcommands().values().forEach(sub -> commands(sub, left));
    }

    /** Every text of a page that a person sees or hears. */
    private static String shown(String page) throws IOException, InterruptedException {
        HttpRequest ask = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + page))
                .build();
        String html =
                HttpClient.newHttpClient().send(ask, BodyHandlers.ofString()).body();
        String body = html.substring(html.indexOf("<body"));
        StringBuilder seen = new StringBuilder();
        Matcher m = SEEN.matcher(body.replaceAll("(?s)<(script|style)\\b.*?</\\1>", ""));
        while (m.find()) {
            seen.append(m.group(1) == null ? m.group(2) : m.group(1)).append('\n');
        }
        return seen.toString().replaceAll("&#?\\w+;", " ");
    }

    private static void words(String text, Set<String> into) {
        Matcher m = WORD.matcher(text);
        while (m.find()) {
            into.add(m.group());
        }
    }

    /** Names that a person gave: of the fixture's fields, rigs, products and people. */
    private static Set<String> data() throws IOException {
        Set<String> data = new TreeSet<>();
        Path sources = Path.of("src/test/java/org/earleaf/app/web");
        try (Stream<Path> files = Files.list(sources)) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("Fixture"))
                    .collect(Collectors.toList())) {
                Matcher m = Pattern.compile("\"([^\"]*)\"").matcher(Files.readString(file));
                while (m.find()) {
                    words(m.group(1), data);
                }
            }
        }
        return data;
    }
}
