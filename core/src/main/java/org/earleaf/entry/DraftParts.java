// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** The parts of a draft, each number with its unit behind it. */
final class DraftParts implements Parts {
    private final Draft draft;
    private final Gathered gathered;

    DraftParts(Draft draft, Gathered gathered) {
        this.draft = draft;
        this.gathered = gathered;
    }

    @Override
    public String text(String part) {
        return draft.text(part);
    }

    @Override
    public double number(String part, Allowed allowed) {
        return draft.has(part)
                ? allowed.clamp(gathered.number(() -> allowed.read(draft.text(part), part)))
                : Double.NaN;
    }

    @Override
    public double number(String part, Allowed allowed, double usual) {
        return draft.has(part) ? number(part, allowed) : usual;
    }

    @Override
    public Optional<LocalDate> date(String part) {
        return Days.of(draft, part, gathered);
    }

    @Override
    public void refuse(Problem problem) {
        gathered.add(problem);
    }

    @Override
    public void remark(String part, Said said) {
        gathered.remark(part, said);
    }

    /** Who types a draft sees what it comes to. */
    @Override
    public void assumed(String part, String word) {}

    @Override
    public boolean isGood() {
        return gathered.isClear();
    }
}
