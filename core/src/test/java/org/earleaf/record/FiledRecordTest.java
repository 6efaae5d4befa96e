// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import org.earleaf.field.FieldPart;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;

class FiledRecordTest {
    @Test
    void plain_fertiliser_needs_neither_certificate_nor_location() {
        assertThat(Records.fertiliser().problems()).isEmpty();
    }

    /** Source: 7 CFR 110.3(a)(3) location, (5) certification number. */
    @Test
    void a_registered_product_may_not_be_filed_without_location_and_certificate() {
        List<Problem> problems = Records.fungicide("", "").problems();
        assertThat(problems).extracting(Problem::code).contains("record.no-location", "record.no-certification");
        assertThat(Records.fungicide("PA-100", "Section 14, T20N R8E").problems())
                .isEmpty();
    }

    @Test
    void impossible_amounts_and_names_left_out_are_each_named() {
        FiledRecord r = Records.fertiliser();
        FiledRecord bad = new FiledRecord(
                new FiledRecord.Filing("x", "r1", "", r.filed(), ""),
                "p",
                new FiledRecord.Treated(new FieldPart("", ""), "", "", Amount.parse("0 ac", "area")),
                new FiledRecord.Work("", "", r.date(), r.start(), r.end()),
                List.of(),
                Applicator.onOwnGround("", ""),
                r.extras());
        assertThat(bad.problems()).hasSize(6);
    }

    @Test
    void a_text_that_was_cut_or_has_a_line_too_many_is_refused_with_the_line() {
        String text = Records.fertiliser().canonical();
        assertThatThrownBy(() -> FiledRecord.parse(text.replace("crop: corn\n", "")))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("record.changed at where.record-line{line=9}");
        assertThatThrownBy(() -> FiledRecord.parse(text + "more\n")).isInstanceOf(EarleafException.class);
        assertThatThrownBy(() -> FiledRecord.parse("something else")).hasMessageContaining("line=1}");
        assertThatThrownBy(() -> FiledRecord.parse(text.replace("2026-06-30\n", "2026-06-31\n")))
                .isInstanceOf(EarleafException.class);
    }

    @Test
    void an_amount_keeps_every_digit_as_entered() {
        assertThat(Amount.parse("812.50 gal", "amount").text()).isEqualTo("812.50 gal");
        assertThatThrownBy(() -> Amount.parse("many gal", "amount")).hasMessageContaining("quantity.unreadable");
    }

    /**
     * Source: 7 CFR 110.3 (record within 14 days, copy within 30 days), 40 CFR 170.309 and 170.311 (posted within 24 h,
     * until 30 days after the interval, kept 2 years); dates worked out by hand on the calendar.
     */
    @Test
    void what_falls_due_after_an_application_with_twelve_hours_of_re_entry() {
        ZonedDateTime end = ZonedDateTime.of(2025, 7, 10, 14, 0, 0, 0, Records.CENTRAL);
        Deadlines due = Deadlines.of(end, 12, RecordRule.federal());
        assertThat(due.reentryEnds()).isEqualTo(ZonedDateTime.of(2025, 7, 11, 2, 0, 0, 0, Records.CENTRAL));
        assertThat(due.postBy()).isEqualTo(ZonedDateTime.of(2025, 7, 11, 14, 0, 0, 0, Records.CENTRAL));
        assertThat(due.fileBy()).hasToString("2025-07-24");
        assertThat(due.copyBy()).hasToString("2025-08-09");
        assertThat(due.unpostAfter()).hasToString("2025-08-10");
        assertThat(due.keepUntil()).hasToString("2027-07-11");
    }

    @Test
    void an_interval_keeps_its_hours_when_the_clocks_change() {
        // Clocks go back on 2 November 2025 at 2:00 in this zone: 12 h after 22:00 is 9:00.
        ZonedDateTime end = ZonedDateTime.of(2025, 11, 1, 22, 0, 0, 0, Records.CENTRAL);
        assertThat(Deadlines.of(end, 12, RecordRule.federal()).reentryEnds().getHour())
                .isEqualTo(9);
    }

    @Test
    void a_record_filed_after_its_day_is_late_by_the_calendar_of_the_field() {
        FiledRecord r = Records.fungicide("PA-100", "here");
        assertThat(Deadlines.isLate(filed(r, "2026-07-15T04:59:00Z"), Records.CENTRAL, RecordRule.federal()))
                .isFalse();
        assertThat(Deadlines.isLate(filed(r, "2026-07-15T05:00:00Z"), Records.CENTRAL, RecordRule.federal()))
                .isTrue();
    }

    private static FiledRecord filed(FiledRecord r, String instant) {
        return new FiledRecord(
                new FiledRecord.Filing(r.id(), r.corrects(), r.why(), Instant.parse(instant), r.filedBy()),
                r.passId(),
                new FiledRecord.Treated(new FieldPart(r.field(), r.zone()), r.location(), r.crop(), r.area()),
                new FiledRecord.Work(r.placement(), r.rig(), r.date(), r.start(), r.end()),
                r.products(),
                r.applicator(),
                r.extras());
    }
}
