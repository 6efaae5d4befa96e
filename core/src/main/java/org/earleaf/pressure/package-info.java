/**
 * Pressure: how much disease and insects a zone faces, from its weather, its ground and what was scouted.
 *
 * <p>In: hourly weather, readings, facts of the zone. Out: {@link org.earleaf.pressure.SeverityOutlook},
 * {@link org.earleaf.pressure.AphidModel}. Numbers that nobody has measured are listed in
 * {@link org.earleaf.pressure.ProtectionAssumption}; tables with their sources lie among the resources. Not here: what a
 * pass against them is worth (protection).
 */
package org.earleaf.pressure;
