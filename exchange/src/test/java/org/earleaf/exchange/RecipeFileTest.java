// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.earleaf.mix.MixLine;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecipeFileTest {
    @TempDir
    private Path dir = Path.of("");

    private List<MixLine> read(String text) throws IOException {
        Path file = dir.resolve("recipe.csv");
        Files.writeString(file, text);
        return RecipeFile.read(file);
    }

    private List<Problem> problems(String text) {
        EarleafException e = catchThrowableOfType(EarleafException.class, () -> read(text));
        assertThat(e).as(text).isNotNull();
        return e.problems();
    }

    @Test
    void reads_products_with_form_and_class() throws IOException {
        List<MixLine> lines = read("""
                product,rate,rate_unit,form,class
                Demo F1,10,fl oz/ac,SC,
                Demo Spreader,0.25,% v/v,SL,NIS
                AMS,8.5,lb/100 gal,SG,WC
                UAN 32,5,lb N/ac,,
                """);
        assertThat(lines).extracting(line -> line.form().code()).containsExactly("SC", "NIS", "WC", "SL");
        assertThat(lines.get(3).isNitrogenSolution()).isTrue();
        assertThat(lines.get(0).isLabelled()).isTrue();
        assertThat(lines.get(1).isLabelled()).isFalse();
    }

    @Test
    void the_class_may_be_left_out_and_columns_stand_in_any_order() throws IOException {
        assertThat(read("form,product,rate_unit,rate\nEC,Demo I1,fl oz/ac,2.8\n"))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Demo F1,ten,fl oz/ac,SC|row 2, column rate|number.unreadable",
                "Demo F1,0,fl oz/ac,SC|row 2, column rate|rate.not-above-zero",
                "Demo F1,-3,fl oz/ac,SC|row 2, column rate|rate.not-above-zero",
                "Demo F1,,fl oz/ac,SC|row 2, column rate|cell.empty",
                "Demo F1,10,stone/ac,SC|row 2, column rate_unit|stone/ac",
                "Demo F1,10,,SC|row 2, column rate_unit|cell.empty",
                "Demo F1,10,oz/ac,SC|row 2, column rate_unit|found.ounces-of-liquid",
                "Demo F1,2800,fl oz/ac,SC|row 2, column rate|rate.above-most-of-unit",
                "Demo F1,10,fl oz/ac,XX|row 2, column form|form.unknown",
                "Demo F1,10,fl oz/ac,|row 2, column form|form.missing",
                "Demo G1,10,lb/ac,GR|row 2, column form|form.never",
                "Demo F1,40,lb N/ac,SL|row 2, column rate_unit|dose.nitrogen-unknown",
                "anhydrous ammonia,40,lb N/ac,SL|row 2, column rate_unit|dose.ammonia",
                ",10,fl oz/ac,SC|row 2, column product|cell.empty",
                "Demo F1,10,fl oz/ac|row 2|cells"
            })
    void a_fault_names_file_row_and_column(String row, String where, String found) {
        Problem problem = problems("product,rate,rate_unit,form\n" + row + "\n").get(0);
        assertThat(PlaceText.of(problem.place())).startsWith("recipe.csv").contains(where);
        assertThat(problem.sentence()).contains(found);
    }

    @Test
    void every_fault_is_told_at_once() {
        assertThat(problems("product,rate,rate_unit,form\nA,x,fl oz/ac,SC\nB,1,stone/ac,SC\nA,1,fl oz/ac,FS\n"))
                .hasSize(4);
    }

    @Test
    void a_granule_stays_refused_under_any_class() {
        assertThat(problems("product,rate,rate_unit,form,class\nDemo G1,1,lb/ac,GR,NIS\n"))
                .hasSize(1);
    }

    @Test
    void an_empty_file_a_missing_column_and_no_rows_are_refused() {
        assertThat(problems("").get(0).code()).isEqualTo("file.empty");
        assertThat(problems("product,rate,form\nA,1,SC\n").get(0).where()).contains("rate_unit");
        assertThat(problems("product,rate,rate_unit,form\n").get(0).code()).isEqualTo("file.no-rows");
        EarleafException e =
                catchThrowableOfType(EarleafException.class, () -> RecipeFile.read(dir.resolve("none.csv")));
        assertThat(e.problems().get(0).sentence()).contains("none.csv").contains("recipe.no-file");
    }
}
