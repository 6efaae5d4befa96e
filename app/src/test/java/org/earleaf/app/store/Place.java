// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;

/** A place where writing is impossible until it is closed; a test that cannot have one here skips and says so. */
public final class Place implements AutoCloseable {
    private final List<String> undo;
    private final Path path;
    private final Set<PosixFilePermission> before;

    private Place(Path path, List<String> undo, Set<PosixFilePermission> before) {
        this.path = path;
        this.undo = undo;
        this.before = before;
    }

    /** A file or folder that may be read and not written, by the administrator neither. */
    public static Place readOnly(Path path) throws IOException, InterruptedException {
        Set<PosixFilePermission> before = Files.getPosixFilePermissions(path);
        Files.setPosixFilePermissions(path, Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_EXECUTE));
        if (!Files.isWritable(path)) {
            return new Place(path, List.of(), before);
        }
        boolean fixed = run("chattr", "+i", path.toString()) && !Files.isWritable(path);
        assumeTrue(fixed, "no way here to forbid writing to this user");
        return new Place(path, List.of("chattr", "-i", path.toString()), before);
    }

    /** A folder on a disk of its own with that much room. */
    public static Place small(Path folder, int size_kB) throws IOException, InterruptedException {
        Files.createDirectories(folder);
        boolean mounted = run("mount", "-t", "tmpfs", "-o", "size=" + size_kB + "k", "none", folder.toString());
        assumeTrue(mounted, "no right here to mount a small disk");
        return new Place(folder, List.of("umount", folder.toString()), Set.of());
    }

    private static boolean run(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).inheritIO().start().waitFor() == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    @Override
    public void close() throws IOException, InterruptedException {
        if (!undo.isEmpty()) {
            run(undo.toArray(new String[0]));
        }
        if (!before.isEmpty()) {
            Files.setPosixFilePermissions(path, before);
        }
    }
}
