// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.Main;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The folder to copy gives a brief as it stands, and says what it took for lack of a figure. */
class FarmSmallTest {
    private static final Path SMALL = Path.of(System.getProperty("earleaf.root", ".."), "farm-small");

    @Test
    void the_least_folder_gives_a_brief() {
        Ran ran = Ran.of(Main.commandLine(), "morning", "--folder", SMALL.toString(), "--on", "2026-06-30", "--json");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode brief = JsonMapper.shared().readTree(ran.out());
        assertThat(brief.get("fields").size()).isEqualTo(1);
        assertThat(brief.get("fields").get(0).get("stage").asString()).startsWith("V1");
        assertThat(brief.get("passes").get(0).get("rig").asString()).isEqualTo("Highboy");
        assertThat(brief.get("not_judged").get(0).get("kind").asString()).isEqualTo("fungicide");
    }

    @Test
    void a_texture_stands_for_its_middle_and_that_is_told() {
        Farm farm = FarmFolder.read(SMALL);
        assertThat(farm.zones().get(0).soil().texture().word()).isEqualTo("silt loam");
        assertThat(farm.flags()).anySatisfy(f -> assertThat(f.what().code()).isEqualTo("soil.texture-middle"));
    }

    @Test
    void the_readme_names_every_file_that_is_there() throws Exception {
        String readme = Files.readString(SMALL.resolve("README.md"));
        try (Stream<Path> files = Files.list(SMALL)) {
            List<String> names = files.map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith(".csv"))
                    .toList();
            assertThat(names).hasSize(6).allSatisfy(n -> assertThat(readme).contains("`" + n + "`"));
        }
    }
}
