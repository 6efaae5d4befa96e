// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import org.earleaf.units.EarleafException;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.jdbc.support.SQLExceptionTranslator;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Says what SQLite's result codes mean, since Spring knows none of them, and to people in words. */
final class SqliteErrors implements SQLExceptionTranslator {
    /** SQLITE_CONSTRAINT, the low byte of every constraint's code. */
    private static final int CONSTRAINT = 19;

    @Override
    public DataAccessException translate(String task, @Nullable String sql, SQLException e) {
        if (!(e instanceof SQLiteException sqlite)) {
            return new UncategorizedSQLException(task, sql, e);
        }
        String message = task + ": " + e.getMessage();
        SQLiteErrorCode code = sqlite.getResultCode();
        return switch (code) {
            case SQLITE_CONSTRAINT_UNIQUE, SQLITE_CONSTRAINT_PRIMARYKEY -> new DuplicateKeyException(message, e);
            case SQLITE_FULL, SQLITE_READONLY, SQLITE_CORRUPT, SQLITE_NOTADB, SQLITE_CANTOPEN ->
                new DataAccessResourceFailureException(message, e);
            default -> byFamily(code, message, task, sql, e);
        };
    }

    private static DataAccessException byFamily(
            SQLiteErrorCode code, String message, String task, @Nullable String sql, SQLException e) {
        if (isLocked(code)) {
            return new CannotAcquireLockException(message, e);
        }
        if (code.name().startsWith("SQLITE_IOERR") || code.name().startsWith("SQLITE_READONLY")) {
            return new DataAccessResourceFailureException(message, e);
        }
        return (code.code & 0xff) == CONSTRAINT
                ? new DataIntegrityViolationException(message, e)
                : new UncategorizedSQLException(task, sql, e);
    }

    static boolean isLocked(SQLiteErrorCode code) {
        return code.name().startsWith("SQLITE_BUSY") || code.name().startsWith("SQLITE_LOCKED");
    }

    /** What the person at the machine can do something about, in words; all else as it is. */
    static RuntimeException plain(Path file, RuntimeException e) {
        Optional<SQLiteException> cause = find(e);
        if (cause.isEmpty()) {
            return e;
        }
        String code = cause.get().getResultCode().name();
        if (isLocked(cause.get().getResultCode())) {
            return problem(file, e, "another program writing", "the file free within 5 seconds", "Try again.");
        }
        if (code.startsWith("SQLITE_FULL")) {
            return problem(file, e, "no space left", "room on the disk", "Free some space; nothing was stored.");
        }
        if (code.startsWith("SQLITE_READONLY")) {
            return problem(file, e, "a file that may not be written", "write permission", "Change its permission.");
        }
        if (code.startsWith("SQLITE_IOERR") || code.startsWith("SQLITE_CORRUPT") || code.startsWith("SQLITE_NOTADB")) {
            return problem(
                    file,
                    e,
                    "a damaged file or disk (" + reason(e) + ")",
                    "a sound database",
                    "Restore it from a backup.");
        }
        return e;
    }

    private static EarleafException problem(Path file, RuntimeException e, String found, String expected, String todo) {
        EarleafException wrong = EarleafException.of(file.toString(), found, expected, todo);
        wrong.initCause(e);
        return wrong;
    }

    static String reason(Throwable e) {
        return find(e).map(s -> String.valueOf(s.getMessage())).orElseGet(() -> String.valueOf(e.getMessage()));
    }

    private static Optional<SQLiteException> find(@Nullable Throwable e) {
        for (Throwable at = e; at != null; at = at.getCause()) {
            if (at instanceof SQLiteException sqlite) {
                return Optional.of(sqlite);
            }
        }
        return Optional.empty();
    }
}
