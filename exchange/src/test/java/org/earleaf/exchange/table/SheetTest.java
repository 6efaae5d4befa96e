// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.earleaf.units.Dimension;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static final Measure AREA = Measure.of(Dimension.AREA, 1e-4);
    private final Findings findings = new Findings();

    private Sheet sheet(String text) {
        return Sheet.of("t.csv", text, findings).orElseThrow();
    }

    @Test
    void rows_are_counted_by_lines_of_the_file_also_behind_quotes_over_two_lines_and_blank_rows() {
        Sheet sheet = sheet("# made by hand\nnote,area_ha\n\"first\nsecond\",1\n\n,,\nlast,x\n");
        Column note = sheet.text("note");
        Column area = sheet.number("area", AREA, Limits.ANY);
        assertThat(sheet.isComplete()).isTrue();
        List<Row> rows = sheet.rows();
        assertThat(rows).extracting(Row::line).containsExactly(3, 7);
        assertThat(rows.get(0).text(note)).isEqualTo("first\nsecond");
        assertThat(rows.get(1).number(area)).isNaN();
        assertThat(findings.problems()).extracting(Problem::where).containsExactly("t.csv, row 7, column area_ha");
    }

    @Test
    void one_wrong_column_of_a_long_file_is_told_in_a_few_lines_and_counted() {
        Sheet sheet = sheet("area_ha\n" + "ten\n".repeat(1000));
        Column area = sheet.number("area", AREA, Limits.ANY);
        sheet.rows().forEach(row -> row.number(area));
        List<Problem> problems = findings.problems();
        assertThat(problems).hasSize(6);
        assertThat(problems.get(5).sentence())
                .startsWith("t.csv, column area_ha: found 995 more like this (rows 7 to 1001); expected a number.");
    }

    @Test
    void every_unit_of_a_quantity_is_taken_by_the_end_of_the_header() {
        for (String header : List.of("area_ac", "AREA_AC", "Area ac", " area_acres ")) {
            Sheet sheet = sheet(header + "\n2\n");
            Column area = sheet.number("area", AREA, Limits.ANY);
            assertThat(sheet.rows().get(0).number(area)).as(header).isCloseTo(2 * 0.40468564224, within(1e-12));
        }
    }

    @Test
    void a_bound_written_in_another_unit_is_still_the_bound() {
        Sheet sheet = sheet("area_ac\n" + 10 / 0.40468564224 + "\n");
        Column area = sheet.number("area", AREA, Limits.clamp(0, 1, 10, 100));
        assertThat(sheet.rows().get(0).number(area)).isBetween(10 - 1e-9, 10 + 1e-9);
        assertThat(findings.flags()).isEmpty();
    }

    @Test
    void only_plain_digits_are_numbers() {
        for (String no : List.of("", "1d", "0x1p3", "NaN", "Infinity", "1e999", "1,5", "1 000", "--1", ".")) {
            assertThat(Row.parse(no)).as(no).isEmpty();
        }
        assertThat(Row.parse("-1.5e-3")).contains(-0.0015);
        assertThat(Row.parse(".5")).contains(0.5);
    }

    @Test
    void numbers_in_messages_are_short_and_plain() {
        assertThat(Texts.number(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(Texts.number(20234.282)).isEqualTo("20234");
        assertThat(Texts.number(0)).isEqualTo("0");
        assertThat(Texts.number(1234567)).isEqualTo("1234600");
    }
}
