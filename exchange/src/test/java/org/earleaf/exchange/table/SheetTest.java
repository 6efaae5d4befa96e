// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.earleaf.entry.Allowed;
import org.earleaf.exchange.PlaceText;
import org.earleaf.units.Dimension;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
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
        Column area = sheet.number("area", AREA, Allowed.ANY);
        assertThat(sheet.isComplete()).isTrue();
        List<Row> rows = sheet.rows();
        assertThat(rows).extracting(Row::line).containsExactly(3, 7);
        assertThat(rows.get(0).text(note)).isEqualTo("first\nsecond");
        assertThat(rows.get(1).number(area)).isNaN();
        assertThat(findings.problems())
                .extracting(p -> PlaceText.of(p.place()))
                .containsExactly("t.csv, row 7, column area_ha");
    }

    @Test
    void one_wrong_column_of_a_long_file_is_told_in_a_few_lines_and_counted() {
        Sheet sheet = sheet("area_ha\n" + "ten\n".repeat(1000));
        Column area = sheet.number("area", AREA, Allowed.ANY);
        sheet.rows().forEach(row -> row.number(area));
        List<Problem> problems = findings.problems();
        assertThat(problems).hasSize(6);
        assertThat(problems.get(5).sentence())
                .isEqualTo(
                        "number.unreadable at where.column{file=t.csv, column=area_ha}: found found.more-alike{n=995, first=7, last=1001}");
    }

    @Test
    void remarks_of_one_code_in_a_column_are_told_a_few_times_and_counted() {
        Sheet sheet = sheet("area_ha\n11\n12\n13\n14\n15\n16\n17\n");
        Column area = sheet.number("area", AREA, Allowed.plain("area", 0, 100).clamped(1, 10));
        sheet.rows().forEach(row -> row.number(area));
        assertThat(findings.flags()).hasSize(6);
        assertThat(findings.flags().get(4).what())
                .isEqualTo(Said.of("flag.outside", "entered", "15", "low", "1 ha", "high", "10 ha", "taken", "10 ha"));
        assertThat(findings.flags().get(5).what().values())
                .containsEntry("rest", Said.of("found.more-alike", "n", 2, "first", "7", "last", "8"));
    }

    @Test
    void remarks_on_a_whole_file_are_all_told() {
        for (int k = 0; k < 7; k++) {
            findings.flag(Place.of("farm.csv"), Said.of("flag.key-missing", "key", "key" + k, "taken", "1"));
        }
        assertThat(findings.flags()).hasSize(7);
    }

    @Test
    void every_unit_of_a_quantity_is_taken_by_the_end_of_the_header() {
        for (String header : List.of("area_ac", "AREA_AC", "Area ac", " area_acres ")) {
            Sheet sheet = sheet(header + "\n2\n");
            Column area = sheet.number("area", AREA, Allowed.ANY);
            assertThat(sheet.rows().get(0).number(area)).as(header).isCloseTo(2 * 0.40468564224, within(1e-12));
        }
    }

    @Test
    void a_bound_written_in_another_unit_is_still_the_bound() {
        Sheet sheet = sheet("area_ac\n" + 10 / 0.40468564224 + "\n");
        Column area = sheet.number("area", AREA, Allowed.plain("area", 0, 100).clamped(1, 10));
        assertThat(sheet.rows().get(0).number(area)).isBetween(10 - 1e-9, 10 + 1e-9);
        assertThat(findings.flags()).isEmpty();
    }

    /** The reader itself is NumberText; here only that cells go through it. */
    @Test
    void a_cell_is_read_as_every_other_number_and_told_at_its_place() {
        Findings findings = new Findings();
        Sheet sheet = Sheet.of("t.csv", "area_ha\n\"1,5\"\n\"1,234\"\n1e999\n", findings)
                .orElseThrow();
        Column area = sheet.number("area", AREA, Allowed.ANY);
        assertThat(sheet.rows().get(0).number(area)).isEqualTo(1.5);
        assertThat(sheet.rows().get(1).number(area)).isNaN();
        assertThat(sheet.rows().get(2).number(area)).isNaN();
        assertThat(findings.problems())
                .extracting(p -> PlaceText.of(p.place()) + " " + p.code())
                .containsExactly(
                        "t.csv, row 3, column area_ha number.comma-unclear",
                        "t.csv, row 4, column area_ha number.too-large");
    }

    @Test
    void numbers_in_messages_are_short_and_plain() {
        assertThat(Measure.PLAIN.first().text(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(Measure.PLAIN.first().text(20234.282)).isEqualTo("20234");
        assertThat(Measure.PLAIN.first().text(0)).isEqualTo("0");
        assertThat(Measure.PLAIN.first().text(1234567)).isEqualTo("1234567");
    }
}
