// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourcesTest {
    @Test
    void counts_parts_parameters_lines_and_words(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("Tank.java"), """
            package org.some.where;

            /** "Not a word of these" is counted. */
            record Tank(double volume_m3, String name, int outlets) {
                static final int MOST = 7;

                Tank {
                    if (outlets > MOST) {
                        throw new IllegalArgumentException("for programmers alone");
                    }
                }

                @SuppressWarnings("neither these words")
                String say(int much,
                        int more) {
                    class Inner {
                        Inner(int one) {}
                    }
                    return "a tank of " + much + "\\n of water" + more;
                }
            }
            """);
        Sources read = Sources.of(List.of(file));
        assertThat(read.units()).containsExactly(new Sources.Unit(file, "org.some.where"));
        assertThat(read.code())
                .containsExactlyInAnyOrder(
                        new Sources.Code("Tank", true, 3, 0),
                        new Sources.Code("Tank", true, 3, 5),
                        new Sources.Code("Tank.say", false, 2, 7),
                        new Sources.Code("Tank.Inner", true, 1, 1));
        assertThat(read.words()).extracting(Sources.Words::text).containsExactly("a tank of ", "\n of water");
    }
}
