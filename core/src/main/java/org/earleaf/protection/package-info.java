/**
 * Protection: how much disease and insects are likely to take, and what a pass against them is worth.
 *
 * <p>In: hourly weather, readings, facts of the zone, what the season model expects (yields and stage dates by future,
 * handed in as plain values). Out: {@link org.earleaf.protection.ProtectionAdvice}, the worth of a fungicide or
 * insecticide pass over equally likely draws, what forbids it and why. Start at {@link
 * org.earleaf.protection.ProtectionWorth}. Numbers that nobody has measured are listed in {@link
 * org.earleaf.protection.ProtectionAssumption}; tables with their sources lie among the resources. Never: clock, files,
 * random numbers. Not here: spray hours (weather), label limits (farm), which pass goes first (decide).
 */
package org.earleaf.protection;
