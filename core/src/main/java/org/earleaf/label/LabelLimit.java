// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.function.DoubleBinaryOperator;

/**
 * One number of a label. "Not entered" is neither zero nor "no limit": what needs it stays closed until a person has
 * read the label. Nothing in Earleaf fills it in.
 *
 * @param value in the unit of its use; NaN unless stated
 */
public record LabelLimit(State state, double value) {
    /** What is known of it. */
    public enum State {
        NOT_ENTERED,
        NONE_STATED,
        STATED
    }

    public static LabelLimit of(double value) {
        return new LabelLimit(State.STATED, value);
    }

    /** The label was read and states none. */
    public static LabelLimit noneStated() {
        return new LabelLimit(State.NONE_STATED, Double.NaN);
    }

    public static LabelLimit notEntered() {
        return new LabelLimit(State.NOT_ENTERED, Double.NaN);
    }

    public boolean isEntered() {
        return state != State.NOT_ENTERED;
    }

    /** The limit, or {@code otherwise} where the label states none. */
    public double or(double otherwise) {
        return state == State.STATED ? value : otherwise;
    }

    /** The lower of two greatest values. */
    LabelLimit orLower(LabelLimit other) {
        return strictest(other, Math::min);
    }

    /** The higher of two least values. */
    LabelLimit orHigher(LabelLimit other) {
        return strictest(other, Math::max);
    }

    /** Of two products in one tank the stricter; one that was not entered leaves the mix without an entry. */
    private LabelLimit strictest(LabelLimit other, DoubleBinaryOperator stricter) {
        if (!isEntered() || !other.isEntered()) {
            return notEntered();
        }
        if (state == State.NONE_STATED) {
            return other;
        }
        return other.state == State.NONE_STATED ? this : of(stricter.applyAsDouble(value, other.value));
    }
}
