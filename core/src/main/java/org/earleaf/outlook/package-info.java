/**
 * Outlook: one zone over possible weather, with what was read on it taken in.
 *
 * <p>In: season, weather, readings. Out: {@link org.earleaf.outlook.ZoneEnsemble}, members of the season under one weather
 * each; {@link org.earleaf.outlook.Outlook}, what they say: stage, height, nitrogen, dates with their spread. Start at
 * {@link org.earleaf.outlook.Baseline}. Not here: what a pass is worth over them (decide).
 */
package org.earleaf.outlook;
