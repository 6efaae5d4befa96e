/**
 * Parameters of the season model: every number with its range, its source and its spread, and draws of them.
 *
 * <p>Start at {@link org.earleaf.season.parameter.Parameter}.
 */
package org.earleaf.season.parameter;
