/**
 * Brief: what a morning yields.
 *
 * <p>In: every zone's outlook and options. Out: {@link org.earleaf.brief.Brief}: passes to make, what is left out and why,
 * readings worth the drive, spray hours. Start at {@link org.earleaf.brief.Morning}.
 */
package org.earleaf.brief;
