/**
 * Week: what each rig does on each of the next seven days.
 *
 * <p>In: the passes that the fields want with their worth by day and rig, hours fit for work, roads, tender. Out:
 * {@link org.earleaf.week.Week}, the plan over possible weather; {@link org.earleaf.week.DaySheet}, one rig's day, load by
 * load. Start at {@link org.earleaf.week.Week}. Not here: the search itself (plan.search).
 */
package org.earleaf.week;
