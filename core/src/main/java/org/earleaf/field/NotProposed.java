// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

/** What not proposing a kind of pass means. Only the first says anything of its worth: what was not judged may well pay. */
public enum NotProposed {
    /** Judged, and it loses on average. */
    DOES_NOT_PAY,
    /** It may or may not pay: no label, no price, nobody scouted, no model. */
    NOT_JUDGED,
    /** Nothing is due now: too soon, too late, enough is there, a threshold is not met, or waiting is better. */
    NOTHING_TO_DO,
    /** It may pay and cannot be done: no rig fits, the label forbids it, the week is full. */
    CANNOT_BE_DONE
}
