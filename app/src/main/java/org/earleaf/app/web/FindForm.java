// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.entry.SetupEntry;
import org.earleaf.farm.Farm;
import org.earleaf.rig.RigSetup;
import org.jspecify.annotations.Nullable;

/** What outlets are looked for, as it stands in the form; {@link SetupEntry} says what each means. */
public record FindForm(
        @Nullable String rig,
        @Nullable String placement,
        @Nullable String rate,
        @Nullable String speed,
        @Nullable String liquid,
        @Nullable String spacing,
        @Nullable String rows,
        @Nullable String droplets,
        @Nullable String nozzles) {
    RigSetup.Answer on(Farm farm) {
        return new SetupEntry(
                        ReadingForm.text(rate),
                        ReadingForm.text(speed),
                        ReadingForm.text(liquid),
                        ReadingForm.text(placement),
                        ReadingForm.text(spacing),
                        ReadingForm.text(rows),
                        ReadingForm.text(droplets),
                        ReadingForm.text(nozzles))
                .on(SetupEntry.rig(farm.rigs(), ReadingForm.text(rig)));
    }

    /** The usual figures where nothing is told. */
    FindForm filled(boolean metric) {
        return new FindForm(
                ReadingForm.text(rig),
                ReadingForm.text(placement),
                or(rate, metric ? "140 L/ha" : "15 gal/ac"),
                ReadingForm.text(speed),
                or(liquid, "water"),
                or(spacing, metric ? "50 cm" : "20 in"),
                or(rows, metric ? "76 cm" : "30 in"),
                ReadingForm.text(droplets),
                ReadingForm.text(nozzles));
    }

    private static String or(@Nullable String told, String usual) {
        String text = ReadingForm.text(told);
        return text.isEmpty() ? usual : text;
    }
}
