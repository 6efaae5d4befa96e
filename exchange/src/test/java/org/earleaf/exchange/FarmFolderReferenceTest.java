// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.earleaf.entry.LabelDraft;
import org.earleaf.farm.Farm;
import org.earleaf.farm.RateUnit;
import org.earleaf.farm.Setting;
import org.earleaf.field.Drainage;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Tillage;
import org.earleaf.mix.MixForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The reference of the farm folder shows a whole farm; what it shows must be what is read. */
class FarmFolderReferenceTest {
    private static final Pattern EXAMPLE = Pattern.compile("```([\\w/]+\\.\\w+)\n(.*?)```", Pattern.DOTALL);

    @TempDir
    private Path dir;

    private static String reference() throws IOException {
        Path root = Path.of(System.getProperty("earleaf.root", ".."));
        return Files.readString(root.resolve("docs/farm-folder.md"));
    }

    @Test
    void the_examples_of_the_reference_are_a_farm_that_is_read_and_know_every_column() throws IOException {
        TinyFolder folder = new TinyFolder();
        for (MatchResult example : EXAMPLE.matcher(reference()).results().toList()) {
            folder.with(example.group(1), example.group(2));
        }
        Farm farm = FarmFolder.read(folder.write(dir));
        assertThat(farm.zones()).hasSize(3);
        assertThat(farm.passes()).hasSize(3);
        assertThat(farm.readings()).hasSize(6);
        assertThat(farm.work().past()).hasSize(3);
        assertThat(farm.rigs()).hasSize(2);
        assertThat(farm.ground().boundaries()).hasSize(1);
        assertThat(farm.labels().advice("Leaf Guard", "corn").missing()).isEmpty();
        assertThat(farm.settings().of(Setting.HIRED_RIG_COST)).isCloseTo(17 * 2.4710538147, within(1e-6));
        assertThat(farm.settings().of(Setting.BAD_CASE_WEIGHT)).isEqualTo(.2);
        assertThat(farm.settings().of(Setting.AIRCRAFT_NEAR)).isEqualTo(1);
        assertThat(farm.weather().observed().days()).hasSize(6);
        Set<String> unexpected = farm.flags().stream()
                .map(f -> f.where() + ": " + f.what())
                .filter(f -> !f.contains("fill.no-") && !f.contains("flag.both-weathers"))
                .collect(Collectors.toSet());
        assertThat(unexpected).isEmpty();
    }

    @Test
    void the_reference_names_every_word_that_is_understood() throws IOException {
        String text = reference();
        String words = String.join(
                ", ",
                Placement.words(),
                RateUnit.words(),
                Reading.Kind.words(),
                PreviousCrop.words(),
                Drainage.words(),
                Tillage.words(),
                Inhibitor.words(),
                org.earleaf.farm.ProductKind.words(),
                LabelDraft.words(),
                org.earleaf.field.Disease.words());
        assertThat(text).contains(words.split(", "));
        assertThat(text.toUpperCase(java.util.Locale.ROOT))
                .contains(MixForm.codes().toArray(String[]::new));
    }
}
