// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.Test;

/** Pictures are made and read back by the JDK's own image library: the dots must be the same before and after. */
class PhotographTest {
    private static final String SECRET = "41.8000 N 93.4000 W";

    private static BufferedImage picture(int wide, int tall) {
        BufferedImage image = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < wide; x++) {
            for (int y = 0; y < tall; y++) {
                image.setRGB(x, y, (x * 37 ^ y * 91) & 0xFFFFFF);
            }
        }
        return image;
    }

    private static byte[] written(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    private static byte[] progressive(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), param);
        }
        writer.dispose();
        return out.toByteArray();
    }

    /** As a phone writes it: Exif with a turn and a place, a comment, and a second picture after the end. */
    private static byte[] asFromAPhone(byte[] jpeg, int turn, ByteOrder order) throws IOException {
        byte[] place = SECRET.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4 + place.length);
        exif.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).order(order);
        exif.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        exif.putShort((short) 42).putInt(8).putShort((short) 1);
        exif.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) turn)
                .putShort((short) 0);
        exif.putInt(0).put(place);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        segment(out, 0xE1, exif.array());
        segment(out, 0xFE, place);
        segment(out, 0xED, place);
        out.write(jpeg, 2, jpeg.length - 2);
        out.write(place);
        out.write(jpeg);
        return out.toByteArray();
    }

    private static void segment(ByteArrayOutputStream out, int marker, byte[] body) throws IOException {
        out.write(new byte[] {(byte) 0xFF, (byte) marker, (byte) ((body.length + 2) >> 8), (byte) (body.length + 2)});
        out.write(body);
    }

    private static void assertSameDots(byte[] before, byte[] after) throws IOException {
        BufferedImage a = ImageIO.read(new ByteArrayInputStream(before));
        BufferedImage b = ImageIO.read(new ByteArrayInputStream(after));
        int[] first = a.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth());
        int[] then = b.getRGB(0, 0, b.getWidth(), b.getHeight(), null, 0, b.getWidth());
        assertThat(Arrays.equals(first, then)).isTrue();
    }

    @Test
    void where_it_was_taken_is_left_out_and_every_dot_stays() throws IOException {
        for (byte[] jpeg : new byte[][] {written(picture(640, 400), "jpg"), progressive(picture(333, 222))}) {
            for (ByteOrder order : new ByteOrder[] {ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN}) {
                Photograph kept = Photograph.of(asFromAPhone(jpeg, 1, order));
                assertThat(new String(kept.image(), StandardCharsets.ISO_8859_1))
                        .doesNotContain(SECRET, "Exif");
                assertThat(new String(kept.small(), StandardCharsets.ISO_8859_1))
                        .doesNotContain(SECRET);
                assertSameDots(jpeg, kept.image());
                assertThat(kept.image().length).isLessThanOrEqualTo(jpeg.length);
            }
        }
    }

    @Test
    void how_to_turn_it_stays_and_its_sides_are_those_shown() throws IOException {
        byte[] jpeg = written(picture(640, 400), "jpg");
        Photograph kept = Photograph.of(asFromAPhone(jpeg, 6, ByteOrder.LITTLE_ENDIAN));
        assertThat(kept.wide()).isEqualTo(400);
        assertThat(kept.tall()).isEqualTo(640);
        assertSameDots(jpeg, kept.image());
        assertThat(Stripped.of(kept.image()).turn()).isEqualTo(6);
        assertThat(Stripped.of(kept.small()).turn()).isEqualTo(6);
    }

    @Test
    void the_small_copy_is_small() throws IOException {
        Photograph kept = Photograph.of(written(picture(4000, 3000), "jpg"));
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(kept.small()));
        assertThat(small.getWidth()).isBetween(480, 960);
        assertThat(small.getWidth() / (double) small.getHeight()).isBetween(1.32, 1.35);
    }

    @Test
    void words_in_a_png_are_left_out_and_every_dot_stays() throws IOException {
        byte[] png = written(picture(60, 40), "png");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, 33);
        byte[] chunk = ("tEXtComment\0" + SECRET).getBytes(StandardCharsets.ISO_8859_1);
        CRC32 crc = new CRC32();
        crc.update(chunk);
        out.write(ByteBuffer.allocate(4).putInt(chunk.length - 4).array());
        out.write(chunk);
        out.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
        out.write(png, 33, png.length - 33);
        Photograph kept = Photograph.of(out.toByteArray());
        assertThat(new String(kept.image(), StandardCharsets.ISO_8859_1)).doesNotContain(SECRET);
        assertThat(kept.type()).isEqualTo("image/png");
        assertSameDots(png, kept.image());
    }

    @Test
    void what_is_no_picture_is_refused_with_what_to_do() throws IOException {
        assertThatThrownBy(() -> Photograph.of("field notes".getBytes(StandardCharsets.US_ASCII)))
                .hasMessageContaining("photograph.no-picture");
        assertThatThrownBy(() -> Photograph.of(new byte[Photograph.MOST_BYTES + (1 << 20)]))
                .hasMessageContaining("photograph.too-large at where.photograph: found found.mb{mb=9}");
        byte[] flood = written(picture(8, 8), "png");
        ByteBuffer.wrap(flood).putInt(16, 20_000).putInt(20, 20_000);
        assertThatThrownBy(() -> Photograph.of(flood))
                .hasMessageContaining(
                        "photograph.too-many-dots at where.photograph: found found.dots{wide=20000, tall=20000}");
    }

    /** A JPEG with two frame headers: what was measured and what would be opened must be the same. */
    @Test
    void a_picture_that_gives_two_sizes_is_refused_before_it_is_opened() throws IOException {
        byte[] jpeg = written(picture(64, 40), "jpg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        byte[] huge = {8, (byte) 0x75, 0x30, (byte) 0x75, 0x30, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1};
        segment(out, 0xC0, huge);
        out.write(jpeg, 2, jpeg.length - 2);
        assertThat(Stripped.of(out.toByteArray()).wide()).isEqualTo(64);
        assertThatThrownBy(() -> Photograph.of(out.toByteArray())).hasMessageContaining("photograph.damaged");
    }

    @Test
    void a_png_whose_chunks_lead_back_is_refused() throws IOException {
        byte[] png = written(picture(8, 8), "png");
        for (int length : new int[] {-12, -1, Integer.MIN_VALUE, Integer.MAX_VALUE}) {
            byte[] loop = png.clone();
            ByteBuffer.wrap(loop).putInt(33, length);
            assertThatThrownBy(() -> Photograph.of(loop)).hasMessageContaining("photograph.cut-short");
        }
    }

    @Test
    void a_place_in_a_camera_s_own_small_picture_is_left_out_and_words_that_cannot_be_read_do_no_harm()
            throws IOException {
        byte[] jpeg = written(picture(64, 40), "jpg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        segment(out, 0xE0, ("JFXX\0\20" + SECRET).getBytes(StandardCharsets.ISO_8859_1));
        segment(out, 0xE1, "Exif\0\0MM".getBytes(StandardCharsets.ISO_8859_1));
        out.write(jpeg, 2, jpeg.length - 2);
        Photograph kept = Photograph.of(out.toByteArray());
        assertThat(new String(kept.image(), StandardCharsets.ISO_8859_1)).doesNotContain(SECRET, "Exif");
        assertSameDots(jpeg, kept.image());
    }

    @Test
    void a_picture_cut_short_or_damaged_anywhere_is_kept_whole_or_refused_and_never_breaks() throws IOException {
        byte[] jpeg = asFromAPhone(written(picture(64, 40), "jpg"), 3, ByteOrder.BIG_ENDIAN);
        Random random = new Random(7);
        int refused = 0;
        for (int k = 0; k < 400; k++) {
            byte[] damaged = k % 2 == 0 ? Arrays.copyOf(jpeg, 1 + random.nextInt(600)) : jpeg.clone();
            damaged[random.nextInt(damaged.length)] ^= (byte) (1 + random.nextInt(255));
            try {
                Photograph.of(damaged);
            } catch (org.earleaf.units.EarleafException said) {
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(200);
    }

    /** Half the dots and an end put behind them: its parts are in order, and its decoder only warns of what is missing. */
    @Test
    void half_a_picture_with_an_end_of_its_own_is_refused() throws IOException {
        for (byte[] jpeg : new byte[][] {written(picture(640, 400), "jpg"), progressive(picture(640, 400))}) {
            byte[] half = Arrays.copyOf(jpeg, jpeg.length / 2);
            half[half.length - 2] = (byte) 0xFF;
            half[half.length - 1] = (byte) 0xD9;
            assertThatThrownBy(() -> Photograph.of(half)).hasMessageContaining("photograph.damaged");
        }
    }

    @Test
    void a_png_damaged_on_the_way_is_refused() throws IOException {
        byte[] png = written(picture(60, 40), "png");
        png[29] ^= 1;
        assertThatThrownBy(() -> Photograph.of(png)).hasMessageContaining("photograph.damaged");
    }
}
