// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/** A part of a shift, from its begin [s]. */
public record Window(double from_s, double to_s) {}
