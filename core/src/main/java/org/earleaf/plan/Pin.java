// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/** A job that somebody has put on a rig and a day by hand. */
public record Pin(int job, int rig, int day) {}
