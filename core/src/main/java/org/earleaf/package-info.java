/**
 * Earleaf's core: the grower's day in working order, one package a step; nothing stands in the root itself. Start reading
 * at {@link org.earleaf.brief.Brief}, then {@link org.earleaf.week.Week}.
 */
package org.earleaf;
