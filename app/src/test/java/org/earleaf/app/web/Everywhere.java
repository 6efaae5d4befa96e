// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Standing;
import org.earleaf.app.desk.StoredDays;
import org.earleaf.app.desk.StoredNotebook;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.web.view.Figure;
import org.earleaf.app.web.view.Places;
import org.earleaf.app.words.Words;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.protection.KnownFact;
import org.springframework.http.ContentDisposition;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every page and print there is, as a person reads it: the addresses come from the server's own table and from the links
 * of its pages, so that a new one cannot be forgotten. Two farms: the fixture with its loads and records, and a small
 * one whose sentences core makes.
 */
final class Everywhere {
    /** Pages of one kind that are read on a farm; the third option's page says nothing that two did not. */
    private static final int OF_A_KIND = 2;

    private static final Pattern SEEN =
            Pattern.compile("(?:aria-label|title|placeholder|alt|data-h|data-say-\\w+)=\"([^\"]*)\"|>([^<]+)<");
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    /** What stands at an address or is printed by a command. */
    record Text(String at, String seen) {
        /** On paper lines break anywhere. */
        boolean isPaper() {
            return at.contains(".pdf");
        }
    }

    /** Held by tests that read here: one of them makes the whole program speak another language. */
    static final String LOCK = "everywhere";

    private final SmallDemo small = new SmallDemo();
    private final EveryCommand commands = new EveryCommand(small);
    private final Preview preview = new Preview();
    private final Map<String, Set<String>> addresses = new LinkedHashMap<>();
    private final Set<String> routes = new TreeSet<>();

    private Everywhere() throws IOException {
        SeededLoads.in(preview);
        start();
        answers.put(
                tongue(false), addresses.keySet().stream().flatMap(this::follow).toList());
    }

    private static Optional<Everywhere> made = Optional.empty();

    /** The same for all who ask, and until the tests end. */
    static synchronized Everywhere there() throws IOException {
        if (made.isEmpty()) {
            made = Optional.of(new Everywhere());
        }
        return made.get();
    }

    /** What every command prints; done once in each language and system. */
    synchronized List<Text> commands(boolean metric) throws IOException {
        List<Text> known = printed.get(tongue(metric));
        if (known == null) {
            known = commands.printed(metric);
            printed.put(tongue(metric), known);
        }
        return known;
    }

    /** The system and language that the program speaks in now. */
    private static String tongue(boolean metric) {
        return metric + Words.in(metric).say("amount.unknown");
    }

    /** What people wrote: quantities in their own units, names and notes; the longest first. */
    Set<String> entered() {
        Entered entered = given();
        preview.store().records().forEach(e -> e.text().lines().forEach(line -> {
            entered.of(line.replaceFirst("^[^:]*: ", ""));
            entered.of(line);
        }));
        return entered.texts();
    }

    private Entered given() {
        Entered given = new Entered();
        given.of(preview.store().farm());
        given.of(preview.day(Fixture.TODAY).farm());
        given.of(FixtureShelf.labels());
        given.of(preview.store().records());
        given.of(preview.store().catches().all());
        given.of(small.wiring().folders().farm(small.folder()));
        return given;
    }

    /** All that people wrote, in a farm or on the lines of the commands, and what is cited. */
    Stream<String> names() {
        Stream<String> cited = Stream.of(KnownFact.Known.values())
                .map(known -> KnownFact.of(known).source());
        // A product is called as on its ticket in every language; a sealed record stands as it was filed.
        Stream<String> products = NitrogenProduct.builtIn().stream().map(NitrogenProduct::name);
        Stream<String> filed = Stream.of("rate times area");
        return Stream.of(given().texts().stream(), commands.typed(), cited, products, filed)
                .flatMap(each -> each);
    }

    private void start() {
        Served fixture = preview.serve();
        Wiring wiring = small.wiring();
        FarmStore store = FarmStore.open(commands.farm());
        StoredDays days = new StoredDays(store, wiring.days(), wiring.clock(), Optional.of(SmallDemo.DAY), true);
        FarmDay day = days.day(SmallDemo.DAY);
        day.brief();
        day.ask(Standing.week(List.of())).join();
        Served demo = Served.over(days, new StoredNotebook(store, false));
        fixture.part(RequestMappingHandlerMapping.class).getHandlerMethods().keySet().stream()
                .filter(m -> m.getMethodsCondition().getMethods().contains(RequestMethod.GET))
                .forEach(m -> routes.addAll(m.getPatternValues()));
        int loads = preview.store().loads().all().size();
        int records = preview.store().records().size();
        addresses.put(at(fixture), expanded(preview.day(Fixture.TODAY), loads, records));
        addresses.put(at(demo), expanded(day, 0, 0));
    }

    private static String at(Served server) {
        return "http://127.0.0.1:" + server.port();
    }

    /** Every route with what its names stand for. */
    private Set<String> expanded(FarmDay day, int loads, int records) {
        Map<String, List<String>> known = Map.of(
                "place", List.copyOf(Places.of(day.farm()).all().keySet()),
                "key", Arrays.stream(Figure.values()).map(Figure::key).toList(),
                "id", numbers(loads),
                "number", numbers(records));
        Set<String> all = new LinkedHashSet<>();
        for (String route : routes) {
            Matcher name = Pattern.compile("\\{(\\w+)}").matcher(route);
            if (!name.find()) {
                all.add(route);
                continue;
            }
            assertThat(known).as("what stands for a name of the route " + route).containsKey(name.group(1));
            known.get(name.group(1)).forEach(v -> all.add(route.replace(name.group(), v)));
        }
        String first = known.get("place").get(0);
        known.get("key").forEach(key -> all.add("/why/" + key + "?place=" + first));
        known.get("place").forEach(p -> all.add("/field/" + p + "/soil?index=60"));
        all.add("/no-such-page");
        all.add("/field/no-such-field");
        return all;
    }

    private static List<String> numbers(int most) {
        return java.util.stream.IntStream.rangeClosed(1, most)
                .mapToObj(String::valueOf)
                .toList();
    }

    /**
     * An answer as it came.
     *
     * @param body of a print what stands on it
     * @param name under which a browser keeps it; empty where the answer says none
     */
    private record Answer(String base, String address, int status, String type, String body, String name) {}

    /** By system and language, each address asked once. */
    private final Map<String, List<Answer>> answers = new HashMap<>();
    /** Likewise of the commands. */
    private final Map<String, List<Text>> printed = new HashMap<>();

    /** What the pages of a farm are, and those that they link to, a few of each kind. */
    private Stream<Answer> follow(String base) {
        Set<String> all = addresses.get(base);
        Map<String, Integer> kinds = new LinkedHashMap<>();
        List<Answer> told = new ArrayList<>();
        List<String> ahead = List.copyOf(all);
        while (!ahead.isEmpty()) {
            List<Answer> wave =
                    ahead.parallelStream().map(at -> get(base, at, false)).toList();
            List<String> found = new ArrayList<>();
            for (Answer page : wave) {
                if (page.status() == 200) {
                    read.add(page.address());
                }
                Matcher link = LINK.matcher(page.body());
                while (link.find()) {
                    String address = link.group(1).replace("&amp;", "&");
                    if (!address.startsWith("/static/")
                            && !all.contains(address)
                            && kinds.merge(kind(address), 1, Integer::sum) <= OF_A_KIND) {
                        all.add(address);
                        found.add(address);
                    }
                }
            }
            told.addAll(wave);
            ahead = found;
        }
        return told.stream();
    }

    private static String kind(String address) {
        return address.replaceAll("(/\\w+/)[^/?]+", "$1x").replaceAll("\\b(?!kind=)(\\w+)=[^&]*", "$1");
    }

    private final Set<String> read = new TreeSet<>();

    /** Routes that no address that answers belongs to. */
    List<String> unread() {
        return routes.stream()
                .filter(r -> !r.startsWith("/photographs/")) // pictures hold no words of ours
                .filter(r -> read.stream().noneMatch(a -> a.replaceFirst("\\?.*", "")
                        .matches(r.replace(".", "[.]").replaceAll("\\{\\w+}", "[^/]+"))))
                .toList();
    }

    /**
     * Of every address, page or print.
     *
     * @param unquoted takes out of a page what it quotes
     */
    List<Text> pages(boolean metric, UnaryOperator<String> unquoted) {
        return answers(metric).stream()
                .filter(a -> a.type().startsWith("text/") || a.type().startsWith("application/pdf"))
                .map(a -> text(a, unquoted))
                .toList();
    }

    /** The same of some pages of the fixture. */
    List<Text> pages(List<String> some, UnaryOperator<String> unquoted) {
        String fixture = addresses.keySet().iterator().next();
        List<Text> texts = answers(false).stream()
                .filter(a -> a.base().equals(fixture) && some.contains(a.address()))
                .map(a -> text(a, unquoted))
                .toList();
        assertThat(texts).extracting(Text::at).containsExactlyInAnyOrderElementsOf(some);
        return texts;
    }

    /** The names under which prints are kept, as the language of now has them. */
    List<String> prints() {
        return answers(false).stream()
                .filter(a -> a.type().startsWith("application/pdf"))
                .map(Answer::name)
                .toList();
    }

    private static Text text(Answer answer, UnaryOperator<String> unquoted) {
        boolean page = answer.type().startsWith("text/html");
        return new Text(answer.address(), page ? seen(unquoted.apply(answer.body())) : answer.body());
    }

    private synchronized List<Answer> answers(boolean metric) {
        return answers.computeIfAbsent(tongue(metric), now -> {
            List<Answer> first = answers.values().iterator().next();
            List<Answer> told = first.parallelStream()
                    .map(a -> get(a.base(), a.address(), metric))
                    .toList();
            assertThat(told)
                    .as("every address answers alike in every language and unit")
                    .extracting(Answer::address, Answer::status)
                    .containsExactlyElementsOf(first.stream()
                            .map(a -> tuple(a.address(), a.status()))
                            .toList());
            return told;
        });
    }

    private static Answer get(String base, String address, boolean metric) {
        HttpRequest ask = HttpRequest.newBuilder(URI.create(base + address))
                .header("Cookie", "units=" + (metric ? "metric" : "us"))
                .build();
        try {
            HttpResponse<byte[]> answer = CLIENT.send(ask, BodyHandlers.ofByteArray());
            while (answer.statusCode() == 503
                    || answer.headers().firstValue("Refresh").isPresent()) {
                Thread.sleep(100);
                answer = CLIENT.send(ask, BodyHandlers.ofByteArray());
            }
            String type = answer.headers().firstValue("Content-Type").orElse("");
            String body = type.startsWith("application/pdf")
                    ? printed(answer.body())
                    : new String(answer.body(), StandardCharsets.UTF_8);
            String name = answer.headers()
                    .firstValue("Content-Disposition")
                    .map(said -> ContentDisposition.parse(said).getFilename())
                    .orElse("");
            return new Answer(base, address, answer.statusCode(), type, body, name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Every text of a page that a person sees or hears, a line each. */
    static String seen(String html) {
        StringBuilder seen = new StringBuilder();
        Matcher m = SEEN.matcher(html.replaceAll("(?s)<(script|style)\\b.*?</\\1>", ""));
        while (m.find()) {
            seen.append(m.group(1) == null ? m.group(2) : m.group(1)).append('\n');
        }
        return seen.toString()
                .replace("&amp;", "&")
                .replace("&#39;", "'")
                .replace("&quot;", "\"")
                .replaceAll("&#?\\w+;", " ");
    }

    private static String printed(byte[] pdf) throws IOException {
        try (PDDocument paper = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(paper);
        }
    }
}
