// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;

/**
 * The days across a calendar, and where they lie [% of the width].
 *
 * @param from first day drawn
 * @param days how many are drawn
 * @param wide whether it is drawn for a desk; else for a phone
 */
public record DaySpan(LocalDate from, int days, LocalDate today, boolean wide) {
    /** Above this many days weeks are ruled instead of days, and months named instead of days numbered. */
    private static final int DAILY = 45;
    /** Narrowest drawing that has to be read, desk and phone [px]. */
    private static final double DESK_PX = 650;

    private static final double PHONE_PX = 288;

    public LocalDate to() {
        return from.plusDays(days - 1L);
    }

    public boolean isDrawn(LocalDate date) {
        return !date.isBefore(from) && !date.isAfter(to());
    }

    /** Morning of a date. */
    double morning(LocalDate date) {
        return 100 * Ink.clamp((double) ChronoUnit.DAYS.between(from, date) / days, 0, 1);
    }

    /** Evening of a date. */
    double evening(LocalDate date) {
        return morning(date.plusDays(1));
    }

    double noon(LocalDate date) {
        return (morning(date) + evening(date)) / 2;
    }

    /** Width of one day. */
    double day() {
        return 100.0 / days;
    }

    /** A length in px, on the narrowest drawing, as a share of the width. */
    double share(double px) {
        return 100 * px / (wide ? DESK_PX : PHONE_PX);
    }

    boolean isDaily() {
        return days <= DAILY;
    }

    /** Rules between days or weeks, and today, behind a row. */
    void rule(Ink ink, double height) {
        for (int k = 0; k <= days; k++) {
            LocalDate date = from.plusDays(k);
            boolean week = date.getDayOfWeek() == DayOfWeek.MONDAY;
            if (isDaily() || date.getDayOfMonth() == 1) {
                boolean strong = isDaily() ? week : true;
                ink.lineAt(100.0 * k / days, 0, 100.0 * k / days, height, strong ? "rl" : "hl");
            }
        }
        if (isDrawn(today)) {
            ink.put("<rect class=\"tod\" x=\"").put(morning(today)).put("%\" width=\"");
            ink.put(isDaily() ? day() : Math.max(day(), share(4))).put("%\" y=\"0\" height=\"");
            ink.put(height).put("\"/>");
        }
    }

    /** The dates themselves; months above, days below. */
    public Markup axis() {
        Ink ink = new Ink().put("<svg class=\"axis\" width=\"100%\" height=\"44\" aria-hidden=\"true\">");
        LocalDate named = from;
        while (!named.isAfter(to())) {
            LocalDate next = named.withDayOfMonth(1).plusMonths(1);
            String month = Dates.month(named);
            if (morning(next) - morning(named) > share(9 * month.length())) {
                ink.labelAt(morning(named), 16, "bo", month);
            }
            named = next;
        }
        if (isDaily()) {
            numbers(ink);
        } else if (isDrawn(today)) {
            ink.labelAt(noon(today), 38, "mid rd", tell("dates.today"));
        }
        return ink.close("svg").done();
    }

    /** On a phone only Mondays and today have room. */
    private void numbers(Ink ink) {
        for (int k = 0; k < days; k++) {
            LocalDate date = from.plusDays(k);
            boolean week = date.getDayOfWeek() == DayOfWeek.MONDAY;
            boolean crowded = Math.abs(ChronoUnit.DAYS.between(today, date)) < 2;
            if (date.equals(today) || wide || (week && !crowded)) {
                String rank = date.equals(today) ? "rd" : week ? "bo" : "so";
                ink.labelAt(noon(date), 38, "mid " + rank, Integer.toString(date.getDayOfMonth()));
            }
        }
    }
}
