// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.Month;

/**
 * Means of one calendar month over many years.
 *
 * @param tmax_C mean of the daily highest temperatures
 * @param tmin_C mean of the daily lowest temperatures
 * @param rain_mm mean sum of the month
 * @param wetDays mean number of days with at least 0.25 mm (0.01 in)
 */
public record MonthlyClimate(Month month, double tmax_C, double tmin_C, double rain_mm, double wetDays) {
    double days() {
        return month == Month.FEBRUARY ? 28.25 : month.length(false);
    }

    double tmean_C() {
        return (tmax_C + tmin_C) / 2;
    }
}
