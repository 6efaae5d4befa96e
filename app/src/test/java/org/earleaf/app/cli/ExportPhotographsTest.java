// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.earleaf.app.Main;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.store.FarmStore;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ExportPhotographsTest {
    private static final Path DEMO = Path.of(System.getProperty("earleaf.root", ".."), "demo-farm");

    private static Reading height(String field) {
        return new Reading(
                "",
                new FieldPart(field, ""),
                LocalDate.of(2026, 6, 20),
                Reading.Kind.HEIGHT,
                80,
                "80 cm",
                Reading.Sampled.NO_SOIL,
                "pale, \"by the gate\"",
                Scouted.NOTHING);
    }

    private static Photograph photograph(String format) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), format, out);
        return Photograph.of(out.toByteArray());
    }

    private static String run(int exit, String... args) {
        StringWriter said = new StringWriter();
        CommandLine line = Main.commandLine().setOut(new PrintWriter(said)).setErr(new PrintWriter(said));
        assertThat(line.execute(args)).as(said.toString()).isEqualTo(exit);
        return said.toString();
    }

    @Test
    void photographs_are_written_byte_for_byte_with_their_readings_and_nothing_is_overwritten(@TempDir Path temp)
            throws Exception {
        String db = temp.resolve("farm.db").toString();
        Path folder = temp.resolve("pictures");
        Photograph jpeg = photograph("jpg");
        Photograph png = photograph("png");
        try (FarmStore store = FarmStore.create(Path.of(db))) {
            store.importFarm(FarmFolder.read(DEMO), FarmFolder.readWeather(DEMO).observed());
            store.enter(height("Oxbow"), Optional.of(jpeg));
            store.enter(height("Oxbow"), Optional.of(jpeg));
            store.enter(height("../../Oxbow"), Optional.of(png));
            Reading wrong = store.enter(height("Ferry Lane"), Optional.of(png));
            store.withdraw(wrong.id(), LocalDate.of(2026, 6, 21));
        }
        assertThat(run(0, "export", "--photographs", folder.toString(), "--farm", db))
                .contains("3 photographs written");
        assertThat(folder.resolve("2026-06-20 Oxbow height.jpg")).hasBinaryContent(jpeg.image());
        assertThat(folder.resolve("2026-06-20 Oxbow height 2.jpg")).hasBinaryContent(jpeg.image());
        assertThat(folder.resolve("2026-06-20 _Oxbow height.png")).hasBinaryContent(png.image());
        assertThat(Files.readAllLines(folder.resolve("photographs.csv")))
                .hasSize(4)
                .contains("2026-06-20 Oxbow height.jpg,Oxbow,,2026-06-20,height,80 cm,\"pale, \"\"by the gate\"\"\"");
        String refused = run(2, "export", "--photographs", folder.toString(), "--farm", db);
        assertThat(refused).contains("a file that is there already", "nothing was written");
    }
}
