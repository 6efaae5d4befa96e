// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Arrays;
import java.util.Optional;
import org.earleaf.app.store.StoreTrouble.Kind;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.jdbc.support.SQLExceptionTranslator;
import org.springframework.transaction.TransactionSystemException;
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

    /** What the person at the machine can do something about, in words; empty for all else. */
    static Optional<StoreTrouble> findTrouble(Path file, Throwable e) {
        // A transaction that SQLite took back itself cannot be rolled back again; what it failed on stands behind that.
        if (e instanceof TransactionSystemException rollback && rollback.getOriginalException() != null) {
            return findTrouble(file, rollback.getOriginalException());
        }
        Optional<SQLiteException> cause = find(SQLiteException.class, e);
        if (cause.isEmpty()) {
            // No connection became free in time: others wait for the same lock.
            return find(SQLTransientConnectionException.class, e)
                    .map(wait -> StoreTrouble.busy(file).from(e));
        }
        SQLiteErrorCode code = cause.get().getResultCode();
        return findKind(code).map(kind -> switch (kind) {
            case BUSY -> StoreTrouble.busy(file).from(e);
            case FULL -> StoreTrouble.full(file).from(e);
            case READ_ONLY -> StoreTrouble.readOnly(file).from(e);
            case DAMAGED -> StoreTrouble.damaged(file, reason(e)).from(e);
        });
    }

    private static Optional<Kind> findKind(SQLiteErrorCode code) {
        String name = code.name();
        if (isLocked(code)) {
            return Optional.of(Kind.BUSY);
        }
        // The memory file beside the database grows by whole pages; that it cannot means that the disk is full.
        if (code == SQLiteErrorCode.SQLITE_FULL || code == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE) {
            return Optional.of(Kind.FULL);
        }
        if (starts(name, "SQLITE_READONLY", "SQLITE_CANTOPEN", "SQLITE_PERM")) {
            return Optional.of(Kind.READ_ONLY);
        }
        return starts(name, "SQLITE_IOERR", "SQLITE_CORRUPT", "SQLITE_NOTADB", "SQLITE_TOOBIG")
                ? Optional.of(Kind.DAMAGED)
                : Optional.empty();
    }

    private static boolean starts(String name, String... with) {
        return Arrays.stream(with).anyMatch(name::startsWith);
    }

    static String reason(Throwable e) {
        return find(SQLiteException.class, e)
                .map(s -> String.valueOf(s.getMessage()))
                .orElseGet(() -> String.valueOf(e.getMessage()));
    }

    private static <E extends Throwable> Optional<E> find(Class<E> kind, @Nullable Throwable e) {
        for (Throwable at = e; at != null; at = at.getCause()) {
            if (kind.isInstance(at)) {
                return Optional.of(kind.cast(at));
            }
        }
        return Optional.empty();
    }
}
