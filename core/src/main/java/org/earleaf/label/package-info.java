/**
 * Label: what a product's label allows, as it was entered and looked at a second time.
 *
 * <p>In: units. Out: {@link org.earleaf.label.LabelBook}, every entry of the farm;
 * {@link org.earleaf.label.LabelLimit}, one figure that is stated, not stated or not entered. Start at
 * {@link org.earleaf.label.LabelEntry}. Never: a limit that nobody read off a label. Not here: holding a load against it
 * (load), spray weather (spray).
 */
package org.earleaf.label;
