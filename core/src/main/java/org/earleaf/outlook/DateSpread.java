// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When something happens over the futures; empty means never by that percentile.
 *
 * @param probability share of futures in which it happens at all
 */
public record DateSpread(
        Optional<LocalDate> p10, Optional<LocalDate> p50, Optional<LocalDate> p90, double probability) {}
