/** Earleaf's core: the grower's day in working order; start reading at {@link org.earleaf.Brief}. */
package org.earleaf;
