// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.earleaf.units.EarleafException;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationState;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.transaction.support.TransactionTemplate;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * One open database file with the tables of this version.
 *
 * <p>SQLite in write-ahead mode, every commit on disk before it is acknowledged, foreign keys on (they are off in a new
 * connection unless asked for), and transactions that take the write lock at their start: one that first reads and then
 * writes could else fail half way, with another writer in between.
 */
final class Database implements AutoCloseable {
    private static final int CONNECTIONS = 4;
    private static final int PATIENCE_MS = 5000;

    private final Path file;
    private final HikariDataSource pool;
    private final JdbcTemplate sql;
    private final TransactionTemplate transactions;

    private Database(Path file, HikariDataSource pool) {
        this.file = file;
        this.pool = pool;
        this.sql = new JdbcTemplate(pool);
        this.sql.setExceptionTranslator(new SqliteErrors());
        this.transactions = new TransactionTemplate(new DataSourceTransactionManager(pool));
    }

    /** Opens the file, and makes it first where there is none. */
    static Database create(Path file) {
        Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), Path.of("."));
        if (!Files.isDirectory(folder) || !Files.isWritable(folder)) {
            throw EarleafException.of(
                    file.toString(), "no folder there to write in", "an existing folder", "Make the folder first.");
        }
        return migrated(file);
    }

    static Database open(Path file) {
        if (!Files.isRegularFile(file)) {
            throw EarleafException.of(
                    file.toString(),
                    "no such file",
                    "a farm's database",
                    "Make it with: earleaf import --folder DIR --farm " + file + " (or name a folder with --folder).");
        }
        return migrated(file);
    }

    private static Database migrated(Path file) {
        DataSource source = source(file);
        probe(file, source);
        HikariDataSource pool = pool(source);
        try {
            migrate(file, pool);
            return new Database(file, pool);
        } catch (FlywayException e) {
            pool.close();
            throw notADatabase(file, e);
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    /** Says at once that a file is no database; the pool would go on trying. */
    private static void probe(Path file, DataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.executeQuery("select count(*) from sqlite_master").close();
        } catch (SQLException e) {
            throw notADatabase(file, e);
        }
    }

    private static DataSource source(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(PATIENCE_MS);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        return source;
    }

    private static HikariDataSource pool(DataSource source) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE_MS);
        config.setExceptionOverrideClassName(EvictWhenLocked.class.getName());
        return new HikariDataSource(config);
    }

    private static void migrate(Path file, DataSource pool) {
        Flyway flyway = Flyway.configure()
                .dataSource(pool)
                .locations("classpath:db/common", "classpath:db/sqlite")
                .javaMigrations(new LabelMove())
                .load();
        for (var known : flyway.info().applied()) {
            if (known.getState() == MigrationState.FUTURE_SUCCESS) {
                throw EarleafException.of(
                        file.toString(),
                        "tables of version " + known.getVersion(),
                        "tables that this version of Earleaf knows",
                        "The file was written by a newer Earleaf; use that one.");
            }
        }
        flyway.migrate();
    }

    private static EarleafException notADatabase(Path file, Exception cause) {
        EarleafException wrong = EarleafException.of(
                file.toString(),
                "a file that cannot be opened as a farm's database (" + SqliteErrors.reason(cause) + ")",
                "a file made by earleaf import or earleaf init",
                "Check the name, or restore it from a backup.");
        wrong.initCause(cause);
        return wrong;
    }

    Path file() {
        return file;
    }

    JdbcTemplate sql() {
        return sql;
    }

    /** All of the work or none of it. */
    <T> T inTransaction(Supplier<T> work) {
        try {
            return Objects.requireNonNull(transactions.execute(status -> work.get()));
        } catch (DataAccessException | CannotCreateTransactionException e) {
            throw SqliteErrors.plain(file, e);
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
