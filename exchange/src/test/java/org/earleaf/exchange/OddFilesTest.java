// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are none, that never end, or that would use up a reader's memory or stack. */
class OddFilesTest {
    @TempDir
    private Path dir;

    private List<Problem> refused(Path folder) {
        return catchThrowableOfType(EarleafException.class, () -> FarmFolder.read(folder))
                .problems();
    }

    @Test
    void a_device_in_place_of_a_file_is_not_read() throws IOException {
        Path zero = Path.of("/dev/zero");
        assumeTrue(Files.exists(zero), "no such device here");
        for (String name : List.of("hours.csv", "boundaries.geojson", "weather.csv")) {
            Path folder = TinyFolder.us().without(name).write(Files.createDirectory(dir.resolve(name)));
            Files.createSymbolicLink(folder.resolve(name), zero);
            assertThat(refused(folder)).as(name).anySatisfy(p -> {
                assertThat(p.where()).isEqualTo(name);
                assertThat(p.code()).isEqualTo("file.no-file");
            });
        }
    }

    @Test
    void a_folder_in_place_of_a_file_is_told_as_such() throws IOException {
        Path folder = TinyFolder.us().without("hours.csv").write(dir);
        Files.createDirectory(folder.resolve("hours.csv"));
        assertThat(refused(folder)).singleElement().satisfies(p -> {
            assertThat(p.where()).isEqualTo("hours.csv");
            assertThat(p.code()).isEqualTo("file.no-file");
        });
    }

    @Test
    void a_file_that_is_too_large_is_not_read() throws IOException {
        Path folder = TinyFolder.us().write(dir);
        try (RandomAccessFile large =
                new RandomAccessFile(folder.resolve("hours.csv").toFile(), "rw")) {
            large.setLength((32L << 20) + 1);
        }
        assertThat(refused(folder)).singleElement().satisfies(p -> {
            assertThat(p.where()).isEqualTo("hours.csv");
            assertThat(p.code()).isEqualTo("file.too-large");
            assertThat(p.seen()).isEqualTo(Said.of("found.more-than-mb", "most", 32));
        });
    }

    @Test
    void outlines_nested_twenty_thousand_deep_are_refused_with_their_row() throws IOException {
        String deep = "[".repeat(20_000) + "]".repeat(20_000);
        for (String text : List.of(
                "{\"type\":\"FeatureCollection\",\n\"features\":" + deep + "}",
                "{\"type\":\"FeatureCollection\",\n\"features\":[{\"type\":\"Feature\",\"properties\":{\"field\":\"Home\"},"
                        + "\"geometry\":{\"type\":\"Polygon\",\"coordinates\":" + deep + "}}]}",
                "{\"type\":\"FeatureCollection\",\n\"features\":" + "[".repeat(20_000))) {
            Path folder = TinyFolder.us().with("boundaries.geojson", text).write(dir);
            assertThat(refused(folder)).singleElement().satisfies(p -> {
                assertThat(PlaceText.of(p.place())).isEqualTo("boundaries.geojson, row 2");
                assertThat(p.code()).isEqualTo("geojson.too-deep");
            });
        }
    }

    @Test
    void brackets_in_quotes_are_not_counted() {
        String text = "[\"" + "[{".repeat(100) + "\\\"[\\\\\", [[]], []]";
        assertThat(JsonDepth.findBeyond(text, 3)).isEqualTo(OptionalInt.empty());
        assertThat(JsonDepth.findBeyond(text, 2)).hasValue(text.indexOf(", [[") + 3);
        assertThat(JsonDepth.findBeyond("[[1],[2],[3]]", 2)).isEqualTo(OptionalInt.empty());
    }
}
