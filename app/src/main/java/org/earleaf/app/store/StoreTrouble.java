// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.file.Path;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;

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
        return of(Kind.BUSY, file, "another program writing", "the file free within 5 seconds", "Try again.");
    }

    static StoreTrouble full(Path file) {
        return of(
                Kind.FULL,
                file,
                "no space left",
                "room on the disk",
                "Free some space, then do it again; nothing was stored.");
    }

    static StoreTrouble readOnly(Path file) {
        return of(
                Kind.READ_ONLY,
                file,
                "a file or folder that may be read and not written",
                "write permission for both",
                "Change the permission, or copy the file to where you may write; nothing was stored.");
    }

    /** A file that cannot be read as it lies, since the last work stands beside it and cannot be brought in. */
    static StoreTrouble unfinished(Path file, StoreTrouble why) {
        return of(
                why.kind(),
                file,
                why.problems().get(0).found() + ", and work not yet brought in from " + file.getFileName() + "-wal",
                "a folder that may be written, with room",
                "Make it so, or copy the file and the one that ends with -wal to such a folder, and open it there.");
    }

    static StoreTrouble damaged(Path file, String what) {
        return of(Kind.DAMAGED, file, "damage: " + what, "the file as it was written", "Restore it from a backup.");
    }

    private static StoreTrouble of(Kind kind, Path file, String found, String expected, String todo) {
        return new StoreTrouble(kind, new Problem(file.toString(), found, expected, todo));
    }

    StoreTrouble from(Throwable cause) {
        initCause(cause);
        return this;
    }

    public Kind kind() {
        return kind;
    }
}
