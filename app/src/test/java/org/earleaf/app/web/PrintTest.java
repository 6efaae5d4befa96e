// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.earleaf.record.Chain;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every sheet as it comes out of the printer: one page, its fonts in it, no colour, the words in the order of the hand.
 * Leaves a picture of each in {@code target/paper} to be looked at. Paper sizes: ISO 216 (A4, 210 by 297 mm); letter
 * 8.5 by 11 in; 72 points an inch.
 */
class PrintTest {
    private static final Path PICTURES = Path.of("target/paper");
    private static final Preview PREVIEW = new Preview();
    private static Served server;

    @BeforeAll
    static void start() {
        SeededLoads.in(PREVIEW);
        server = PREVIEW.serve();
    }

    @AfterAll
    static void stop() {
        server.close();
        PREVIEW.store().close();
    }

    private static HttpResponse<byte[]> get(String path) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + server.port() + path);
        return HttpClient.newHttpClient().send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofByteArray());
    }

    @ParameterizedTest
    @CsvSource({
        "/load/1/sheet.pdf, letter, 612, 792",
        "/load/3/sheet.pdf, a4, 595.28, 841.89",
        "/load/4/sheet.pdf, letter, 612, 792",
        "/records/1/record.pdf, letter, 612, 792",
        "/records/1/record.pdf, a4, 595.28, 841.89",
        "/records/1/posting.pdf, letter, 612, 792",
        "/records/1/posting.pdf, a4, 595.28, 841.89",
    })
    void a_sheet_is_one_page_with_its_fonts_and_without_colour(String path, String paper, float wide, float tall)
            throws Exception {
        HttpResponse<byte[]> answer = get(path + "?paper=" + paper);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
        Files.createDirectories(PICTURES);
        String name = path.substring(1).replaceAll("[^a-z0-9]+", "-") + "-" + paper;
        Files.write(PICTURES.resolve(name + ".pdf"), answer.body());
        try (PDDocument pdf = Loader.loadPDF(answer.body())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            PDPage page = pdf.getPage(0);
            assertThat(page.getMediaBox().getWidth()).isBetween(wide - .5f, wide + .5f);
            assertThat(page.getMediaBox().getHeight()).isBetween(tall - .5f, tall + .5f);
            assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
            for (COSName font : page.getResources().getFontNames()) {
                PDFont used = page.getResources().getFont(font);
                assertThat(used.isEmbedded()).as(used.getName()).isTrue();
            }
            BufferedImage picture = new PDFRenderer(pdf).renderImageWithDPI(0, 110);
            ImageIO.write(picture, "png", PICTURES.resolve(name + ".png").toFile());
            assertThat(colours(picture)).isZero();
        }
        outside(PICTURES.resolve(name + ".pdf"));
    }

    private static long colours(BufferedImage picture) {
        return Arrays.stream(picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth()))
                .filter(rgb -> (rgb >> 16 & 255) != (rgb >> 8 & 255) || (rgb >> 8 & 255) != (rgb & 255))
                .count();
    }

    /** Held by the tools of others too: always in the check, by hand where this machine has them. */
    private static void outside(Path pdf) throws IOException, InterruptedException {
        for (List<String> tool : List.of(
                List.of("qpdf", "--check", pdf.toString()), List.of("pdftotext", "-layout", pdf.toString(), "-"))) {
            boolean there = Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, tool.get(0))));
            assertThat(there || System.getenv("EARLEAF_CHECK") == null)
                    .as(tool.get(0) + " is not here, and ./check installs it")
                    .isTrue();
            if (there) {
                assertTakes(tool);
            }
        }
    }

    /** Without an error and without a warning: qpdf ends with 3 on a warning, pdftotext says it alone. */
    private static void assertTakes(List<String> tool) throws IOException, InterruptedException {
        Path said = Files.createTempFile("said", ".txt");
        Process run = new ProcessBuilder(tool)
                .redirectError(said.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        int status = run.waitFor();
        String words = Files.readString(said);
        Files.delete(said);
        assertThat(words).as(String.join(" ", tool)).isEmpty();
        assertThat(status).as(String.join(" ", tool)).isZero();
    }

    private static String text(String path) throws IOException, InterruptedException {
        try (PDDocument pdf = Loader.loadPDF(get(path).body())) {
            return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @Test
    void a_load_sheet_says_what_the_hand_needs_in_the_order_of_the_hand() throws Exception {
        assertThat(text("/load/2/sheet.pdf"))
                .containsSubsequence(
                        "Load 2, Sand Ridge, 15.0 ac",
                        "15.0 gal/ac",
                        "Mix in this order",
                        "water",
                        "Demo F1",
                        "150 fl oz",
                        "goggles and gloves",
                        "Demo I1",
                        "Demo Spreader",
                        "What labels say",
                        "Caution",
                        "The label is the law",
                        "Start",
                        "Certificate",
                        "Part load",
                        Chain.head(PREVIEW.store().records()));
    }

    @Test
    void a_record_prints_what_the_law_asks_and_what_proves_it() throws Exception {
        Chain.Entry entry = PREVIEW.store().records().get(0);
        // 7 CFR 110.3(a): name and number, total amount, location, size, crop, day, applicator with certificate.
        assertThat(text("/records/1/record.pdf"))
                .contains(
                        "INVENTED-1",
                        "150.00 fl oz",
                        "Story County, T83N R24W, section 12",
                        "15.0 ac",
                        "corn",
                        "June 30, 2026",
                        "A. Grower",
                        "PA-1234",
                        entry.hash());
    }

    @Test
    void a_posting_sheet_holds_what_the_rule_of_posting_asks() throws Exception {
        // 40 CFR 170.311(b): product, number, active ingredient; crop, place, day, start, end, interval.
        assertThat(text("/records/1/posting.pdf"))
                .contains("INVENTED-2", "demothrin", "7:10 am", "8:05 am", "24 h", "corn", "section 12")
                // 24 hours after the end; 30 days after the interval, kept two years from it.
                .contains(
                        "Keep out of Creek Bottom until Wed, July 1, 2026, 8:05 am",
                        "Post by Wed, July 1, 2026, 8:05 am")
                .contains("July 31, 2026", "July 1, 2028");
    }

    @Test
    void another_paper_than_letter_or_a4_is_refused() throws Exception {
        assertThat(get("/records/1/record.pdf?paper=a3").statusCode()).isEqualTo(400);
    }
}
