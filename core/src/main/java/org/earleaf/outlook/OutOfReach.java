// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When a rig can no longer enter a zone.
 *
 * @param lastDay last day that it fits; empty: it does not fit any more today
 * @param date first day out of reach; empty: it fits to the end of the season
 */
public record OutOfReach(String rig, Optional<LocalDate> lastDay, Optional<LocalDate> date) {}
