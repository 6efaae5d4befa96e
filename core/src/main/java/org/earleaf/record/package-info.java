/**
 * Record: the filed account of a pass made, its completeness by law, its deadlines, and the chain that shows whether
 * anything was changed afterwards.
 *
 * <p>In: what the pass, the load and the person give. Out: {@link org.earleaf.record.FiledRecord} (one account; of an
 * emptied load by {@link org.earleaf.record.LoadAccount}), {@link org.earleaf.record.Chain} (append-only order under SHA-256), {@link org.earleaf.record.Deadlines}. Never: a
 * clock; the instant of filing is handed in. Not here: where records are kept (the store).
 */
package org.earleaf.record;
