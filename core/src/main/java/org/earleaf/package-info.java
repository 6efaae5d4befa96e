/** Earleaf's core: the grower's day in working order; start reading at {@link org.earleaf.Brief}, then {@link org.earleaf.Week}. */
package org.earleaf;
