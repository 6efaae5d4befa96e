// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/** What the tenders can bring to the fields on a day [m3]. */
public record Supply(int day, double most_m3) {}
