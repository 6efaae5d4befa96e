/**
 * Spray: the hours in which a pass may be made by its weather and its labels, each other hour with its reason.
 *
 * <p>In: hourly weather, labels, the passes that the fields want, rigs. Out:
 * {@link org.earleaf.spray.SprayTable}. Start at {@link org.earleaf.spray.SprayTimes}; one hour is judged in
 * {@link org.earleaf.spray.SprayHours}. Not here: which rig goes where in these hours (week).
 */
package org.earleaf.spray;
