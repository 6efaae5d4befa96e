// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import javax.sql.DataSource;
import org.earleaf.app.store.StoreTrouble.Kind;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.springframework.jdbc.datasource.LazyConnectionDataSourceProxy;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/**
 * The ways into one file: connections that write, and connections that read what was there when they began, whoever
 * writes meanwhile.
 *
 * <p>SQLite in write-ahead mode, every commit on disk before it is acknowledged, foreign keys on (they are off in a new
 * connection unless asked for). Writing takes the write lock at the start: a transaction that first reads and then writes
 * could else fail half way, with another writer in between. Reading takes none.
 *
 * <p>Write-ahead mode makes two files beside the database even to read. Where it cannot, for want of room or of
 * permission, the file is read as one that lies still; nothing can change it from here then.
 */
final class Connections implements AutoCloseable {
    private static final int EACH_WAY = 4;
    private static final int PATIENCE_MS = 5000;

    private final Path file;
    private final HikariDataSource writing;
    private final HikariDataSource reading;
    private final Optional<StoreTrouble> still;

    private Connections(Path file, Optional<StoreTrouble> still) {
        this.file = file;
        this.still = still;
        this.writing = pool(still.isPresent() ? stillSource(file) : writingSource(file), "");
        this.reading = pool(still.isPresent() ? stillSource(file) : readingSource(file), "pragma query_only = true");
    }

    static Connections open(Path file) {
        Optional<StoreTrouble> trouble = probe(file, writingSource(file));
        if (trouble.isEmpty()) {
            return new Connections(file, trouble);
        }
        StoreTrouble why = trouble.get();
        if (why.kind() != Kind.READ_ONLY && why.kind() != Kind.FULL) {
            throw why;
        }
        if (hasUnfinishedWork(file)) {
            throw StoreTrouble.unfinished(file, why);
        }
        // What keeps it from lying still is no longer about writing.
        probe(file, stillSource(file)).ifPresent(t -> {
            throw t;
        });
        return new Connections(file, trouble);
    }

    /** What keeps the file from being opened at once; the pool would go on trying. */
    private static Optional<StoreTrouble> probe(Path file, DataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.executeQuery("select count(*) from sqlite_master").close();
            return Optional.empty();
        } catch (SQLException e) {
            Optional<StoreTrouble> trouble = SqliteErrors.findTrouble(file, e);
            if (trouble.isPresent() && trouble.get().kind() != Kind.DAMAGED) {
                return trouble;
            }
            throw notADatabase(file, e);
        }
    }

    static EarleafException notADatabase(Path file, Exception cause) {
        EarleafException wrong = new EarleafException(Problem.of(
                "store.no-database",
                Said.text(file.toString()),
                Said.of("found.no-database", "why", SqliteErrors.reason(cause))));
        wrong.initCause(cause);
        return wrong;
    }

    private static boolean hasUnfinishedWork(Path file) {
        try {
            Path ahead = file.resolveSibling(file.getFileName() + "-wal");
            return Files.exists(ahead) && Files.size(ahead) > 0;
        } catch (IOException e) {
            return true;
        }
    }

    private static DataSource writingSource(Path file) {
        SQLiteConfig config = config(TransactionMode.IMMEDIATE);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        return source(config, file.toAbsolutePath().toString());
    }

    private static DataSource readingSource(Path file) {
        return source(config(TransactionMode.DEFERRED), file.toAbsolutePath().toString());
    }

    private static DataSource stillSource(Path file) {
        return source(config(TransactionMode.DEFERRED), file.toAbsolutePath().toUri() + "?immutable=1");
    }

    private static SQLiteConfig config(TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(PATIENCE_MS);
        config.setTransactionMode(mode);
        return config;
    }

    private static DataSource source(SQLiteConfig config, String name) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + name);
        return source;
    }

    private static HikariDataSource pool(DataSource source, String first) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(EACH_WAY);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE_MS);
        config.setInitializationFailTimeout(-1);
        config.setExceptionOverrideClassName(EvictWhenLocked.class.getName());
        if (!first.isEmpty()) {
            config.setConnectionInitSql(first);
        }
        return new HikariDataSource(config);
    }

    DataSource writing() {
        return writing;
    }

    DataSource reading() {
        return reading;
    }

    /** Connections to read for transactions that only read, and to write for all others. */
    DataSource either() {
        LazyConnectionDataSourceProxy either = new LazyConnectionDataSourceProxy();
        either.setTargetDataSource(writing);
        either.setReadOnlyDataSource(reading);
        either.setDefaultAutoCommit(true);
        either.setDefaultTransactionIsolation(Connection.TRANSACTION_SERIALIZABLE);
        return either;
    }

    /** Why nothing can be written; empty where it can, as far as can be told without trying. */
    Optional<StoreTrouble> findWhyOnlyRead() {
        return still.or(() -> Files.isWritable(file) ? Optional.empty() : Optional.of(StoreTrouble.readOnly(file)));
    }

    @Override
    public void close() {
        reading.close();
        writing.close();
    }
}
