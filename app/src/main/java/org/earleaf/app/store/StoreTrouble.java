// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.file.Path;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** What keeps the farm's file from being read or written, in the words of the person at the machine. */
public final class StoreTrouble extends EarleafException {
    private static final long serialVersionUID = 1L;

    private final Kind kind;

    /** What is the matter. */
    public enum Kind {
        /** Another program holds the file for now. */
        BUSY,
        /** No room on the disk. */
        FULL,
        /** The file or its folder may be read and not written. */
        READ_ONLY,
        /** What stands in the file is not what was written. */
        DAMAGED
    }

    private StoreTrouble(Kind kind, Problem problem) {
        super(problem);
        this.kind = kind;
    }

    static StoreTrouble busy(Path file) {
        return trouble("store.busy", Kind.BUSY, file, Said.of("found.busy"));
    }

    static StoreTrouble full(Path file) {
        return trouble("store.full", Kind.FULL, file, Said.of("found.no-space"));
    }

    static StoreTrouble readOnly(Path file) {
        return trouble("store.read-only", Kind.READ_ONLY, file, Said.of("found.read-only"));
    }

    /** A file that cannot be read as it lies, since the last work stands beside it and cannot be brought in. */
    static StoreTrouble unfinished(Path file, StoreTrouble why) {
        return trouble(
                "store.unfinished",
                why.kind(),
                file,
                Said.of(
                        "found.unfinished",
                        "why",
                        why.problems().get(0).seen(),
                        "file",
                        String.valueOf(file.getFileName())));
    }

    static StoreTrouble damaged(Path file, String what) {
        return trouble("store.damaged", Kind.DAMAGED, file, Said.of("found.damage", "what", what));
    }

    private static StoreTrouble trouble(String code, Kind kind, Path file, Said seen) {
        return new StoreTrouble(kind, Problem.of(code, Said.text(file.toString()), seen));
    }

    StoreTrouble from(Throwable cause) {
        initCause(cause);
        return this;
    }

    public Kind kind() {
        return kind;
    }
}
