/**
 * Protection: what a pass against disease and insects is worth.
 *
 * <p>In: the pressure on a zone, prices, what the season model expects (yields and stage dates by future,
 * handed in as plain values). Out: {@link org.earleaf.protection.ProtectionAdvice}, the worth of a fungicide or
 * insecticide pass over equally likely draws, what forbids it and why. Start at {@link
 * org.earleaf.protection.ProtectionWorth}. Numbers that nobody has measured are listed in {@link
 * org.earleaf.pressure.ProtectionAssumption}; tables with their sources lie among the resources. Never: clock, files,
 * random numbers. Not here: the pressure itself
 * (pressure), spray hours (spray), label limits (label), which pass goes first (decide).
 */
package org.earleaf.protection;
