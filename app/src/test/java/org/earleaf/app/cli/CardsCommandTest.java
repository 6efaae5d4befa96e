// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.earleaf.app.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CardsCommandTest {
    @TempDir
    private Path folder;

    private static Ran run(String... args) {
        return Ran.of(Main.commandLine(), args);
    }

    /** 100 squares of 20 dots on 1200 x 1200 dots: 1 in of 1200 dpi, 15.5 stains/cm2, 2.78 %. */
    private Path card() throws IOException {
        BufferedImage image = new BufferedImage(1200, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D draw = image.createGraphics();
        draw.setColor(new Color(232, 214, 62));
        draw.fillRect(0, 0, 1200, 1200);
        draw.setColor(new Color(48, 66, 150));
        for (int k = 0; k < 100; k++) {
            draw.fillRect(50 + k % 10 * 120, 50 + k / 10 * 120, 20, 20);
        }
        draw.dispose();
        Path file = folder.resolve("ear leaf.png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    @Test
    void reads_a_scan_and_says_whether_it_serves() throws IOException {
        Path card = card();
        Ran ran = run("cards", card.toString(), "--dpi", "1200", "--margin", "0 mm", "--for", "insecticide", "--json");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode first =
                JsonMapper.builder().build().readTree(ran.out()).get("cards").get(0);
        assertThat(first.get("area_cm2").asDouble()).isCloseTo(2.54 * 2.54, within(1e-9));
        assertThat(first.get("cover").asDouble()).isCloseTo(100 * 400 / 1.44e6, within(1e-9));
        assertThat(first.get("patches_cm2").asDouble()).isCloseTo(100 / (2.54 * 2.54), within(1e-6));
        assertThat(first.get("verdict").asString()).isEqualTo("too few stains");
        Ran words = run("cards", card.toString(), "--dpi", "1200", "--for", "contact fungicide");
        assertThat(words.out())
                .contains("ear leaf.png", "covered", "far too few stains", "assumption", "One card says little");
    }

    @Test
    void what_is_no_scan_is_refused_by_name() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.png"), "not a picture");
        Path cut = folder.resolve("cut.png");
        byte[] whole = Files.readAllBytes(card());
        Files.write(cut, Arrays.copyOf(whole, 60));
        assertThat(run("cards", text.toString(), "--dpi", "1200").err()).contains("notes.png", "no picture", "PNG");
        assertThat(run("cards", cut.toString(), "--dpi", "1200").err()).contains("cut.png", "cannot be opened");
        assertThat(run("cards", "absent.png", "--dpi", "1200").err()).contains("absent.png", "no such file");
        Ran coarse = run("cards", card().toString(), "--dpi", "300");
        assertThat(coarse.exit()).isEqualTo(2);
        assertThat(coarse.err()).contains("--dpi", "300", "600 to 9600");
        assertThat(run("cards", card().toString(), "--dpi", "1200", "--margin", "2 in")
                        .err())
                .contains("smaller than its margins");
        assertThat(run("cards", card().toString(), "--dpi", "1200", "--for", "rain")
                        .err())
                .contains("rain", "systemic fungicide");
    }

    /** What is lost of a JPEG its decoder fills with grey, which would be measured as cover: half a card is no card. */
    @Test
    void a_scan_cut_short_or_damaged_is_refused_and_never_measured() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BufferedImage card = ImageIO.read(card().toFile());
        ImageIO.write(card, "jpg", out);
        byte[] jpeg = out.toByteArray();
        Path file = folder.resolve("card.jpg");
        Files.write(file, jpeg);
        assertThat(run("cards", file.toString(), "--dpi", "1200").exit()).isZero();
        byte[] half = Arrays.copyOf(jpeg, jpeg.length / 2);
        byte[] halfWithAnEnd = half.clone();
        halfWithAnEnd[half.length - 2] = (byte) 0xFF;
        halfWithAnEnd[half.length - 1] = (byte) 0xD9;
        for (byte[] lost : List.of(half, halfWithAnEnd, Arrays.copyOf(jpeg, jpeg.length - 20))) {
            Files.write(file, lost);
            Ran ran = run("cards", file.toString(), "--dpi", "1200");
            assertThat(ran.exit()).isEqualTo(2);
            assertThat(ran.err()).contains("card.jpg", "damaged or cut short", "anew");
        }
    }

    /** A dot that was changed on the way, the picture's own sum left as it was. */
    @Test
    void a_png_whose_sums_do_not_add_up_is_refused() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(ImageIO.read(card().toFile()), "png", out);
        byte[] png = out.toByteArray();
        int sumOfTheHeader = 8 + 8 + 13;
        png[sumOfTheHeader] ^= 1;
        Path file = Files.write(folder.resolve("card.png"), png);
        assertThat(run("cards", file.toString(), "--dpi", "1200").err()).contains("card.png", "damaged or cut short");
    }

    @Test
    void a_picture_of_another_kind_is_refused() throws IOException {
        Path file = folder.resolve("card.gif");
        ImageIO.write(ImageIO.read(card().toFile()), "gif", file.toFile());
        assertThat(run("cards", file.toString(), "--dpi", "1200").err())
                .contains("card.gif", "no picture in PNG or JPEG");
    }
}
