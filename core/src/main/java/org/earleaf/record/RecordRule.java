// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

/**
 * How soon and how long, as data, since states differ.
 *
 * @param jurisdiction whose rule
 * @param post_h hours after the end within which the application is posted centrally
 * @param file_d days within which the record is filed
 * @param copy_d days within which the customer gets a copy of commercial work
 * @param unpost_d days after the re-entry interval during which it stays posted
 * @param keep_y years for which it is kept
 */
public record RecordRule(Jurisdiction jurisdiction, int post_h, int file_d, int copy_d, int unpost_d, int keep_y) {
    /** Whose rule it is. */
    public enum Jurisdiction {
        US_FEDERAL
    }

    /**
     * The federal rules: filed within 14 days and kept 2 years, copy within 30 days (7 CFR 110.3); posted within 24 h
     * and for 30 days, kept 2 years from the end of the interval (40 CFR 170.309, 170.311).
     */
    public static RecordRule federal() {
        return new RecordRule(Jurisdiction.US_FEDERAL, 24, 14, 30, 30, 2);
    }
}
